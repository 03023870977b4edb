import type { AssemblyReport } from './assembly/assemblyReport.ts'
import type { FastenerReport } from './fasteners/fastenerReport.ts'
import type { ShoppingList } from './shopping/shoppingList.ts'
import type { ShopReport } from './shopReport.ts'

/** What is only wanted at the bench and in the shop; see `computeBench`. */
export interface BenchReport {
  readonly fasteners: FastenerReport
  readonly assembly: AssemblyReport
  readonly shopping: ShoppingList
}

export type WholeShop = ShopReport & BenchReport
