import { Canvas } from '@react-three/fiber'
import { type KeyboardEvent, type ReactNode, useCallback, useEffect, useRef, useState } from 'react'
import type { Hive } from '../hive/hive.ts'
import { useViewStore } from '../store/viewStore.ts'
import { FIELD_OF_VIEW_DEG } from './cameraPresets.ts'
import { HiveScene } from './HiveScene.tsx'
import { SceneBoundary } from './SceneBoundary.tsx'
import type { Stage } from './stage.ts'
import { hasWebgl } from './webglSupport.ts'

interface Props {
  readonly hive: Hive
  /** Shown instead when there is no WebGL, or it is lost: a drawing of the hive. */
  readonly fallback?: ReactNode
}

/** The hive in three dimensions; fills its parent, which must have a size. */
export const HiveView = ({ hive, fallback }: Props) => {
  const [isLost, setIsLost] = useState(() => !hasWebgl())
  const [attempt, setAttempt] = useState(0)
  if (isLost) {
    const restore = () => {
      setAttempt(attempt + 1)
      setIsLost(false)
    }
    return (
      <div style={FILL}>
        {fallback}
        {hasWebgl() && (
          <button type="button" onClick={restore} style={RESTORE}>
            Restore the 3D view
          </button>
        )}
      </div>
    )
  }
  return (
    <SceneBoundary key={attempt} onError={() => setIsLost(true)}>
      <LiveView hive={hive} onLost={() => setIsLost(true)} />
    </SceneBoundary>
  )
}

const LiveView = ({ hive, onLost }: { readonly hive: Hive; readonly onLost: () => void }) => {
  const quality = useViewStore((s) => s.quality)
  const frame = useRef<HTMLDivElement>(null)
  const labelLayer = useRef<HTMLDivElement>(null)
  const stage = useRef<Stage | undefined>(undefined)
  const onStage = useCallback((next: Stage | undefined) => {
    stage.current = next
    next?.setTouch(frame.current === document.activeElement ? 'orbit' : 'page-scrolls')
  }, [])
  useContextLoss(frame, onLost)
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return
    if (stage.current?.pressKey(event.key) === true) event.preventDefault()
  }
  const isFull = quality === 'full'
  return (
    <div
      ref={frame}
      role="img"
      aria-label={describeView(hive)}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: the picture is turned with the arrow keys.
      tabIndex={0}
      onKeyDown={onKeyDown}
      onFocus={() => stage.current?.setTouch('orbit')}
      onBlur={() => stage.current?.setTouch('page-scrolls')}
      style={FILL}
    >
      <Canvas
        key={quality}
        frameloop="demand"
        flat
        dpr={isFull ? [1, 2] : 1}
        shadows={isFull ? 'percentage' : false}
        gl={{ antialias: isFull, alpha: true, powerPreference: 'high-performance' }}
        camera={{ fov: FIELD_OF_VIEW_DEG, near: 50, far: 20000, position: [2000, 2000, 4000] }}
      >
        <HiveScene hive={hive} labelLayer={labelLayer} onStage={onStage} />
      </Canvas>
      <div ref={labelLayer} aria-hidden="true" style={OVERLAY} />
    </div>
  )
}

/** Hears a lost context. The event doesn't bubble, so it is caught on its way down to the canvas. */
const useContextLoss = (
  frame: { readonly current: HTMLElement | null },
  onLost: () => void,
): void => {
  const latest = useRef(onLost)
  latest.current = onLost
  useEffect(() => {
    const element = frame.current
    if (element === null) return
    const hear = (event: Event) => {
      event.preventDefault()
      latest.current()
    }
    element.addEventListener('webglcontextlost', hear, true)
    return () => element.removeEventListener('webglcontextlost', hear, true)
  }, [frame])
}

const describeView = (hive: Hive): string => {
  const frames = hive.dimensions.frameCentres.length
  return `3D view of a horizontal hive with ${frames} frames and ${hive.parts.length} parts. Arrow keys turn it, plus and minus zoom, Home shows it from the start.`
}

// The focus ring lies inside, because the view fills its frame.
const FILL = { position: 'relative', width: '100%', height: '100%', outlineOffset: -3 } as const
const OVERLAY = {
  position: 'absolute',
  inset: 0,
  overflow: 'hidden',
  pointerEvents: 'none',
} as const
const RESTORE = { position: 'absolute', left: 16, bottom: 16, font: 'inherit' } as const
