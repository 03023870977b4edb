import { Component, type ReactNode } from 'react'
import { saveDesignFile } from './header/saveFile.ts'

interface ErrorBoundaryProps {
  readonly children: ReactNode
}

/** The last resort: says that something broke, and still lets the design be saved. */
export class ErrorBoundary extends Component<ErrorBoundaryProps, { readonly message?: string }> {
  override state: { readonly message?: string } = {}

  static getDerivedStateFromError(error: unknown) {
    return { message: error instanceof Error ? error.message : String(error) }
  }

  override render() {
    if (this.state.message === undefined) return this.props.children
    return (
      <main className="broken">
        <h1>Something broke</h1>
        <p>Your design is still here. Save it to a file first; then load the page again.</p>
        <p>
          <button type="button" className="plain strong" onClick={saveDesignFile}>
            Save my design
          </button>{' '}
          <button type="button" className="plain" onClick={() => location.reload()}>
            Load the page again
          </button>
        </p>
        <p className="about">What went wrong: {this.state.message}</p>
      </main>
    )
  }
}
