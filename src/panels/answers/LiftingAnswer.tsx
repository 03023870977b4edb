import type { KeeperReport } from '../../reports/keeper/computeKeeper.ts'
import type { ShopReport } from '../../reports/shop/computeShop.ts'
import { useDesignStore } from '../../store/designStore.ts'
import { useViewStore } from '../../store/viewStore.ts'
import { formatMass } from '../../units/mass.ts'
import { formatTrimmed } from '../../units/number.ts'
import { splitUnit } from '../inputs/numberShown.ts'
import { Verdict } from './VerdictMark.tsx'

interface LiftingAnswerProps {
  readonly keeper: KeeperReport
  readonly shop: ShopReport
}

/** What is lifted in a season, against the keeper's comfort, and what the hive weighs. */
export const LiftingAnswer = ({ keeper, shop }: LiftingAnswerProps) => {
  const unit = useViewStore((s) => s.units.mass)
  const comfortKg = useDesignStore((s) => s.design.keeper.comfortableLiftKg)
  const { heaviestLift, lifts } = keeper
  const isEasy = heaviestLift.massKg <= comfortKg
  const { figure, unit: unitName } = splitUnit(formatMass(heaviestLift.massKg, unit))
  const end = Math.max(comfortKg, ...lifts.map((lift) => lift.massKg)) * 1.05
  const percent = (kg: number) => `${(kg / end) * 100}%`
  return (
    <>
      <section className="panel-answer">
        <h4>Heaviest lift: {heaviestLift.name}</h4>
        <Verdict verdict={isEasy ? 'ok' : 'look'}>
          {`${isEasy ? 'Within' : 'Over'} your ${formatMass(comfortKg, unit)}`}
        </Verdict>
        <p className="big-figure">
          {figure} <span className="big-unit">{unitName}</span>
        </p>
      </section>
      <ul className="lifts">
        {lifts.map((lift) => (
          <li key={lift.name}>
            <span>{lift.name}</span>
            <strong>{formatMass(lift.massKg, unit)}</strong>
            <span className="lift-bar" aria-hidden="true">
              <i style={{ width: percent(lift.massKg) }} />
              <b style={{ left: percent(comfortKg) }} />
            </span>
          </li>
        ))}
      </ul>
      <p className="about">
        The upright mark is your comfortable lift, {formatMass(comfortKg, unit)}.
      </p>
      <dl className="figures">
        <dt>Hive, empty</dt>
        <dd>{formatMass(shop.massKg.empty, unit)}</dd>
        <dt>Hive, every frame full of honey</dt>
        <dd>{formatMass(keeper.fullMassKg, unit)}</dd>
        <dt>Lid</dt>
        <dd>{formatMass(shop.massKg.lid, unit)}</dd>
        <dt>Force that starts the lid</dt>
        <dd>{formatTrimmed(keeper.lidForceN, 0)} N</dd>
        <dt>Honey in one full frame</dt>
        <dd>{formatMass(keeper.honeyPerFrameKg, unit)}</dd>
        <dt>Floor can drop to</dt>
        <dd>{formatTrimmed(keeper.floorDropLimitDeg, 0)}°</dd>
      </dl>
    </>
  )
}
