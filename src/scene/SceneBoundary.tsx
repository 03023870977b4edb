import { Component, type ReactNode } from 'react'

interface Props {
  readonly children: ReactNode
  readonly onError: () => void
}

/** Keeps a failure of the 3D view from taking the page with it. React has no function form of this. */
export class SceneBoundary extends Component<Props, { readonly hasFailed: boolean }> {
  override state = { hasFailed: false }

  static getDerivedStateFromError(): { readonly hasFailed: boolean } {
    return { hasFailed: true }
  }

  override componentDidCatch(): void {
    this.props.onError()
  }

  override render(): ReactNode {
    return this.state.hasFailed ? null : this.props.children
  }
}
