import type { PartId } from '../basics/id'
import { good, type Result } from '../basics/result'
import type { JobStock } from '../sheets/job'
import { placementsIn, type SheetLayout } from '../sheets/layout'
import { sizeWith } from './factoryEdges'
import { floorAfter, type Progress } from './floor'
import type { BreakdownInput } from './steps'
import { partsIn } from './task'
import { walksOf } from './walks'

/** One sheet or piece as it is laid out, and how far it is cut. */
export interface LayoutNow {
  readonly name: string
  /** As the steps number it. */
  readonly sheet: number
  /** By itself: copies are counted out. */
  readonly layout: SheetLayout
  readonly stock: JobStock
  /** As it lies, factory edges counted, mm. */
  readonly length: number
  readonly width: number
  /** For each place of the layout, the part that lies there and whether it is cut. */
  readonly places: readonly PlaceNow[]
  readonly state: 'to come' | 'begun' | 'cut'
  readonly isToBuy: boolean
}

export interface PlaceNow {
  readonly part: PartId | null
  readonly mark: string
  readonly isCut: boolean
}

/** The layouts that the steps are made from, in their order, with what of them is cut by the steps that are done. */
export function layoutsNow(input: BreakdownInput, progress: Progress): Result<LayoutNow[]> {
  const floor = floorAfter(input, progress)
  if (!floor.ok) return floor
  const cut = new Set(floor.value.flatMap(({ part }) => part ?? []))
  const stocks = new Map(input.job.stock.map((stock) => [stock.id, stock]))
  const ids = input.answer.sheets.flatMap(({ stock, copies }) => Array.from({ length: copies }, () => stock))
  return good(
    walksOf(input, 'rip').map(({ name, sheet, root, rough, dealt }, at): LayoutNow => {
      const places = partsIn(root).map((piece): PlaceNow => {
        const { part, mark } = dealt(piece)
        return { part, mark, isCut: part !== null && cut.has(part) }
      })
      const { length, width } = sizeWith(root, rough)
      const isUncut = floor.value.some(
        (piece) => piece.sheet === sheet && piece.length === length && piece.width === width,
      )
      const state = places.every(({ isCut }) => isCut) ? 'cut' : isUncut ? 'to come' : 'begun'
      const layout = { stock: ids[at]!, copies: 1, root, placements: placementsIn(root) }
      const isToBuy = state === 'to come' && input.toBuy?.has(sheet) === true
      return { name, sheet, layout, stock: stocks.get(ids[at]!)!, length, width, places, state, isToBuy }
    }),
  )
}
