import { useFrame, useThree } from '@react-three/fiber'
import { type RefObject, useLayoutEffect, useState } from 'react'
import { PerspectiveCamera } from 'three'
import type { Hive } from '../hive/hive.ts'
import { setCurrentStage } from './currentStage.ts'
import { createStage, type Stage } from './stage.ts'

interface Props {
  readonly hive: Hive
  readonly labelLayer: RefObject<HTMLElement | null>
  /** The stage, or undefined when it is gone; for keys and touch, which the page hears. */
  readonly onStage: (stage: Stage | undefined) => void
}

/** Puts the stage into the canvas and keeps it fed: no React component stands for a part. */
export const HiveScene = ({ hive, labelLayer, onStage }: Props) => {
  const gl = useThree((s) => s.gl)
  const scene = useThree((s) => s.scene)
  const camera = useThree((s) => s.camera)
  const invalidate = useThree((s) => s.invalidate)
  const size = useThree((s) => s.size)
  const [stage, setStage] = useState<Stage>()

  useLayoutEffect(() => {
    const layer = labelLayer.current
    if (!(camera instanceof PerspectiveCamera) || layer === null) return
    const made = createStage({
      gl,
      scene,
      camera,
      labelLayer: layer,
      invalidate: () => invalidate(),
    })
    setStage(made)
    setCurrentStage(made)
    onStage(made)
    return () => {
      setCurrentStage(undefined)
      onStage(undefined)
      made.dispose()
    }
  }, [gl, scene, camera, invalidate, labelLayer, onStage])

  useLayoutEffect(() => stage?.setSize(size.width, size.height), [stage, size.width, size.height])
  useLayoutEffect(() => stage?.setHive(hive), [stage, hive])
  useFrame(() => stage?.beforeFrame())
  return null
}
