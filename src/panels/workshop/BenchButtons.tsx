import type { WholeShop } from '../../reports/shop/benchReport.ts'
import { type BenchSheet, useBench } from '../../store/bench.ts'
import { useBenchTicks } from '../../store/benchTicks.ts'
import { useDesignStore } from '../../store/designStore.ts'
import { counted } from './measureLine.ts'
import { isSetUpDone } from './setups/tickKey.ts'

/** Opens the sheets of the bench, and the walk through the assembly. */
export const BenchButtons = ({ shop }: { readonly shop: WholeShop }) => {
  const openSheet = useBench((s) => (s.isOpen ? s.sheet : undefined))
  const open = useBench((s) => s.open)
  const goTo = useBench((s) => s.goTo)
  const name = useDesignStore((s) => s.design.title.name)
  const ticks = useBenchTicks((s) => s.done)
  const { setUps, fasteners, shopping, assembly, plan } = shop
  const done = setUps.setUps.filter((setUp) => isSetUpDone(ticks, name, setUp)).length
  const steps = assembly.steps.length
  const screws = fasteners.totals.reduce((sum, { count }) => sum + count, 0)
  const sheets: readonly (readonly [BenchSheet, string, string])[] = [
    ['boards', 'Boards', sumWords(plan?.lumber.map((r) => (r.kind === 'plan' ? r.boards : 0)))],
    ['sheets', 'Sheets', sumWords(plan?.sheets.map((r) => (r.kind === 'plan' ? r.sheets : 0)))],
    ['set-ups', 'Set-ups', `${done} of ${setUps.setUps.length} done`],
    ['fasteners', 'Fasteners', counted(screws, 'piece')],
    ['shopping', 'Shopping', counted(shopping.lines.length, 'line')],
    ['labels', 'Labels', counted(assembly.labels.length, 'kind')],
  ]
  return (
    <section className="panel-answer">
      <h4>On the bench</h4>
      <div className="bench-buttons wide">
        {sheets.map(([sheet, title, note]) => (
          <button
            key={sheet}
            type="button"
            className="plain"
            aria-pressed={sheet === openSheet}
            onClick={() => open(sheet)}
          >
            {title}
            <small>{note}</small>
          </button>
        ))}
        <button
          type="button"
          className="plain strong"
          aria-disabled={steps === 0}
          onClick={() => steps > 0 && goTo(0)}
        >
          Put it together
          <small>{counted(steps, 'step')}</small>
        </button>
      </div>
    </section>
  )
}

const sumWords = (counts: readonly number[] | undefined): string =>
  counts === undefined ? 'not planned yet' : `${counts.reduce((a, b) => a + b, 0)} to cut`
