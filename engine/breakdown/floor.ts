import type { PartId } from '../basics/id'
import { bad, good, type Result } from '../basics/result'
import { type Rect, rectsOverlap } from '../geometry/rect'
import type { JobStock } from '../sheets/job'
import type { Mm } from '../units/length'
import { type CutAway, cleanOf } from './cutAway'
import { isClean, type Rough, sizeWith } from './factoryEdges'
import { AS_IT_CAME, type Future } from './stage'
import type { Step, StepPiece } from './step'
import { type BreakdownInput, worksOf } from './steps'
import { copiesOf, isInShop, sheetNumbers, walksOf } from './walks'
import type { Spot, Work } from './work'

/** A piece as it lies in the shop, and where on its sheet it lay: from the sheet's corner, factory edges counted, mm. */
export interface FloorPiece extends Spot {
  readonly sheet: number
  /** The id of the stock that the sheet is of; null when it is of a piece with a damage. */
  readonly stock: string | null
  /** The id of the kind of sheet that it was bought as. */
  readonly origin: string
  readonly material: string
  readonly name: string
  readonly kind: 'sheet' | StepPiece['kind']
  readonly length: Mm
  readonly width: Mm
  readonly rough: Rough
  readonly part: PartId | null
  /** Not cut away yet, in the same frame. */
  readonly damages: readonly Rect[]
  readonly future: Future
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
  const { there, waiting } = startOf(input)
  const floor = new Map(there.map((piece) => [placeOf(piece), piece]))
  for (const [id, alike] of works) {
    const count = done.has(id) ? alike.length : id === begun?.step ? begun.pieces : 0
    for (const work of alike.slice(0, count)) {
      const key = placeOf({ sheet: work.task.sheet, ...work.takes })
      const taken = floor.get(key)
      if (!taken) return bad(`Step ${id} takes ${work.takes.name}, which no step that is done has left.`)
      floor.delete(key)
      for (const left of leftBy(work, taken)) {
        const piece = (work.kind === 'away' && waiting.get(left.name)) || left
        floor.set(placeOf(piece), piece)
      }
    }
  }
  return good([...floor.values()])
}

interface Start {
  readonly there: readonly FloorPiece[]
  /** What a damage must be cut away from first, by its name. */
  readonly waiting: ReadonlyMap<string, FloorPiece>
}

/** What is taken up, and what was written on it: a piece that needs no cut to be a part has the part's mark as its name. */
interface TakenUp {
  readonly called: string
  readonly piece: FloorPiece
}

/** Before the first step: what the layouts cut, what they leave on the rack, and what is damaged. */
function startOf(input: BreakdownInput): Start {
  const { cutAways = [] } = input
  const freed = new Set(cutAways.flatMap(cleanOf).map(({ name }) => name))
  const clean = [...sheetsOf(input), ...rackOf(input)]
  return {
    there: [
      ...clean.filter(({ called }) => !freed.has(called)).map(({ piece }) => piece),
      ...cutAways.map(damagedPiece),
    ],
    waiting: new Map(clean.filter(({ called }) => freed.has(called)).map(({ called, piece }) => [called, piece])),
  }
}

function damagedPiece({ kind, isWhole, ...piece }: CutAway): FloorPiece {
  const { sheet, material, name, length, width, rough, damages } = piece
  const common = { sheet, material, name, length, width, rough, damages, future: unplanned({ length, width }) }
  return { ...common, kind: isWhole ? 'sheet' : 'piece', stock: null, origin: kind, x: 0, y: 0, part: null }
}

/** Nothing is laid out on it. */
function unplanned(size: { readonly length: Mm; readonly width: Mm }, stage = AS_IT_CAME): Future {
  return { drawn: { kind: 'offcut', x: 0, y: 0, ...size }, called: [], stage }
}

function leftBy({ leaves }: Work, { sheet, stock, origin, material, damages }: FloorPiece): FloorPiece[] {
  return leaves.map(({ kind, name, x, y, length, width, rough, part, future }) => {
    const place = { left: x, bottom: y, width: length, height: width }
    const still = damages.filter((damage) => rectsOverlap(place, damage))
    return { sheet, stock, origin, material, name, kind, x, y, length, width, rough, part, future, damages: still }
  })
}

/** Whole sheets; one that is a part as it comes is that part. */
function sheetsOf(input: BreakdownInput): TakenUp[] {
  const layouts = copiesOf(input.answer)
  return walksOf(input, 'rip').map((walk, at): TakenUp => {
    const { sheet, material, name: called, root, rough, dealt } = walk
    const { stock } = layouts[at]!
    const future = { drawn: root, called: walk.called ?? [], stage: walk.stage }
    const place = { x: 0, y: 0, ...sizeWith(root, rough), rough, damages: [], future }
    const common = { sheet, material, stock, origin: originOf(input, stock), ...place }
    if (root.kind !== 'part' || !isClean(rough)) {
      return { called, piece: { ...common, kind: 'sheet', name: called, part: null } }
    }
    const { mark, part } = dealt(root)
    return { called, piece: { ...common, kind: 'part', name: mark, part } }
  })
}

/** What lies in the shop and is on no layout. */
function rackOf(input: BreakdownInput): TakenUp[] {
  const { answer, job } = input
  const numbers = sheetNumbers(input).rack.values()
  return job.stock
    .filter((stock) => isInShop(stock))
    .flatMap((stock): TakenUp[] => {
      const hand = input.atHand?.get(stock.id)
      const taken = answer.sheets.reduce((sum, each) => sum + (each.stock === stock.id ? each.copies : 0), 0)
      return Array.from({ length: Math.max(0, stock.quantity! - taken) }, (_, at): TakenUp => {
        const sheet = numbers.next().value!
        const { id, material } = stock
        const common = { sheet, stock: id, origin: originOf(input, id), material, x: 0, y: 0, part: null, damages: [] }
        const name = hand?.names[taken + at] ?? `sheet ${sheet}`
        const size = sizeOnRack(stock, hand?.rough)
        const future = unplanned(stock, hand?.stage)
        return { called: name, piece: { ...common, kind: 'sheet', name, ...size, future } }
      })
    })
}

function sizeOnRack({ length, width, trim = { length: 0, width: 0 } }: JobStock, beyond: Rough = NONE) {
  const rough: Rough = {
    start: trim.length + beyond.start,
    end: trim.length + beyond.end,
    low: trim.width + beyond.low,
    high: trim.width + beyond.high,
  }
  return { ...sizeWith({ length: length - 2 * trim.length, width: width - 2 * trim.width }, rough), rough }
}

const NONE: Rough = { start: 0, end: 0, low: 0, high: 0 }

function originOf({ kinds }: BreakdownInput, stock: string): string {
  return kinds?.get(stock) ?? stock
}

function placeOf({ sheet, x, y, length, width }: Pick<FloorPiece, 'sheet' | 'x' | 'y' | 'length' | 'width'>): string {
  return [sheet, x, y, length, width].join(' ')
}
