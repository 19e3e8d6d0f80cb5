import { bad, good, type Result } from '../basics/result'
import { type Rect, rectsOverlap, rightOf, topOf } from '../geometry/rect'
import { formatApart } from '../units/apart'
import { formatWithUnit, PLAIN_MM } from '../units/format'
import { type LengthDisplay, type Mm, settle } from '../units/length'
import { isStillWood } from './atHand'
import { sizeWith } from './factoryEdges'
import type { FloorPiece } from './floor'
import type { Damage } from './mishapKinds'
import { isSheetName } from './names'
import { type BreakdownInput, worksOf } from './steps'
import { walksOf } from './walks'

/** A damage where it lies: clipped to what it is on, and in the frame of the sheet of that piece. */
export interface Placed {
  /** As the maker calls what is damaged. */
  readonly name: string
  readonly sheet: number
  /** Null when all that was cut from the sheet is meant. */
  readonly piece: FloorPiece | null
  readonly rect: Rect
}

/** Where a damage lies; refused where there is no such piece, and where nothing of it is on the piece. */
export function placedDamage(input: BreakdownInput, floor: readonly FloorPiece[], damage: Damage): Result<Placed> {
  const { display = PLAIN_MM } = input
  const found = typeof damage.on === 'number' ? sheetOf(input, floor, damage.on) : pieceNamed(input, floor, damage.on)
  if (!found.ok) return found
  const { name, length, width, piece, sheet } = found.value
  const { left, bottom, width: along, height: across } = damage.rect
  const refused =
    tooFar('distance from the first end', left, { name, size: length, way: 'long' }, display) ??
    tooFar('distance from the first edge', bottom, { name, size: width, way: 'wide' }, display) ??
    refusedExtent('length of the damage', along, display) ??
    refusedExtent('width of the damage', across, display)
  if (refused) return bad(refused)
  const rect = clipped(damage.rect, length, width)
  const [x, y] = piece ? [piece.x, piece.y] : [0, 0]
  return good({ name, sheet, piece, rect: { ...rect, left: settle(rect.left + x), bottom: settle(rect.bottom + y) } })
}

/** Whether a piece on the floor is hit. */
export function isHitBy({ sheet, piece, rect }: Placed, each: FloorPiece): boolean {
  if (piece ? each !== piece : each.sheet !== sheet) return false
  const { x: left, y: bottom, length: width, width: height } = each
  return rectsOverlap({ left, bottom, width, height }, rect)
}

interface Found {
  readonly name: string
  readonly sheet: number
  readonly length: Mm
  readonly width: Mm
  readonly piece: FloorPiece | null
}

function sheetOf(input: BreakdownInput, floor: readonly FloorPiece[], number: number): Result<Found> {
  const walks = walksOf(input, 'rip')
  const walk = walks.find(({ sheet }) => sheet === number)
  const isFree = floor.some(({ sheet }) => sheet === number)
  if (walk && !isFree) return bad(notFreed(input, walk.name) ?? `There is no piece ${walk.name} at hand.`)
  if (walk) return good({ name: walk.name, sheet: number, ...sizeWith(walk.root, walk.rough), piece: null })
  const sheets = walks.filter(({ name, sheet }) => isSheetName(name, sheet))
  const [first, last] = [sheets[0]?.sheet, sheets.at(-1)?.sheet]
  const known = first === undefined ? 'none is laid out' : `they go from ${first} to ${last}`
  return bad(`There is no sheet ${number}; ${known}.`)
}

function pieceNamed(input: BreakdownInput, floor: readonly FloorPiece[], name: string): Result<Found> {
  const piece = floor.find((each) => isStillWood(each) && each.name === name)
  if (!piece) {
    const isGone = floor.some((each) => each.name === name)
    return bad((isGone ? null : notFreed(input, name)) ?? `There is no piece ${name} at hand.`)
  }
  const { sheet, length, width } = piece
  return good({ name, sheet, length, width, piece })
}

/** Why a piece cannot be damaged yet: the step that cuts it free is still to come. Null where no step leaves it. */
function notFreed(input: BreakdownInput, name: string): string | null {
  for (const [id, alike] of worksOf(input)) {
    const work = alike.find(({ leaves }) => leaves.some((left) => left.name === name))
    if (work) return `${name} is not cut free yet; step ${id} cuts it from ${work.takes.name}.`
  }
  return null
}

interface Extent {
  readonly name: string
  readonly size: Mm
  readonly way: 'long' | 'wide'
}

function tooFar(field: string, value: Mm, { name, size, way }: Extent, display: LengthDisplay): string | null {
  const [is, most] = formatApart(value, value < 0 ? 0 : size, display)
  if (value < 0) return `The ${field} is ${is}; it must be at least ${most}.`
  return value >= size ? `The ${field} is ${is}; ${name} is ${most} ${way}, so it must be less than that.` : null
}

/** Why a damage cannot be so long or so wide, in the maker's unit, or nothing. */
export function refusedExtent(field: string, value: Mm, display: LengthDisplay): string | null {
  const [is, least] = [value, 0].map((size) => formatWithUnit(size, display))
  return value > 0 ? null : `The ${field} is ${is}; it must be more than ${least}.`
}

function clipped(rect: Rect, length: Mm, width: Mm): Rect {
  const { left, bottom } = rect
  const [right, top] = [Math.min(length, rightOf(rect)), Math.min(width, topOf(rect))]
  return { left, bottom, width: settle(right - left), height: settle(top - bottom) }
}
