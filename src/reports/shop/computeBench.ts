import type { Design } from '../../design/schema.ts'
import type { Hive } from '../../hive/hive.ts'
import { computeAssembly } from './assembly/computeAssembly.ts'
import type { WholeShop } from './benchReport.ts'
import { computeFasteners } from './fasteners/computeFasteners.ts'
import { computeShopping } from './shopping/computeShopping.ts'
import type { ShopReport } from './shopReport.ts'

/**
 * Adds to the shop report what no check and no other report reads: fasteners, assembly, shopping list.
 * The page asks for it when somebody goes to the workshop. Linear in the number of frames.
 */
export const computeBench = (design: Design, hive: Hive, shop: ShopReport): WholeShop => {
  const { cutList, cutting, plan } = shop
  const fasteners = computeFasteners(design, hive, cutList)
  return {
    ...shop,
    fasteners,
    assembly: computeAssembly({ design, hive, cutList, fasteners }),
    shopping: computeShopping(design, { cutList, cutting, plan, fasteners }),
  }
}
