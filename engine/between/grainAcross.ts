import type { BoardRole } from '../cabinets/board'
import type { Rect } from '../geometry/rect'
import type { Part, PartBank } from '../parts/part'
import type { Cabinet, Project } from '../project/document'
import { markOf } from '../project/mark'
import { rightEdge, sharedBy } from '../runs/lane'
import { settle } from '../units/length'
import { isRoomFor, type WithParts, withBanks } from './banked'

/** Fronts farther apart are not next to each other: what their frames and gaps take between them is less. */
const NEAREST = 120

/** A cabinet with its boards, whatever else was worked out for it. */
interface Built extends WithParts {
  readonly cabinet: Cabinet
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
  return cabinets.map((one) => (one.cabinet.isGrainAcross ? withBanks(one, banks) : one))
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
  const hasRoom = (fronts: readonly Front[]) =>
    isRoomFor(
      fronts.map(({ part }) => part),
      alongOf(fronts[0]!),
      project,
    )
  const add = (fronts: readonly Front[]): boolean => {
    const last = shares.at(-1)
    if (last && hasRoom([...last, ...fronts])) last.push(...fronts)
    else if (fronts.length === 1 || hasRoom(fronts)) shares.push([...fronts])
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

/** The way that their own widths run from left to right, and their own lengths from right to left. */
function inTheirOrder(fronts: readonly Front[]): readonly Front[] {
  return fronts[0]!.isUpright ? fronts : [...fronts].reverse()
}

/** `B2 fronts`, or `B2 to B4 fronts`. */
function bankName(fronts: readonly Front[]): string {
  const marks = [fronts[0]!, fronts.at(-1)!].map(({ cabinet }) => markOf(cabinet))
  return marks[0] === marks[1] ? `${marks[0]} fronts` : `${marks[0]} to ${marks[1]} fronts`
}
