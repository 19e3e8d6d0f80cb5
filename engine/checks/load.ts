import type { House } from '../project/document'
import type { Mm } from '../units/length'
import { KG_PER_POUND, NEWTON_PER_KG } from '../units/weight'

const MM2_PER_SQUARE_FOOT = 304.8 ** 2

/** One pound per square foot in newtons per square millimetre: 47.88 Pa. */
export const PSF = (KG_PER_POUND * NEWTON_PER_KG) / MM2_PER_SQUARE_FOOT

/** An even load on shelves, and who says so. */
export interface ShelfLoad {
  /** In newtons per square millimetre. */
  readonly pressure: number
  readonly source: string
}

export const KITCHEN_TEST = 'ANSI/KCMA A161.1, 5.1, as reproduced by a panel trader'
export const CASEWORK_LOADS = 'Architectural Woodwork Standards (2009), section 10, 1.2.21.2'

/** What shelves are to carry. */
export const SHELF_LOADS: Readonly<Record<House['shelfLoad'], ShelfLoad>> = {
  kitchen: { pressure: 15 * PSF, source: KITCHEN_TEST },
  general: { pressure: 40 * PSF, source: CASEWORK_LOADS },
  books: { pressure: 50 * PSF, source: CASEWORK_LOADS },
}

/** No shelf is asked to carry more in all: 200 lb, in newtons. Source: Architectural Woodwork Standards (2009), 1.2.21.2. */
export const MOST_ON_A_SHELF = 200 * KG_PER_POUND * NEWTON_PER_KG

/** What an even load comes to on a shelf of so many mm, in newtons. */
export function loadOfShelf(length: Mm, width: Mm, pressure: number): number {
  return Math.min(pressure * length * width, MOST_ON_A_SHELF)
}
