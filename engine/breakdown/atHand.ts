import type { CutRow } from '../cutlist/row'
import type { Rect } from '../geometry/rect'
import type { JobStock, SheetJob } from '../sheets/job'
import type { SheetAnswer } from '../sheets/layout'
import { settle } from '../units/length'
import { type CutAway, cleanOf, cutAwayOf, type NamedPiece, usableOf } from './cutAway'
import type { Rough } from './factoryEdges'
import type { FloorPiece } from './floor'
import { pinnedKinds } from './pins'
import type { Future, Stage } from './stage'
import { type AtHand, isInShop } from './walks'

/** A sheet or a piece of one that lies in the shop and can be cut. */
export interface PieceAtHand {
  readonly sheet: number
  readonly stock: string | null
  /** The id of the kind of sheet that it was bought as. */
  readonly origin: string
  readonly material: string
  readonly name: string
  /** On the sheet as it came, with the factory edges that are still on the piece, mm. */
  readonly place: Rect
  readonly rough: Rough
  /** Whether it is a sheet as it came. */
  readonly isWhole: boolean
  /** A layout asks for it, and nobody has it yet. */
  readonly isToBuy?: boolean
  /** What is still to become of it by the layouts; nothing of what is freed of a damaged piece. */
  readonly future?: Future
  /** How far it has come, and what its pieces are to be called, where that stays as it was. */
  readonly stage?: Stage
  readonly called?: readonly string[]
}

export interface HandInput {
  readonly job: SheetJob
  /** What is still to be cut. */
  readonly rows: readonly CutRow[]
  /** Pieces of still earlier sheets among the stock, as the layouts had them. */
  readonly before: ReadonlyMap<string, AtHand>
  /** The numbers of sheets that are still to be bought. */
  readonly toBuy?: ReadonlySet<number>
  /** The number of the first piece that a damage is cut away from. */
  readonly firstNumber: number
}

export interface Hand {
  /** What can be cut: damaged pieces by what is clean of them. */
  readonly pieces: readonly PieceAtHand[]
  readonly cutAways: readonly CutAway[]
}

/**
 * Everything that can still be cut: uncut sheets, what is partly cut, offcuts, and what is clean of a damaged piece. What
 * is still to be bought comes last.
 */
export function handOf(floor: readonly FloorPiece[], input: HandInput): Hand {
  const pieces: PieceAtHand[] = []
  const cutAways: CutAway[] = []
  for (const each of floor) {
    if (!isStillWood(each)) continue
    const piece = pieceOf(each, input)
    if (each.damages.length > 0) {
      const cutAway = cutAwayFor(each, piece, input, input.firstNumber + cutAways.length)
      if (cutAway.cuts.length > 0) cutAways.push(cutAway)
      pieces.push(...cleanOf(cutAway).map((clean) => cleanPiece(clean, piece)))
    } else if (piece.isWhole || isWorthKeeping(usableOf(piece.place, piece.rough), piece.material, input)) {
      pieces.push(piece)
    }
  }
  const there = pieces.filter(({ isToBuy }) => !isToBuy)
  return { pieces: namedApart([...there, ...pieces.filter(({ isToBuy }) => isToBuy)]), cutAways }
}

/** Whether it can be cut: neither a finished part nor thrown away. */
export function isStillWood({ kind }: FloorPiece): boolean {
  return kind !== 'part' && kind !== 'waste'
}

export function pieceOf(piece: FloorPiece, { before, toBuy }: Pick<HandInput, 'before' | 'toBuy'>): PieceAtHand {
  const { sheet, stock, origin, material, name, kind, x, y, length, width, rough, future } = piece
  const place = { left: x, bottom: y, width: length, height: width }
  const isWhole = kind === 'sheet' && !(stock !== null && before.has(stock))
  const common = { sheet, stock, origin, material, name, place, rough, isWhole, future }
  // A sheet that something was cut from, or that is damaged, has come.
  return isWhole && piece.damages.length === 0 && toBuy?.has(sheet) ? { ...common, isToBuy: true } : common
}

function cutAwayFor(each: FloorPiece, piece: PieceAtHand, input: HandInput, number: number): CutAway {
  const { name, material, origin: kind, length, width, rough, x, y } = each
  const damages = each.damages.map(({ left, bottom, ...size }) => {
    return { left: settle(left - x), bottom: settle(bottom - y), ...size }
  })
  const damaged = { name, material, kind, isWhole: piece.isWhole, length, width, rough, damages }
  return cutAwayOf(damaged, number, input.job.kerf, (usable) => isWorthKeeping(usable, material, input))
}

function cleanPiece({ name, rect, rough }: NamedPiece, from: PieceAtHand): PieceAtHand {
  const place = { ...rect, left: settle(rect.left + from.place.left), bottom: settle(rect.bottom + from.place.bottom) }
  const { future: _, ...clean } = from
  return { ...clean, name, place, rough, isWhole: false }
}

interface Usable {
  readonly length: number
  readonly width: number
}

function isWorthKeeping({ length, width }: Usable, material: string, { job, rows }: HandInput): boolean {
  const { offcutLeast: least } = job
  if (length <= 0 || width <= 0) return false
  const fits = (along: number, across: number) => along <= length && across <= width
  const serves = rows.some((row) => {
    const turns = !row.isGrainBound && fits(row.width, row.length)
    return row.material === material && (turns || fits(row.length, row.width))
  })
  return serves || (least !== undefined && fits(least.length, least.width))
}

/** `1c` and `1c (2)`: no two pieces are called the same. */
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
  /** The kind of sheet that was bought, by the id of what is at hand of it. */
  readonly kinds: ReadonlyMap<string, string>
  /** The numbers of whole sheets by the id of their stock, in the order in which they were given. */
  readonly numbered: ReadonlyMap<string, readonly number[]>
  /** The id of the stock that a piece is. */
  readonly idOf: (piece: PieceAtHand) => string
}

/**
 * What there is and what can be bought, as stock of a job. What is at hand costs nothing and is used first; pieces that
 * are equal are one stock. What can be bought is fewer by what the layouts took; a sheet that is still to be bought is of
 * the stock that it is bought from.
 */
export function stockOf(hand: readonly PieceAtHand[], { job, rows }: HandInput, answer: SheetAnswer): Stocked {
  const taken = (id: string) => answer.sheets.reduce((sum, each) => sum + (each.stock === id ? each.copies : 0), 0)
  const pins = pinnedKinds(rows)
  const stock: JobStock[] = job.stock
    .filter((each) => !isInShop(each))
    .flatMap((each) => leftToBuy(each, taken(each.id), pins.has(each.id)))
  const atHand = new Map<string, AtHand>()
  const kinds = new Map<string, string>()
  const given = new Map<PieceAtHand, string>()
  const give = (alike: Alike, id: string) => {
    for (const piece of alike) given.set(piece, id)
  }
  // An id that a kind of sheet had is never given to another.
  const ids = new Set([...job.stock.filter((each) => !isInShop(each)), ...stock].map(({ id }) => id))
  for (const { origin } of hand) ids.add(origin)
  for (const piece of hand.filter(({ isToBuy }) => isToBuy)) give([piece], piece.origin)
  for (const alike of alikeIn(hand.filter(({ isToBuy }) => !isToBuy))) {
    if (alike[0].isWhole && pins.has(alike[0].origin)) {
      putBack(stock, stockOfAlike(alike[0].origin, alike, job))
      give(alike, alike[0].origin)
      continue
    }
    const id = freeId(ids)
    ids.add(id)
    stock.push(stockOfAlike(id, alike, job))
    give(alike, id)
    const [{ isWhole, rough, origin, stage }] = alike
    kinds.set(id, origin)
    const turn = stage ? { stage, called: alike.map(({ called }) => called ?? []) } : {}
    if (!isWhole) atHand.set(id, { names: alike.map(({ name }) => name), rough, ...turn })
  }
  const idOf = (piece: PieceAtHand) => given.get(piece)!
  return { stock, atHand, kinds, numbered: numbersOf(hand, idOf), idOf }
}

function numbersOf(hand: readonly PieceAtHand[], idOf: Stocked['idOf']): Map<string, readonly number[]> {
  const numbers = new Map<string, readonly number[]>()
  for (const piece of hand) {
    if (piece.isWhole) numbers.set(idOf(piece), [...(numbers.get(idOf(piece)) ?? []), piece.sheet])
  }
  return numbers
}

/** Whole sheets that boards must come from lie with those of their kind that can be bought. */
function putBack(stock: JobStock[], back: JobStock): void {
  const at = stock.findIndex(({ id }) => id === back.id)
  const bought = stock[at]
  if (!bought) stock.push(back)
  else if (bought.quantity !== undefined) stock[at] = { ...bought, quantity: bought.quantity + back.quantity! }
}

type Alike = readonly [PieceAtHand, ...PieceAtHand[]]

function stockOfAlike(id: string, alike: Alike, job: SheetJob): JobStock {
  const [first] = alike
  const bought = { id, material: first.material, price: 0, offcut: true, quantity: alike.length }
  if (!first.isWhole) return { ...bought, ...usableOf(first.place, first.rough), trim: { length: 0, width: 0 } }
  return { ...job.stock.find((each) => each.id === first.stock)!, ...bought }
}

function alikeIn(hand: readonly PieceAtHand[]): Alike[] {
  const groups = new Map<string, [PieceAtHand, ...PieceAtHand[]]>()
  for (const piece of hand) {
    const { length, width } = usableOf(piece.place, piece.rough)
    const key = piece.isWhole
      ? `whole ${piece.stock}`
      : JSON.stringify([piece.material, piece.origin, length, width, Object.entries(piece.rough).sort(), piece.stage])
    const group = groups.get(key)
    if (group) group.push(piece)
    else groups.set(key, [piece])
  }
  return [...groups.values()]
}

/** A kind that boards must come from is still known when it is used up. */
function leftToBuy(stock: JobStock, taken: number, isPinned: boolean): JobStock[] {
  if (stock.quantity === undefined) return [stock]
  const quantity = Math.max(0, stock.quantity - taken)
  return quantity > 0 || isPinned ? [{ ...stock, quantity }] : []
}

function freeId(taken: ReadonlySet<string>): string {
  let number = 1
  while (taken.has(`hand${number}`)) number++
  return `hand${number}`
}
