import { useViewStore } from '../../../store/viewStore.ts'
import { formatTrimmed } from '../../../units/number.ts'
import { useNight } from '../../night.ts'
import { OLD_WORDS, savedWords } from './fieldWords.ts'
import type { Comparison } from './useComparisons.ts'

/** What other ways to build would bring, worked out the same way, the best first. */
export const Remedies = ({ comparison }: { readonly comparison: Comparison }) => {
  const { thermal } = useViewStore((s) => s.units)
  const night = useNight()
  const { comparisons, isOld } = comparison
  const remedies = [...(comparisons?.remedies ?? [])].sort((a, b) => b.savedWPerK - a.savedWPerK)
  if (remedies.length === 0) return null
  return (
    <section className={isOld ? 'panel-answer old' : 'panel-answer'}>
      <h4>What would help</h4>
      {isOld && <span className="old-words">{OLD_WORDS}</span>}
      <ul className="remedies wide">
        {remedies.map((remedy) => (
          <li key={remedy.id}>
            <strong>{remedy.name}</strong>
            <p>{remedy.how}</p>
            <p className="remedy-figure">
              {savedWords(remedy.savedWPerK, night, thermal)}
              {shareWords(remedy.savedWPerK, remedy.conductanceWPerK)}
            </p>
          </li>
        ))}
      </ul>
    </section>
  )
}

/** How much of the whole hive's loss that is, when it is worth saying. */
const shareWords = (savedWPerK: number, withRemedyWPerK: number): string => {
  const percent = (Math.abs(savedWPerK) / (withRemedyWPerK + savedWPerK)) * 100
  return percent >= 0.5 ? `: ${formatTrimmed(percent, 0)} % of the whole.` : '.'
}
