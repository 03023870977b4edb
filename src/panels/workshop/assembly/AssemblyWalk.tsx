import { useEffect, useRef } from 'react'
import type { WholeShop } from '../../../reports/shop/benchReport.ts'
import { useBench } from '../../../store/bench.ts'
import { AssemblyStepView } from './AssemblyStepView.tsx'
import { useAssemblyScene } from './useAssemblyScene.ts'
import { useStepInSight } from './useStepInSight.ts'
import { useStepKeys } from './useStepKeys.ts'

interface AssemblyWalkProps {
  readonly shop: WholeShop
  /** Counted from 0. */
  readonly step: number
}

/** Building the hive step by step: the words here, the picture of it in the middle of the sheet. */
export const AssemblyWalk = ({ shop, step }: AssemblyWalkProps) => {
  const goTo = useBench((s) => s.goTo)
  const section = useRef<HTMLElement>(null)
  const head = useRef<HTMLHeadingElement>(null)
  const { steps } = shop.assembly
  // A change of the design may have left fewer steps.
  const place = Math.min(step, steps.length - 1)
  const current = steps[place]
  const walk = (to: number) => to >= 0 && to < steps.length && goTo(to)
  const leave = () => goTo(undefined)
  useAssemblyScene(shop.assembly, place)
  useStepKeys(section, { back: () => walk(place - 1), next: () => walk(place + 1), leave })
  useEffect(() => head.current?.focus({ preventScroll: true }), [])
  useStepInSight(section, place)

  return (
    <section className="assembly-walk" ref={section} aria-label="Putting it together">
      <header className="walk-head">
        <div role="status">
          <h3 ref={head} tabIndex={-1}>
            {current === undefined ? (
              'There are no steps to show'
            ) : (
              <>
                <span className="walk-number">
                  Step {place + 1} <small>of {steps.length}</small>
                </span>{' '}
                {current.title}
              </>
            )}
          </h3>
        </div>
        <button type="button" className="plain" onClick={leave}>
          Leave
        </button>
      </header>
      {current && <AssemblyStepView step={current} shop={shop} />}
      <nav className="walk-buttons" aria-label="Steps">
        <button
          type="button"
          className="plain"
          aria-disabled={place <= 0}
          onClick={() => walk(place - 1)}
        >
          Back
        </button>
        <button
          type="button"
          className="plain strong"
          aria-disabled={place >= steps.length - 1}
          onClick={() => walk(place + 1)}
        >
          Next
        </button>
      </nav>
    </section>
  )
}
