import fc from 'fast-check'
import { deflateSync, strToU8 } from 'fflate'
import { describe, expect, it } from 'vitest'
import { decodeBase64url, encodeBase64url } from '../../src/design/base64url.ts'
import { DEFAULT_DESIGN, DEFAULT_ENTRANCE } from '../../src/design/defaults.ts'
import { packDesign, unpackDesign } from '../../src/design/designDifference.ts'
import { EXAMPLES } from '../../src/design/examples.ts'
import { decodeShare, encodeShare } from '../../src/design/shareLink.ts'
import { arbitraryDesign, arbitrarySchemaDesign } from './arbitraryDesign.ts'

/** A link of version 1 with that text inside and no matching checksum. */
const linkHolding = (text: string): string =>
  `1.${encodeBase64url(new Uint8Array([0, 0, 0, 0, ...deflateSync(strToU8(text))]))}`

const messageOf = (hash: string): string => {
  const read = decodeShare(hash)
  return read.kind === 'bad' ? (read.problems[0]?.message ?? '') : 'accepted'
}

describe('encodeShare', () => {
  it('holds every valid design exactly', () => {
    const isKept = (design: typeof DEFAULT_DESIGN) => {
      const whole = { kind: 'ok', design, migratedFrom: undefined, filled: [] }
      expect(decodeShare(encodeShare(design))).toEqual(whole)
    }
    fc.assert(fc.property(arbitraryDesign(), isKept), { numRuns: 50 })
    fc.assert(fc.property(arbitrarySchemaDesign(), isKept), { numRuns: 50 })
  })

  it('gives the same link for the same design, of characters that need no escape', () => {
    fc.assert(
      fc.property(arbitraryDesign(), (design) => {
        expect(encodeShare(structuredClone(design))).toBe(encodeShare(design))
        expect(encodeShare(design)).toMatch(/^1\.[\w-]+$/)
      }),
      { numRuns: 20 },
    )
  })

  it.each(EXAMPLES)('keeps the link of $name under 600 characters', ({ design }) => {
    expect(encodeShare(design).length).toBeLessThan(600)
  })

  it('keeps the longest texts in the widest letters within what it reads', () => {
    const title = { name: '名'.repeat(80), owner: '\u0001'.repeat(80), note: '蜂𝄞'.repeat(200) }
    const design = { ...DEFAULT_DESIGN, title }
    expect(decodeShare(encodeShare(design))).toMatchObject({ kind: 'ok', design })
  })
})

describe('decodeShare', () => {
  it('reads a link with or without the # before it', () => {
    const link = encodeShare(DEFAULT_DESIGN)
    expect(decodeShare(`#${link}`)).toEqual(decodeShare(link))
  })

  it('refuses every link with a part missing or a letter changed', () => {
    const example = EXAMPLES[1]?.design ?? DEFAULT_DESIGN
    const link = encodeShare(example)
    for (let i = 2; i < link.length; i += 1) {
      expect(decodeShare(link.slice(0, i)).kind).toBe('bad')
      const other = link[i] === 'A' ? 'B' : 'A'
      const read = decodeShare(`${link.slice(0, i)}${other}${link.slice(i + 1)}`)
      // The last letters may hold bits that mean nothing; then the design is the same.
      if (read.kind === 'ok') expect(read.design).toEqual(example)
    }
  })

  it('never throws, whatever stands in the address', () => {
    fc.assert(fc.property(fc.string(), (text) => decodeShare(text).kind === 'bad'))
    const noise = fc.uint8Array({ maxLength: 300 }).map((bytes) => `1.${encodeBase64url(bytes)}`)
    fc.assert(fc.property(noise, (link) => decodeShare(link).kind === 'bad'))
  })

  it('says that a link of a later version is newer', () => {
    expect(messageOf('2.AAAA')).toMatch(/made by a newer Combwright \(version 2\); this one .* 1\./)
    expect(messageOf('0.AAAA')).toMatch(/does not hold a whole design/)
  })

  it('refuses huge links unread', () => {
    expect(messageOf(`1.${'A'.repeat(50_000_000)}`)).toMatch(/far too long/)
  })

  it('refuses a small link that unfolds into a huge text', () => {
    const bomb = linkHolding(`{"a0":"${'x'.repeat(5_000_000)}"}`)
    expect(bomb.length).toBeLessThan(20_000)
    expect(messageOf(bomb)).toMatch(/does not hold a whole design/)
  })

  it.each(['[]', '3', '{"zz":1}', '{"e":5}', '{"e":[3]}', '{"e":[{"z":1}]}', '{"__proto__":{}}'])(
    'refuses %s inside a link',
    (text) => {
      expect(messageOf(linkHolding(text))).toMatch(/does not hold a whole design/)
    },
  )

  it('names the field whose value is out of range', () => {
    // c0 is the first field of the third group: the number of frames.
    expect(messageOf(linkHolding('{"c0":9000}'))).toMatch(/^Cavity: Number of frames is 9000/)
  })

  it('refuses a whole link whose checksum is of another design', () => {
    expect(messageOf(linkHolding('{"c0":30}'))).toMatch(/other starting values/)
  })
})

describe('packDesign', () => {
  it('is empty for the default design', () => {
    expect(packDesign(DEFAULT_DESIGN)).toEqual({})
  })

  it('keeps its short keys: links that people have depend on them', () => {
    const design = {
      ...DEFAULT_DESIGN,
      title: { ...DEFAULT_DESIGN.title, note: 'n' },
      frame: { ...DEFAULT_DESIGN.frame, foundation: false },
      cavity: { ...DEFAULT_DESIGN.cavity, frames: 30, dividerThicknessMm: 15 },
      keeper: { ...DEFAULT_DESIGN.keeper, people: 3 },
      openings: {
        entrances: [DEFAULT_ENTRANCE, { ...DEFAULT_ENTRANCE, centreMm: 500, winterWidthMm: 90 }],
        vents: [],
        landingBoards: false,
        landingDepthMm: DEFAULT_DESIGN.openings.landingDepthMm,
      },
    }
    const packed = {
      a2: 'n',
      bg: false,
      c0: 30,
      cm: 15,
      k2: 3,
      l0: false,
      e: [{}, { 1: 500, 6: 90 }],
    }
    expect(packDesign(design)).toEqual(packed)
    const { version: _, ...groups } = design
    expect(unpackDesign(packed)).toEqual(groups)
  })
})

describe('encodeBase64url', () => {
  it('gives the published examples without padding', () => {
    // RFC 4648 §10.
    const published = {
      '': '',
      f: 'Zg',
      fo: 'Zm8',
      foo: 'Zm9v',
      foob: 'Zm9vYg',
      foobar: 'Zm9vYmFy',
    }
    for (const [text, encoded] of Object.entries(published)) {
      expect(encodeBase64url(strToU8(text))).toBe(encoded)
    }
    expect(encodeBase64url(new Uint8Array([251, 255]))).toBe('-_8')
  })

  it('is read back by decodeBase64url', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 40 }), (bytes) => {
        expect(decodeBase64url(encodeBase64url(bytes))).toEqual(new Uint8Array(bytes))
      }),
    )
    expect(decodeBase64url('Zm9v+')).toBeUndefined()
  })
})
