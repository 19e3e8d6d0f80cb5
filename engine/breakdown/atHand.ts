import type { CutRow } from '../cutlist/row'
import { type Rect, rectsOverlap, rightOf, topOf } from '../geometry/rect'
import type { JobStock, SheetJob } from '../sheets/job'
import type { SheetAnswer } from '../sheets/layout'
import { settle } from '../units/length'
import { cleanRects } from './clean'
import type { FloorPiece } from './floor'
import type { Rough } from './task'
import type { AtHand } from './walks'

/** A sheet or a piece of one that lies in the shop and can be cut. */
export interface PieceAtHand {
  readonly sheet: number
  readonly stock: string
  readonly material: string
  readonly name: string
  /** On the sheet as it came, with the factory edges that are still on the piece, mm. */
  readonly place: Rect
  readonly rough: Rough
  /** Whether it is a sheet as it came. */
  readonly isWhole: boolean
}

export interface HandInput {
  readonly job: SheetJob
  /** What is still to be cut. */
  readonly rows: readonly CutRow[]
  readonly damage: { readonly sheet: number; readonly rect: Rect } | null
  /** Pieces of still earlier sheets among the stock, as the layouts had them. */
  readonly before: ReadonlyMap<string, AtHand>
}

/** Everything that can still be cut: uncut sheets, what is partly cut, offcuts, and what is clean of a damaged piece. */
export function handOf(floor: readonly FloorPiece[], input: HandInput): PieceAtHand[] {
  const pieces = floor
    .filter(({ kind }) => kind !== 'part' && kind !== 'waste')
    .flatMap((piece) => cleanOf(pieceOf(piece, input), input))
    .filter((piece) => piece.isWhole || isWorthKeeping(piece, input))
  return namedApart(pieces)
}

function pieceOf(piece: FloorPiece, { before }: HandInput): PieceAtHand {
  const { sheet, stock, material, name, kind, x, y, length, width, rough } = piece
  const place = { left: x, bottom: y, width: length, height: width }
  const called = kind === 'offcut' ? `offcut of sheet ${sheet}` : name
  return { sheet, stock, material, name: called, place, rough, isWhole: kind === 'sheet' && !before.has(stock) }
}

function cleanOf(piece: PieceAtHand, { job, damage }: HandInput): PieceAtHand[] {
  const { place, rough } = piece
  if (!damage || damage.sheet !== piece.sheet || !rectsOverlap(place, damage.rect)) return [piece]
  return cleanRects(place, damage.rect, job.kerf).map((clean): PieceAtHand => {
    const edges = {
      start: clean.left === place.left ? rough.start : 0,
      low: clean.bottom === place.bottom ? rough.low : 0,
      end: settle(rightOf(clean)) === settle(rightOf(place)) ? rough.end : 0,
      high: settle(topOf(clean)) === settle(topOf(place)) ? rough.high : 0,
    }
    return { ...piece, name: `clean piece of ${piece.name}`, place: clean, rough: edges, isWhole: false }
  })
}

/** Inside its factory edges: what a layout may use. */
function usableOf({ place, rough }: PieceAtHand): { readonly length: number; readonly width: number } {
  return {
    length: settle(place.width - rough.start - rough.end),
    width: settle(place.height - rough.low - rough.high),
  }
}

function isWorthKeeping(piece: PieceAtHand, { job, rows }: HandInput): boolean {
  const { length, width } = usableOf(piece)
  const { offcutLeast: least } = job
  if (length <= 0 || width <= 0) return false
  const fits = (along: number, across: number) => along <= length && across <= width
  const serves = rows.some((row) => {
    const turns = !row.isGrainBound && fits(row.width, row.length)
    return row.material === piece.material && (turns || fits(row.length, row.width))
  })
  return serves || (least !== undefined && fits(least.length, least.width))
}

/** `offcut of sheet 2` and `offcut of sheet 2 (2)`: no two pieces are called the same. */
function namedApart(pieces: readonly PieceAtHand[]): PieceAtHand[] {
  const counts = new Map<string, number>()
  return pieces.map((piece) => {
    const count = (counts.get(piece.name) ?? 0) + 1
    counts.set(piece.name, count)
    return count === 1 ? piece : { ...piece, name: `${piece.name} (${count})` }
  })
}

export interface Stocked {
  readonly stock: readonly JobStock[]
  readonly atHand: ReadonlyMap<string, AtHand>
}

/**
 * What there is and what can be bought, as stock of a job. What is at hand costs nothing and is used first; pieces that
 * are equal are one stock. What was taken from the rack for the layouts is no longer on it.
 */
export function stockOf(hand: readonly PieceAtHand[], { job, before }: HandInput, answer: SheetAnswer): Stocked {
  const taken = (id: string) => answer.sheets.reduce((sum, each) => sum + (each.stock === id ? each.copies : 0), 0)
  const stock: JobStock[] = job.stock.flatMap((each) => onTheRack(each, taken(each.id)))
  const atHand = new Map([...before].map(([id, { names, rough }]) => [id, { names: names.slice(taken(id)), rough }]))
  const ids = new Set(job.stock.map(({ id }) => id))
  for (const alike of alikeIn(hand)) {
    const id = freeId(ids)
    ids.add(id)
    stock.push(stockOfAlike(id, alike, job))
    const [{ isWhole, rough }] = alike
    if (!isWhole) atHand.set(id, { names: alike.map(({ name }) => name), rough })
  }
  return { stock, atHand }
}

type Alike = readonly [PieceAtHand, ...PieceAtHand[]]

function stockOfAlike(id: string, alike: Alike, job: SheetJob): JobStock {
  const [first] = alike
  const bought = { id, material: first.material, price: 0, offcut: true, quantity: alike.length }
  if (!first.isWhole) return { ...bought, ...usableOf(first), trim: { length: 0, width: 0 } }
  return { ...job.stock.find((each) => each.id === first.stock)!, ...bought }
}

function alikeIn(hand: readonly PieceAtHand[]): Alike[] {
  const groups = new Map<string, [PieceAtHand, ...PieceAtHand[]]>()
  for (const piece of hand) {
    const { length, width } = usableOf(piece)
    const key = piece.isWhole
      ? `whole ${piece.stock}`
      : JSON.stringify([piece.material, length, width, Object.entries(piece.rough).sort()])
    const group = groups.get(key)
    if (group) group.push(piece)
    else groups.set(key, [piece])
  }
  return [...groups.values()]
}

function onTheRack(stock: JobStock, taken: number): JobStock[] {
  if (stock.quantity === undefined) return [stock]
  const quantity = stock.quantity - taken
  return quantity > 0 ? [{ ...stock, quantity }] : []
}

function freeId(taken: ReadonlySet<string>): string {
  let number = 1
  while (taken.has(`hand${number}`)) number++
  return `hand${number}`
}
