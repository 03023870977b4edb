import fc from 'fast-check'

/** Text of any code points, lone surrogates and controls among them. */
export const anyText = (maxLength: number): fc.Arbitrary<string> =>
  fc
    .array(
      fc.oneof(
        fc.integer({ min: 0, max: 0x2ff }),
        fc.integer({ min: 0, max: 0xffff }),
        fc.integer({ min: 0x10000, max: 0x10ffff }),
      ),
      { maxLength },
    )
    .map((points) => points.map((c) => String.fromCodePoint(c)).join(''))
