import '../styles/workshop.css'
import { useBench } from '../../store/bench.ts'
import { AssemblyWalk } from './assembly/AssemblyWalk.tsx'
import { BenchButtons } from './BenchButtons.tsx'
import { CostAnswer } from './CostAnswer.tsx'
import { measureLine } from './measureLine.ts'
import { PlanAnswer } from './PlanAnswer.tsx'
import { useWorkshop } from './useWorkshop.ts'

/** From parts to the bench, at a glance: how much work, what it costs, how sure the plan is. */
export const WorkshopAnswer = () => {
  const step = useBench((s) => s.step)
  const shop = useWorkshop()?.report.shop
  if (shop === undefined) return null
  if (step !== undefined) return <AssemblyWalk shop={shop} step={step} />
  return (
    <>
      <p className="answer-lead measure-line">{measureLine(shop)}</p>
      <CostAnswer shopping={shop.shopping} />
      <PlanAnswer shop={shop} />
      <BenchButtons shop={shop} />
    </>
  )
}
