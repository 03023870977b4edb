import { create } from 'zustand'
import { checksum } from '../design/checksum.ts'
import { formatDesign } from '../design/formatDesign.ts'
import { parseDesign } from '../design/parseDesign.ts'
import type { Design } from '../design/schema.ts'
import { designName, explainProblems, explainReading } from './openDesign.ts'

/** A design that is kept to be compared with the present one. */
export interface SavedDesign {
  /** Follows from the design alone: equal designs have equal ids, in every visit. */
  readonly id: string
  /** The design's own name, with a number where two have the same. */
  readonly name: string
  readonly design: Design
}

/** Each takes a whole solve, so the list is short. */
export const MAX_SAVED = 6

export interface SavedState {
  readonly saved: readonly SavedDesign[]
  readonly message: { readonly kind: 'error' | 'info'; readonly text: string } | undefined
}

export interface SavedActions {
  /** Puts a design at the end of the list; says so, or why not. */
  readonly add: (design: Design) => void
  /** Reads the text of a design file and adds it; text that can't be read changes nothing. */
  readonly addText: (text: string) => void
  readonly remove: (id: string) => void
  /** Says that something could not be added. */
  readonly refuse: (text: string) => void
  readonly dismissMessage: () => void
}

export const useSavedDesigns = create<SavedState & SavedActions>()((set, get) => {
  const add = (design: Design, note?: string) => {
    const { saved, refuse } = get()
    const id = savedId(design)
    const twin = saved.find((other) => other.id === id)
    if (twin) return refuse(`${twin.name} is in the list already.`)
    if (saved.length >= MAX_SAVED) return refuse(FULL)
    const next = nameSaved([...saved.map((other) => other.design), design])
    const name = next.at(-1)?.name ?? designName(design)
    const text = [`${name} is in the list.`, note].filter(Boolean).join(' ')
    set({ saved: next, message: { kind: 'info', text } })
  }
  return {
    saved: [],
    message: undefined,
    add: (design) => add(design),
    addText: (text) => {
      const parsed = parseDesign(text)
      if (parsed.kind === 'bad') {
        return get().refuse(`${explainProblems(parsed.problems)}\nThe list is unchanged.`)
      }
      add(parsed.design, explainReading(parsed))
    },
    remove: (id) =>
      set(({ saved }) => ({
        saved: nameSaved(saved.filter((other) => other.id !== id).map((other) => other.design)),
        message: undefined,
      })),
    refuse: (text) => set({ message: { kind: 'error', text } }),
    dismissMessage: () => set({ message: undefined }),
  }
})

/** The designs as a list, with ids and with names that differ; a design that comes twice is there once. */
export function nameSaved(designs: readonly Design[]): readonly SavedDesign[] {
  const list: SavedDesign[] = []
  for (const design of designs) {
    const id = savedId(design)
    if (list.some((other) => other.id === id)) continue
    const own = designName(design)
    const sameBefore = list.filter((other) => designName(other.design) === own).length
    list.push({ id, design, name: sameBefore === 0 ? own : `${own} (${sameBefore + 1})` })
  }
  return list
}

const FULL = `The list holds ${MAX_SAVED} designs, and that is as many as it takes. Take one out first.`

function savedId(design: Design): string {
  return checksum(formatDesign(design))
    .map((byte) => byte.toString(16).padStart(2, '0'))
    .join('')
}
