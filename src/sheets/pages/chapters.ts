import { assemblyPages } from './assemblyPages.ts'
import { cautionPages } from './cautionPages.ts'
import { checkPages } from './checkPages.ts'
import { cutListPages, supplyPages } from './cutListPages.ts'
import { cuttingPages } from './cuttingPages.ts'
import { fastenerPages } from './fastenerPages.ts'
import { heatPages } from './heatPages.ts'
import { labelPages } from './labelPages.ts'
import { sectionPages } from './sectionPages.ts'
import { setUpPages } from './setUpPages.ts'
import type { SheetContent, SheetPage } from './sheetPage.ts'
import { shoppingPages } from './shoppingPages.ts'
import { titlePages } from './titlePage.ts'
import { viewPages } from './viewPages.ts'

/** The parts of the sheet in their order; each is composed only when it is asked for. */
export const SHEET_CHAPTERS: readonly ((content: SheetContent) => readonly SheetPage[])[] = [
  titlePages,
  viewPages,
  sectionPages,
  heatPages,
  cutListPages,
  supplyPages,
  shoppingPages,
  cuttingPages,
  setUpPages,
  fastenerPages,
  assemblyPages,
  labelPages,
  checkPages,
  cautionPages,
]
