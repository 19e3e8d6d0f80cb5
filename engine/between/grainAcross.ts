import type { BoardRole } from '../cabinets/board'
import type { Rect } from '../geometry/rect'
import type { Part, PartBank } from '../parts/part'
import type { Cabinet, Project } from '../project/document'
import { markOf } from '../project/mark'
import { stockOf, trimOf } from '../project/materials'
import { rightEdge, sharedBy } from '../runs/lane'
import { type Mm, settle } from '../units/length'

/** Fronts farther apart are not next to each other: what their frames and gaps take between them is less. */
const NEAREST = 120

/** A cabinet with its boards, whatever else was worked out for it. */
interface Built {
  readonly cabinet: Cabinet
  readonly parts: readonly Part[]
}

/** A front of one board, with its face on the wall. */
interface Front {
  readonly part: Part
  readonly cabinet: Cabinet
  readonly face: Rect
  /** Its length upright: such fronts follow one another edge to edge, the others end to end. */
  readonly isUpright: boolean
}

const FRONTS: ReadonlySet<BoardRole> = new Set<BoardRole>(['door', 'flap', 'drawerFront', 'falseFront'])

/** What a cabinet became with its banks last. */
const givenTo = new WeakMap<Built, Built>()
/** What was given to a cabinet's boards last, and for which banks. */
const lastOf = new WeakMap<readonly Part[], { readonly said: string; readonly parts: readonly Part[] }>()

/**
 * Lets the grain run on over fronts of one height from cabinet to cabinet, where that is wished and the cabinets touch:
 * they are a bank, as far as one sheet reaches. Cabinets that nothing is different for are the same objects.
 */
export function withGrainAcross<T extends Built>(cabinets: readonly T[], project: Project): readonly T[] {
  const wishing = cabinets.filter(({ cabinet }) => cabinet.isGrainAcross)
  if (wishing.length === 0) return cabinets
  const banks = new Map<Part, PartBank>()
  const names = new Map<string, number>()
  for (const fronts of rowsOf(wishing).flatMap((row) => sharesOf(row, project))) {
    const name = bankName(fronts)
    const number = (names.get(name) ?? 0) + 1
    names.set(name, number)
    const id = number > 1 ? `${name} ${number}` : name
    for (const [at, { part }] of inTheirOrder(fronts).entries()) {
      banks.set(part, { id, along: alongOf(fronts[0]!), place: at + 1 })
    }
  }
  return cabinets.map((one) => (one.cabinet.isGrainAcross ? withParts(one, banked(one.parts, banks)) : one))
}

/** The same object as before for the same boards. */
function withParts<T extends Built>(one: T, parts: readonly Part[]): T {
  if (one.parts === parts) return one
  const before = givenTo.get(one)
  if (before?.parts === parts) return before as T
  const fresh = { ...one, parts }
  givenTo.set(one, fresh)
  return fresh
}

function banked(parts: readonly Part[], banks: ReadonlyMap<Part, PartBank>): readonly Part[] {
  const own = parts.map((part) => banks.get(part) ?? null)
  const said = JSON.stringify(own)
  const before = lastOf.get(parts)
  if (before?.said === said) return before.parts
  const given = own.some(Boolean) ? parts.map((part, at) => (own[at] ? { ...part, bank: own[at] } : part)) : parts
  lastOf.set(parts, { said, parts: given })
  return given
}

function doTouch(a: Cabinet, b: Cabinet): boolean {
  return a.wall === b.wall && rightEdge(a) === settle(b.left) && sharedBy(a, b).y > 0
}

/** Fronts of one height, one beside the other, from left to right. */
function rowsOf(cabinets: readonly Built[]): Front[][] {
  const fronts = cabinets.flatMap(frontsOf).sort((a, b) => a.face.left - b.face.left || a.face.bottom - b.face.bottom)
  const rows: Front[][] = []
  for (const front of fronts) {
    const row = rows.find((others) => follows(others.at(-1)!, front, fronts))
    if (row) row.push(front)
    else rows.push([front])
  }
  return rows
}

/** Fronts of one board that lie in the plane of their cabinet's own wall. */
function frontsOf({ cabinet, parts }: Built): Front[] {
  return parts.flatMap((part): Front[] => {
    const { role, placement, length, width, isGrainBound } = part
    const isUpright = placement.length === '+y' && placement.width === '+x'
    const isLying = placement.length === '-x' && placement.width === '+y'
    if (!FRONTS.has(role) || !isGrainBound || placement.turn || !(isUpright || isLying)) return []
    const left = settle(cabinet.left + placement.origin.x - (isUpright ? 0 : length))
    const bottom = settle(cabinet.bottom + placement.origin.y)
    const face = { left, bottom, width: isUpright ? width : length, height: isUpright ? length : width }
    return [{ part, cabinet, face, isUpright }]
  })
}

function follows(before: Front, front: Front, all: readonly Front[]): boolean {
  const [a, b] = [before.face, front.face]
  const gap = b.left - rightEdge(a)
  const isBeside = a.bottom === b.bottom && a.height === b.height && gap >= 0 && gap <= NEAREST
  const across = front.isUpright ? 'cutLength' : 'cutWidth'
  const isAlike =
    before.isUpright === front.isUpright &&
    before.part.material === front.part.material &&
    before.part[across] === front.part[across]
  const isBetween = ({ cabinet, face }: Front) =>
    cabinet.wall === front.cabinet.wall &&
    face.left >= rightEdge(a) &&
    rightEdge(face) <= b.left &&
    sharedBy(face, a).y > 0
  const isNeighbour = before.cabinet === front.cabinet || doTouch(before.cabinet, front.cabinet)
  return isBeside && isAlike && isNeighbour && !all.some(isBetween)
}

/** As many as one sheet has room for, from left to right, then the next ones. Those of one cabinet stay together where they can. */
function sharesOf(row: readonly Front[], project: Project): Front[][] {
  const shares: Front[][] = []
  const add = (fronts: readonly Front[]): boolean => {
    const last = shares.at(-1)
    if (last && hasRoom([...last, ...fronts], project)) last.push(...fronts)
    else if (fronts.length === 1 || hasRoom(fronts, project)) shares.push([...fronts])
    else return false
    return true
  }
  for (const own of byCabinet(row)) if (!add(own)) for (const front of own) add([front])
  return shares.filter(({ length }) => length > 1)
}

function byCabinet(row: readonly Front[]): Front[][] {
  const groups: Front[][] = []
  for (const front of row) {
    const last = groups.at(-1)
    if (last && last[0]!.cabinet === front.cabinet) last.push(front)
    else groups.push([front])
  }
  return groups
}

function alongOf({ isUpright }: Front): PartBank['along'] {
  return isUpright ? 'width' : 'length'
}

function sizeAlong({ part, isUpright }: Front): Mm {
  return isUpright ? part.cutWidth : part.cutLength
}

/**
 * Whether one sheet gives all of them side by side, less its trim: one of the kind that is chosen for one of them; else one
 * that can be bought, or is on hand where none can.
 */
function hasRoom(fronts: readonly Front[], { stock, shop }: Project): boolean {
  const [first] = fronts as readonly [Front]
  const along = settle(fronts.reduce((sum, front) => sum + sizeAlong(front) + shop.kerf, -shop.kerf))
  const { cutLength, cutWidth, material } = first.part
  const [length, width] = first.isUpright ? [cutLength, along] : [along, cutWidth]
  const from = fronts.find(({ part }) => part.from !== null)?.part.from
  const own = stockOf(stock, material).filter(({ isExcluded }) => !isExcluded)
  const bought = own.filter(({ quantity }) => quantity === null)
  const there = from ? own.filter(({ id }) => id === from) : bought.length > 0 ? bought : own
  return there.some((sheet) => {
    const trim = 2 * trimOf(sheet, shop)
    return sheet.quantity !== 0 && length <= settle(sheet.length - trim) && width <= settle(sheet.width - trim)
  })
}

/** The way that their own widths run from left to right, and their own lengths from right to left. */
function inTheirOrder(fronts: readonly Front[]): readonly Front[] {
  return fronts[0]!.isUpright ? fronts : [...fronts].reverse()
}

/** `B2 fronts`, or `B2 to B4 fronts`. */
function bankName(fronts: readonly Front[]): string {
  const marks = [fronts[0]!, fronts.at(-1)!].map(({ cabinet }) => markOf(cabinet))
  return marks[0] === marks[1] ? `${marks[0]} fronts` : `${marks[0]} to ${marks[1]} fronts`
}
