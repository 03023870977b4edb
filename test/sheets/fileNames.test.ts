import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fileNameFor } from '../../src/sheets/fileNames.ts'
import { anyText } from './anyText.ts'

describe('fileNameFor', () => {
  it('makes a plain name of a plain name', () => {
    expect(fileNameFor('Quarry Lane long hive', 'build sheet', 'pdf')).toBe(
      'quarry-lane-long-hive-build-sheet.pdf',
    )
    expect(fileNameFor('Tom’s  14×12 / "best"', '', 'json')).toBe('toms-14-12-best.json')
  })

  it('keeps letters of every script', () => {
    expect(fileNameFor('Bienenkiste für Jörg', '', 'pdf')).toBe('bienenkiste-für-jörg.pdf')
    expect(fileNameFor('蜂箱', 'cut list', 'csv')).toBe('蜂箱-cut-list.csv')
  })

  it('has a name for a name with nothing left, and avoids device names', () => {
    expect(fileNameFor('', '', 'pdf')).toBe('hive.pdf')
    expect(fileNameFor('../../..', '', 'pdf')).toBe('hive.pdf')
    expect(fileNameFor('CON', '', 'pdf')).toBe('hive-con.pdf')
  })

  it('never holds a separator, a control or a leading dot, and stays short', () => {
    fc.assert(
      fc.property(anyText(400), (name) => {
        const file = fileNameFor(name, 'build sheet', 'pdf')
        expect(file).toMatch(/^[\p{L}\p{N}][\p{L}\p{N}\p{M}-]*\.pdf$/u)
        expect(new TextEncoder().encode(file).length).toBeLessThan(200)
      }),
    )
  })
})
