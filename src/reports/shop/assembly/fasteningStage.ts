import { STEP } from '../../../hive/steps.ts'
import type { Fastening } from '../fasteners/fastenerReport.ts'

/**
 * The stage that makes a fastening: that of its last part, but a long wall and an end wall, built
 * apart, meet when they are joined to a box.
 */
export const fasteningStage = ({ step, partIds }: Pick<Fastening, 'step' | 'partIds'>): number => {
  if (step > STEP.endWalls) return step
  const meets = [LONG_WALL, END_WALL].every((wall) => partIds.some((id) => wall.test(id)))
  return meets ? STEP.box : step
}

const LONG_WALL = /^(front|back)-wall\//
const END_WALL = /^(left|right)-wall\//
