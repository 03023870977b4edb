import type { ReactNode } from 'react'
import { useAnswers } from '../store/answers.ts'
import { useDesignStore } from '../store/designStore.ts'
import { useViewStore } from '../store/viewStore.ts'
import { formatMass } from '../units/mass.ts'
import { NO_VALUE } from '../units/number.ts'
import { formatConductance, formatResistance } from '../units/thermal.ts'
import { openChecks } from './answers/openChecks.ts'
import { Verdict, VerdictMark } from './answers/VerdictMark.tsx'
import { fieldStage, STAGE_WORD, sumOfPanels } from './answers/warmth/fieldWords.ts'
import { useFieldView } from './answers/warmth/useFieldView.ts'
import { splitUnit } from './inputs/numberShown.ts'
import { outsideSize } from './outsideSize.ts'
import { useMedia } from './useMaxWidth.ts'

/** The title block of the sheet: name, size and the figures that matter, always up to date. */
export const TitleBlock = () => {
  const { answer, stale } = useAnswers()
  const name = useDesignStore((s) => s.design.title.name)
  const units = useViewStore((s) => s.units)
  const heat = answer?.report.heat
  const checks = answer?.report.checks ?? []
  const open = openChecks(checks)
  const worst = open.some((c) => c.verdict === 'fix') ? 'fix' : open.length > 0 ? 'look' : 'ok'
  return (
    <section className={stale ? 'title-block stale' : 'title-block'} aria-label="Title block">
      <Cell name="Hive" className="cell-name">
        <span className="cell-title">{name || 'Hive without a name'}</span>
        {answer && <span>{outsideSize(answer.hive.dimensions, units.length)}</span>}
      </Cell>
      <WholeHiveCell sumWPerK={heat && sumOfPanels(heat)} />
      <RCell name="Walls" panel={heat?.walls} />
      <RCell name="Lid" panel={heat?.lid} />
      <RCell name="Floor" panel={heat?.floor} />
      <Cell name="Heaviest lift" className="cell-lift">
        <Figure
          shown={answer && formatMass(answer.report.keeper.heaviestLift.massKg, units.mass)}
        />
      </Cell>
      <Cell name="Parts" className="cell-parts">
        <Figure shown={answer && String(answer.report.shop.partCount)} />
      </Cell>
      <Cell name="Checks open" className="cell-checks">
        <span className="figure">
          {answer ? open.length : NO_VALUE} {answer && <VerdictMark verdict={worst} />}
        </span>
      </Cell>
    </section>
  )
}

interface CellProps {
  readonly name: string
  readonly className: string
  readonly children: ReactNode
}

const Cell = ({ name, className, children }: CellProps) => (
  <div className={`cell ${className}`}>
    <span className="cell-label">{name}</span>
    {children}
  </div>
)

interface RCellProps {
  readonly name: string
  readonly panel: { readonly withRailsM2KPerW: number; readonly meetsTarget: boolean } | undefined
}

const RCell = ({ name, panel }: RCellProps) => {
  const { thermal } = useViewStore((s) => s.units)
  const shown = panel && splitUnit(formatResistance(panel.withRailsM2KPerW, thermal))
  return (
    <Cell name={`${name}, ${thermal === 'rsi' ? 'RSI' : 'R'}`} className="cell-r">
      <span className="figure">{shown?.figure ?? NO_VALUE}</span>
      {panel && (
        <Verdict verdict={panel.meetsTarget ? 'ok' : 'look'}>
          {panel.meetsTarget ? 'Met' : 'Short'}
        </Verdict>
      )}
    </Cell>
  )
}

/** Where the title block has no room for it, it stands at the head of the answers alone. */
const HAS_ROOM = '(max-width: 899px), (min-width: 1280px) and (min-height: 821px)'

const WholeHiveCell = ({ sumWPerK }: { readonly sumWPerK: number | undefined }) => {
  const { thermal } = useViewStore((s) => s.units)
  const field = useFieldView()
  const hasRoom = useMedia(HAS_ROOM)
  if (!hasRoom) return null
  const conductance = field.answer?.conductanceWPerK ?? sumWPerK ?? Number.NaN
  const { figure, unit } = splitUnit(formatConductance(conductance, thermal, 2))
  return (
    <Cell name={`Whole hive, ${unit}`} className={field.isOld ? 'cell-whole old' : 'cell-whole'}>
      <span className="figure">{figure}</span>
      <span className="cell-word">
        {field.answer || sumWPerK === undefined ? STAGE_WORD[fieldStage(field)] : 'Sum of panels'}
      </span>
    </Cell>
  )
}

const Figure = ({ shown = NO_VALUE }: { readonly shown: string | undefined }) => {
  const { figure, unit } = splitUnit(shown)
  return (
    <span className="figure">
      {figure} <span className="figure-unit">{unit}</span>
    </span>
  )
}
