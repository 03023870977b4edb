import { create } from 'zustand'
import { DEFAULT_DESIGN } from '../design/defaults.ts'
import type { Example } from '../design/examples.ts'
import { fieldTitle } from '../design/fieldAt.ts'
import { isSameDesign } from '../design/isSameDesign.ts'
import { parseDesign } from '../design/parseDesign.ts'
import type { ParsedDesign } from '../design/parsedDesign.ts'
import type { Design } from '../design/schema.ts'
import { decodeShare } from '../design/shareLink.ts'
import { MAX_DESIGN_BYTES, sizeMessage } from '../design/sizeLimit.ts'
import { useDesignStore } from './designStore.ts'

/** A file larger than this is refused before it is read. */
export const MAX_FILE_BYTES = MAX_DESIGN_BYTES

/** What to tell a person whose file is larger than `MAX_FILE_BYTES`. */
export const tooLargeMessage = (bytes: number): string => sizeMessage(bytes)

export type OpenedFrom = 'link' | 'file' | 'example'

/** A design that waits for a person to say whether it may replace the present one. */
export interface PendingDesign {
  readonly design: Design
  readonly from: OpenedFrom
  /** The design's own name. */
  readonly name: string
  /** What was done to read it: brought up to date, missing fields filled. */
  readonly note: string | undefined
}

export interface OpenState {
  readonly pending: PendingDesign | undefined
  readonly message: { readonly kind: 'error' | 'info'; readonly text: string } | undefined
}

export interface OpenActions {
  /** The text of a file that was dropped or chosen, or that stood in a sheet or picture. */
  readonly offerText: (text: string, from: OpenedFrom) => void
  /** The part of the address after `#`. */
  readonly offerShare: (hash: string) => void
  readonly offerExample: (example: Example) => void
  /** Replaces the present design by the one that waits, as one step that can be undone. */
  readonly accept: () => void
  /** Keeps the present design. */
  readonly decline: () => void
  /** Says that something could not be opened; the present design stays. */
  readonly refuse: (text: string) => void
  readonly dismissMessage: () => void
}

export const useOpenStore = create<OpenState & OpenActions>()((set, get) => {
  const offer = (pending: PendingDesign) => {
    set({ pending, message: undefined })
    if (isUntouched()) get().accept()
  }
  const offerParsed = (parsed: ParsedDesign, from: OpenedFrom) => {
    if (parsed.kind === 'bad') return get().refuse(explainProblems(parsed.problems))
    const { design } = parsed
    offer({ design, from, name: designName(design), note: explainReading(parsed) })
  }
  return {
    pending: undefined,
    message: undefined,
    offerText: (text, from) => offerParsed(parseDesign(text), from),
    offerShare: (hash) => offerParsed(decodeShare(hash), 'link'),
    offerExample: ({ design, name }) => offer({ design, from: 'example', name, note: undefined }),
    accept: () => {
      const { pending } = get()
      if (pending === undefined) return
      useDesignStore.getState().replace(pending.design)
      const text = [`${pending.name} is open.`, pending.note].filter(Boolean).join(' ')
      set({ pending: undefined, message: { kind: 'info', text } })
    },
    decline: () => set({ pending: undefined }),
    refuse: (text) => set({ message: { kind: 'error', text: `${text}\n${UNCHANGED}` } }),
    dismissMessage: () => set({ message: undefined }),
  }
})

const UNCHANGED = 'Your present design is unchanged.'
const MOST_PROBLEMS = 5

/** True while the present design is the newcomer's and no step could be lost by leaving it. */
function isUntouched(): boolean {
  const { design, past, future, gestureStart } = useDesignStore.getState()
  const isQuiet = past.length === 0 && future.length === 0 && gestureStart === undefined
  return isQuiet && isSameDesign(design, DEFAULT_DESIGN)
}

/** The design's own name, or words for one that has none. */
export function designName(design: Design): string {
  return design.title.name.trim() || 'A design without a name'
}

/** Why a text could not be read, a line each; at most five. */
export function explainProblems(problems: readonly { readonly message: string }[]): string {
  const shown = problems.slice(0, MOST_PROBLEMS).map((problem) => problem.message)
  const rest = problems.length - shown.length
  return [...shown, ...(rest > 0 ? [`And ${rest} more.`] : [])].join('\n')
}

/** What was done to a text that was not quite of this version, or undefined when nothing was. */
export function explainReading(read: Extract<ParsedDesign, { kind: 'ok' }>): string | undefined {
  const updated = read.migratedFrom === undefined ? [] : ['It was brought up to date.']
  const names = read.filled.slice(0, MOST_PROBLEMS).map(fieldTitle)
  const rest = read.filled.length - names.length
  const list = `${names.join('; ')}${rest > 0 ? `; and ${rest} more` : ''}`
  const filled = names.length === 0 ? [] : [`What was missing took its usual value: ${list}.`]
  return [...updated, ...filled].join(' ') || undefined
}
