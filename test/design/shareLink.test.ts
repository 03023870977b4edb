import fc from 'fast-check'
import { deflateSync, strToU8 } from 'fflate'
import { describe, expect, it } from 'vitest'
import { decodeBase64url, encodeBase64url } from '../../src/design/base64url.ts'
import {
  DEFAULT_DEFECT,
  DEFAULT_DESIGN,
  DEFAULT_ENTRANCE,
  DEFAULT_LUMBER,
  DEFAULT_MADE,
  DEFAULT_SHEET,
} from '../../src/design/defaults.ts'
import { packDesign, unpackDesign } from '../../src/design/designDifference.ts'
import { EXAMPLES } from '../../src/design/examples.ts'
import { formatDesign } from '../../src/design/formatDesign.ts'
import { designSchema, MAX_DEFECTS, MAX_MADE, MAX_STOCK_ROWS } from '../../src/design/schema.ts'
import { decodeShare, encodeShare } from '../../src/design/shareLink.ts'
import { MAX_DESIGN_BYTES } from '../../src/design/sizeLimit.ts'
import { arbitraryDesign, arbitrarySchemaDesign } from './arbitraryDesign.ts'

/** A link with that text inside and no matching checksum. */
const linkHolding = (text: string): string =>
  `2.${encodeBase64url(new Uint8Array([0, 0, 0, 0, ...deflateSync(strToU8(text))]))}`

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
        expect(encodeShare(design)).toMatch(/^2\.[\w-]+$/)
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

describe('encodeShare of a full design', () => {
  it('keeps every list at its longest within what it reads', () => {
    const name = '名'.repeat(40)
    const long = (count: number) => Array.from({ length: count }, (_, i) => i)
    const design = {
      ...DEFAULT_DESIGN,
      stock: {
        lumber: long(MAX_STOCK_ROWS).map((i) => ({
          ...DEFAULT_LUMBER,
          name,
          material: 'western-red-cedar',
          thicknessMm: 20 + i / 7,
          widthMm: 90 + i / 7,
          lengthMm: 2000 + i / 7,
          price: i / 7,
          count: i,
          defects: long(MAX_DEFECTS).map((k) => ({ fromMm: k / 7, toMm: 100 + k / 7 })),
        })),
        sheets: long(MAX_STOCK_ROWS).map((i) => ({ ...DEFAULT_SHEET, name, price: i / 7 })),
        goods: long(MAX_STOCK_ROWS).map((i) => ({ id: `${'a'.repeat(76)}${i}`, price: i / 7 })),
      },
      made: long(MAX_MADE).map((i) => ({
        partId: `${'front-wall-cladding-board-of-the-row-'.repeat(2)}${i}`,
        lengthMm: 100 + i / 7,
        widthMm: 50 + i / 7,
        thicknessMm: 10 + i / 7,
      })),
    }
    expect(designSchema.safeParse(design).success).toBe(true)
    expect(decodeShare(encodeShare(design))).toMatchObject({ kind: 'ok', design })
    expect(formatDesign(design).length).toBeLessThan(MAX_DESIGN_BYTES)
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
    const versions = fc.constantFrom(1, 2)
    const noise = fc
      .tuple(versions, fc.uint8Array({ maxLength: 300 }))
      .map(([version, bytes]) => `${version}.${encodeBase64url(bytes)}`)
    fc.assert(fc.property(noise, (link) => decodeShare(link).kind === 'bad'))
  })

  it('says that a link of a later version is newer', () => {
    expect(messageOf('3.AAAA')).toMatch(/made by a newer Combwright \(version 3\); this one .* 2\./)
    expect(messageOf('0.AAAA')).toMatch(/does not hold a whole design/)
  })

  it('refuses huge links unread', () => {
    expect(messageOf(`2.${'A'.repeat(50_000_000)}`)).toMatch(/far too long/)
  })

  it('refuses a small link that unfolds into a huge text', () => {
    const bomb = linkHolding(`{"a0":"${'x'.repeat(5_000_000)}"}`)
    expect(bomb.length).toBeLessThan(200_000)
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

describe('decodeShare of a link of version 1', () => {
  // Written by version 1, which had the same examples.
  it.each([
    ['quarry-lane', '1.QmazYauuBQA'],
    [
      'two-colony-school',
      '1.Vc9bmx2OwQ6CMBBEf2Wz52qEKGq_w5vxUGsLDZU1tEoI4d-dcppmZjpvFzYH1nybZGclyjBTsp1IpC78HCs29Za6Ic87F9oukx_N2yX6mDG7F3kZKU9C6W1ipG0iuKQoykRukG_bbRVDNpqU9li04NUX6JN1kRcAWCiJY32FeNZV0R6JDxmYEka4R8Xe4vtBcVuxPjd4hHL_hkcrwK32qAXcXTWKe6RnCPzrCe0efq0YpPuyqoWL31zWx_oH',
    ],
    [
      'seaside',
      '1.7aakSy2PUXLDIAxEr6LRN_aA4zqpr9FegBphmGDTAbeeTid3zzrJ10pPy0r8s9U88ofYGp1QjeucpHHyvQUK8VdYse1g-Nxl3f4an3_Ky0S-2EUq2dVRinPYaLcpVfK5kKUlJkdTtnVTtOdyFQd_XjCZgo2lRe6XQe4zC92EM7oeKjyaQ_2rD9A3aALvFDv4dPuOoufxpBULgGkHFADDARwGiv3DeEYB3oHP2HfWR4EP9YgMAMZA0RvwcOLxghUBDxokxIPjhCt8l0Hf7g',
    ],
    [
      'dry-valley',
      '1.xAFsGHWPwUoDMRCGX2WYcyq721VLboJvIR7GZmKC2USy6ZZS-u7-wYMH6SUD3zf_H-bKMrDl13qhTVLSC4W4KRuWCfiFztEprUHw1lK8oXMpbufjR1WKeT0labFkkuxIaNPcQEnlGEiBfKkUSqP1tCxa1wf0uj16_0o6mdk-D4b1n1GYce5KoZp8a1XXeWR7APZHttOj4dBPyKUukmDDiNQTJi6YZkz0zn0LbTvwCD4eDH91b3hj-3bl3pDUN-QRn_YQXeMTpMdpuJnfnRo_w_2l99sP',
    ],
    [
      'metric-zander',
      '1.zDfMZDVOy3LCMAz8FY3OKROnCQHfe-wP9GYcpTZjEsbxtAMM_84qwGm1D0l7Y1ez5W8pOXr6cdMgmUL8E67YNXC-4m8oIhMt5xTLOzFmd5KFxjmTo3NyXug_lkB-TkNFQ76ATkXyssGdg364rovKcLXtewyfbJsdsGVrOmAHrIFbBBodegTWYfdy9hA0eWCrix5U5eFpe_wx0L0ADXB88cR2X_GIP1vEgtaZ5nxyCXWCWc2AVpoNKNUrIvxh2oqPSDcbKEet29X1_QE',
    ],
  ])('reads the link of %s', (id, link) => {
    const example = EXAMPLES.find((candidate) => candidate.id === id)
    expect(decodeShare(link)).toEqual({
      kind: 'ok',
      design: example?.design,
      migratedFrom: 1,
      filled: [],
    })
  })

  it('refuses it when a letter of its checksum was changed', () => {
    expect(messageOf('1.QmazYauuBQA')).toBe('accepted')
    expect(messageOf('1.QmbzYauuBQA')).toMatch(/damaged/)
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

  it('packs lists of the stock, and lists in them, by their letters', () => {
    const board = { ...DEFAULT_LUMBER, lengthMm: 3000 }
    const design = {
      ...DEFAULT_DESIGN,
      stock: {
        lumber: [{ ...board, defects: [{ ...DEFAULT_DEFECT, fromMm: 40 }] }],
        sheets: [{ ...DEFAULT_SHEET, price: 9 }],
        goods: [{ id: 'glue', price: 3 }],
      },
      made: [{ ...DEFAULT_MADE, partId: 'leg' }],
    }
    const packed = {
      w: [{ 4: 3000, z: [{ 0: 40 }] }],
      s: [{ 5: 9 }],
      g: [{ 0: 'glue', 1: 3 }],
      m: [{ 0: 'leg' }],
    }
    expect(packDesign(design)).toEqual(packed)
    const { version: _, ...groups } = design
    expect(unpackDesign(packed)).toEqual(groups)
    expect(unpackDesign({ w: [{ z: 3 }] })).toBeUndefined()
    expect(unpackDesign({ w: [{ z: [{ 9: 1 }] }] })).toBeUndefined()
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
