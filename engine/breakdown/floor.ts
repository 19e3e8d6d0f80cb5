import type { PartId } from '../basics/id'
import { bad, good, type Result } from '../basics/result'
import type { Mm } from '../units/length'
import type { Step, StepPiece } from './step'
import { type BreakdownInput, worksOf } from './steps'
import { isClean, type Rough, sizeWith } from './task'
import { copiesOf, walksOf } from './walks'
import type { Spot, Work } from './work'

/** A piece as it lies in the shop, and where on its sheet it lay: from the sheet's corner, factory edges counted, mm. */
export interface FloorPiece extends Spot {
  readonly sheet: number
  /** The id of the stock that the sheet is of. */
  readonly stock: string
  readonly material: string
  readonly name: string
  readonly kind: 'sheet' | StepPiece['kind']
  readonly length: Mm
  readonly width: Mm
  readonly rough: Rough
  readonly part: PartId | null
}

/** How far the maker is: which steps are done, and how many pieces of one that is begun. */
export interface Progress {
  readonly done: ReadonlySet<Step['id']>
  readonly begun?: { readonly step: Step['id']; readonly pieces: number }
}

/** What lies in the shop after the steps that are done; steps that build on one that is not done are refused. */
export function floorAfter(input: BreakdownInput, { done, begun }: Progress): Result<FloorPiece[]> {
  const works = worksOf(input)
  const unknown = [...done, ...(begun ? [begun.step] : [])].find((id) => !works.has(id))
  if (unknown !== undefined) return bad(`There is no step ${unknown}; the last one is ${works.size}.`)
  const floor = new Map(sheetsOf(input).map((piece) => [placeOf(piece), piece]))
  for (const [id, alike] of works) {
    const count = done.has(id) ? alike.length : id === begun?.step ? begun.pieces : 0
    for (const work of alike.slice(0, count)) {
      const key = placeOf({ sheet: work.task.sheet, ...work.takes })
      const taken = floor.get(key)
      if (!taken) return bad(`Step ${id} takes ${work.takes.name}, which no step that is done has left.`)
      floor.delete(key)
      for (const piece of leftBy(work, taken)) floor.set(placeOf(piece), piece)
    }
  }
  return good([...floor.values()])
}

function leftBy({ leaves }: Work, { sheet, stock, material }: FloorPiece): FloorPiece[] {
  return leaves.map(({ kind, name, x, y, length, width, rough, part }) => {
    return { sheet, stock, material, name, kind, x, y, length, width, rough, part }
  })
}

/** Whole sheets; one that is a part as it comes is that part. */
function sheetsOf(input: BreakdownInput): FloorPiece[] {
  const layouts = copiesOf(input.answer)
  return walksOf(input, 'rip').map(({ sheet, material, name, root, rough, dealt }, at): FloorPiece => {
    const common = { sheet, material, stock: layouts[at]!.stock, x: 0, y: 0, ...sizeWith(root, rough), rough }
    if (root.kind !== 'part' || !isClean(rough)) return { ...common, kind: 'sheet', name, part: null }
    const { mark, part } = dealt(root)
    return { ...common, kind: 'part', name: mark, part }
  })
}

function placeOf({ sheet, x, y, length, width }: Pick<FloorPiece, 'sheet' | 'x' | 'y' | 'length' | 'width'>): string {
  return [sheet, x, y, length, width].join(' ')
}
