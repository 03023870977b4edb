import type { CutListRow } from '../shopReport.ts'
import type { Setting, SetUp, SetUpKind } from './setUpReport.ts'

/** A tool, and how it is set for one kind of cut. */
export interface Tool {
  /** As it is counted among the tools of a hive: `Table saw`. */
  readonly name: string
  /** With how it is set, for the head of a card: `Table saw, rip fence`. */
  readonly words: string
}

/** What a row is cut from: a board's section, or a sheet's thickness alone. */
export interface CutStock {
  readonly materialName: string
  readonly thicknessMm: number
  readonly widthMm: number | undefined
}

/** One cut that all parts of a row need, before equal ones are gathered. */
export interface Cut {
  readonly kind: SetUpKind
  readonly tool: Tool
  readonly setting: Setting
  readonly further: SetUp['further']
  readonly stock: CutStock
  readonly row: CutListRow
  /** What is taken off a board's face or edge, mm; for planing. */
  readonly surplusMm?: number
}

/** The size of a setting in its own unit. */
export const settingNumber = (setting: Setting): number => {
  switch (setting.kind) {
    case 'length':
      return setting.mm
    case 'angle':
      return setting.deg
    case 'diameter':
      return setting.mm
  }
}

/** Settings no finer than this can be told apart on a fence or a protractor: a tenth. */
export const settingTenths = (setting: Setting): number => Math.round(settingNumber(setting) * 10)

export const lengthSetting = (mm: number): Setting => ({ kind: 'length', mm })
