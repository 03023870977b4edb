import { useEffect, useState } from 'react'
import type { Design } from '../../../design/schema.ts'
import { answerMistake } from '../../../reports/shop/made/answerMistake.ts'
import { followMeasuredThickness } from '../../../reports/shop/made/followMeasuredThickness.ts'
import type { MadeRemedy, MistakeAnswer } from '../../../reports/shop/made/madeReport.ts'
import type { Measured } from './measured.ts'

/** What can follow a measured size. */
export interface MadeAnswer {
  readonly mistake: MistakeAnswer | undefined
  /** When the board itself is of another thickness: the whole hive follows it. */
  readonly thickness: MadeRemedy | undefined
}

/** Looks for ways out, which takes up to a third of a second; undefined while it looks. */
export const useMadeAnswer = (
  design: Design,
  measured: Measured | undefined,
): MadeAnswer | undefined => {
  const [found, setFound] = useState<MadeAnswer>()
  const { row, side, mm } = measured ?? {}
  useEffect(() => {
    setFound(undefined)
    if (row === undefined || side === undefined || mm === undefined) return
    // The page shows first that it is looking.
    const timer = setTimeout(() => {
      setFound({
        mistake: answerMistake(design, row.label, side, mm),
        thickness:
          side === 'thickness'
            ? followMeasuredThickness(design, row.material, row.thicknessMm, mm)
            : undefined,
      })
    }, 30)
    return () => clearTimeout(timer)
  }, [design, row, side, mm])
  return found
}
