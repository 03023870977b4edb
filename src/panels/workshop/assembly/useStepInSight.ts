import { type RefObject, useEffect } from 'react'
import { PHONE_PX, useMaxWidth } from '../../useMaxWidth.ts'

/**
 * A new step starts at its top, not where the last one was left. On a phone the words hold to the foot
 * of the page, so the page goes up to the hive, and back to the answers at the end.
 */
export const useStepInSight = (section: RefObject<HTMLElement | null>, place: number): void => {
  const isPhone = useMaxWidth(PHONE_PX)
  useEffect(() => {
    if (!isPhone) return
    const answers = section.current?.closest('.sheet-answers')
    document.querySelector('.view-window')?.scrollIntoView()
    return () => answers?.scrollIntoView()
  }, [section, isPhone])
  useEffect(() => {
    if (section.current === null || place < 0) return
    section.current.scrollTop = 0
    if (!isPhone) section.current.scrollIntoView({ block: 'start' })
  }, [section, isPhone, place])
}
