import type { FrameDesign } from '../../design/schema.ts'

const MM2_PER_DM2 = 1e4

/**
 * Comb inside one whole frame, dm², counted once although both faces are in use (the handbooks' way;
 * Bertrand, La conduite du rucher). A split frame counts both halves. A bar thicker than its frame is
 * deep leaves no comb, never less.
 */
export const combAreaDm2 = (
  frame: Pick<
    FrameDesign,
    | 'form'
    | 'bodyLengthMm'
    | 'sideBarThicknessMm'
    | 'depthMm'
    | 'topBarThicknessMm'
    | 'middleBarThicknessMm'
    | 'bottomBarThicknessMm'
  >,
): number => {
  const width = Math.max(0, frame.bodyLengthMm - 2 * frame.sideBarThicknessMm)
  const heightUnder = (topBar: number): number =>
    Math.max(0, frame.depthMm - topBar - frame.bottomBarThicknessMm)
  const upper = heightUnder(frame.topBarThicknessMm)
  const lower = frame.form === 'split' ? heightUnder(frame.middleBarThicknessMm) : 0
  return (width * (upper + lower)) / MM2_PER_DM2
}
