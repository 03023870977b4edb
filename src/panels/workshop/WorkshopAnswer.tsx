import '../styles/workshop.css'
import type { ShopReport } from '../../reports/shop/computeShop.ts'
import { useBench } from '../../store/bench.ts'
import { AssemblyWalk } from './assembly/AssemblyWalk.tsx'
import { BenchButtons } from './BenchButtons.tsx'
import { CostAnswer } from './CostAnswer.tsx'
import { measureLine } from './measureLine.ts'
import { PlanAnswer } from './PlanAnswer.tsx'

/** From parts to the bench, at a glance: how much work, what it costs, how sure the plan is. */
export const WorkshopAnswer = ({ shop }: { readonly shop: ShopReport }) => {
  const step = useBench((s) => s.step)
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
