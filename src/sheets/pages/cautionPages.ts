import { CAUTIONS, type CautionTopic } from '../../catalog/cautions.ts'
import { heading, paragraph } from './blocks.ts'
import { flowBlocks } from './flowBlocks.ts'
import type { SheetContent, SheetPage } from './sheetPage.ts'

const TOPIC_WORDS: Readonly<Record<CautionTopic, string>> = {
  saws: 'Saws',
  dust: 'Dust',
  foam: 'Foam',
  lids: 'Lid and floor',
  lifting: 'Lifting',
  stings: 'Stings',
  snow: 'Snow',
  wind: 'Wind',
  finish: 'Paint and timber',
  fire: 'Fire',
}

/** The warnings, in the order of the work. */
export const cautionPages = ({ paper, type }: SheetContent): readonly SheetPage[] =>
  flowBlocks(
    [
      heading('Cautions'),
      paragraph(
        'Read these before you start. They do not replace the makers’ instructions or the rules of ' +
          'your country.',
      ),
      {
        kind: 'table',
        columns: [
          { title: 'About', share: 32, weight: 'semibold' },
          { title: 'Take care', share: 150 },
          { title: 'Source', share: 75 },
        ],
        rows: CAUTIONS.map((c) => [TOPIC_WORDS[c.topic], c.text, c.source]),
      },
    ],
    paper.content,
    type,
  ).map((items) => ({ title: 'Cautions', scale: '', items }))
