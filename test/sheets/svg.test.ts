import { describe, expect, it } from 'vitest'
import { type Drawing, solidLine, textItem } from '../../src/sheets/drawing.ts'
import { sectionDrawing } from '../../src/sheets/sectionDrawing.ts'
import { drawingToSvg } from '../../src/sheets/svg.ts'
import { METRIC } from '../../src/units/preferences.ts'
import { built } from './sheetFixture.ts'

/** Checks the nesting of tags and quotes; throws at the first fault. Enough for what the writer makes. */
const assertWellFormed = (xml: string): void => {
  const open: string[] = []
  const token = /<(\/?)([a-z]+)((?: [a-zA-Z:-]+="[^"<]*")*)(\/?)>|([^<]+)/gy
  for (let at = 0; at < xml.length; ) {
    token.lastIndex = at
    const found = token.exec(xml)
    if (found === null) throw new Error(`not XML at ${xml.slice(at, at + 60)}`)
    const [whole, close, name = '', attributes = '', selfClosed, text = ''] = found
    if (/&(?!(?:amp|lt|gt|quot|#39);)/.test(attributes + text))
      throw new Error(`bare & in ${whole}`)
    if (close) {
      if (open.pop() !== name) throw new Error(`</${name}> closes nothing`)
    } else if (name !== '' && !selfClosed) open.push(name)
    at += whole.length
  }
  if (open.length > 0) throw new Error(`left open: ${open.join()}`)
}

const drawing = (items: Drawing['items']): Drawing => ({ widthMm: 100, heightMm: 50, items })

describe('drawingToSvg', () => {
  it('is as large as the paper, with one unit to the millimetre', () => {
    const svg = drawingToSvg(drawing([]))
    expect(svg).toContain('width="100mm" height="50mm" viewBox="0 0 100 50"')
  })

  it('escapes text and tags, and leaves out what XML cannot hold', () => {
    const nasty = `<b>&"'</b>\u0000\u0008\ud800 ½`
    const svg = drawingToSvg(drawing([textItem({ x: 1, y: 2 }, nasty, { tag: '"><x' })]))
    assertWellFormed(svg)
    expect(svg).toContain('&lt;b&gt;&amp;&quot;&#39;&lt;/b&gt; ½')
    expect(svg).toContain('data-tag="&quot;&gt;&lt;x"')
  })

  it('writes a line where it lies, at its width', () => {
    const svg = drawingToSvg(drawing([solidLine('thick', { x: 1, y: 2 }, { x: 3.25, y: 4 })]))
    expect(svg).toContain('d="M1,2L3.25,4" stroke="currentColor" stroke-width="0.5"')
  })

  it('fills coloured loops as one path, so that holes stay open, and draws pale lines in grey', () => {
    const square = (a: number, b: number) => [
      { x: a, y: a },
      { x: b, y: a },
      { x: b, y: b },
    ]
    const svg = drawingToSvg(
      drawing([
        {
          kind: 'colour',
          loops: [square(0, 9), square(2, 4).toReversed()],
          colour: { r: 1, g: 20, b: 255 },
          tag: 'wall',
        },
        { ...solidLine('thin', { x: 0, y: 0 }, { x: 1, y: 0 }), tone: 'pale' },
      ]),
    )
    assertWellFormed(svg)
    expect(svg).toContain(
      '<path d="M0,0L9,0L9,9ZM4,4L4,2L2,2Z" fill="rgb(1,20,255)" data-tag="wall"/>',
    )
    // 0.45 grey is 0.55 of ink on white.
    expect(svg).toContain('stroke-width="0.18" stroke-opacity="0.55"')
  })

  it('carries pictures inside', () => {
    const svg = drawingToSvg(
      drawing([
        {
          kind: 'image',
          at: { x: 0, y: 0 },
          widthMm: 10,
          heightMm: 10,
          bytes: new Uint8Array([77, 97, 110, 1]),
          format: 'png',
        },
      ]),
    )
    expect(svg).toContain('href="data:image/png;base64,TWFuAQ=="')
  })

  it('is well formed for a whole section', () => {
    const { hive } = built()
    assertWellFormed(drawingToSvg(sectionDrawing(hive, { axis: 'x', at: 300 }, METRIC)))
  })
})
