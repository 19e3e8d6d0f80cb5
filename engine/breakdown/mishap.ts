import type { PartId } from '../basics/id'
import { bad, good, type Result } from '../basics/result'
import type { CutRow } from '../cutlist/row'
import { rectsOverlap } from '../geometry/rect'
import type { SheetJob } from '../sheets/job'
import { jobParts } from '../sheets/jobOf'
import { handOf, type PieceAtHand, type Stocked, stockOf } from './atHand'
import { type FloorPiece, floorAfter, type Progress } from './floor'
import type { Mishap } from './mishapKinds'
import { toldOf } from './mishapWords'
import type { BreakdownInput } from './steps'
import { copiesOf } from './walks'

export interface Replan {
  /** Cut, sound and still of the right size. */
  readonly cut: readonly PartId[]
  /** Cut, and to be cut again. */
  readonly lost: readonly PartId[]
  /** What sheets and pieces there are, each with its place on its sheet. */
  readonly pieces: readonly PieceAtHand[]
  /** The parts that are still to be cut. */
  readonly cutList: { readonly rows: readonly CutRow[] }
  readonly job: SheetJob
  /** For the breakdown of the new layouts: the names and edges of pieces at hand, and where the numbers of sheets go on. */
  readonly atHand: NonNullable<BreakdownInput['atHand']>
  readonly firstSheet: number
  /** In plain words: what changes. */
  readonly told: readonly string[]
}

/**
 * Plans again after a mishap. What is cut stays cut; what lies in the shop is stock, damaged pieces by their clean
 * rectangles; and the parts that are missing are a new sheet job.
 */
export function replanAfter(input: BreakdownInput, progress: Progress, mishap: Mishap): Result<Replan> {
  const floor = floorAfter(input, progress)
  if (!floor.ok) return floor
  const refused = refusal(input, floor.value, mishap)
  if (refused) return bad(refused)
  const rows = mishap.kind === 'thickness' ? mishap.rows : input.cutList.rows
  const { cut, lost } = sortedOut(floor.value, input.cutList.rows, rows, mishap)
  const needed = neededOf(rows, new Set(cut))
  const damage = mishap.kind === 'damaged' ? mishap : null
  const shop = { job: input.job, rows: needed, damage, before: input.atHand ?? new Map() }
  const hand = handOf(floor.value, shop)
  const stocked = stockOf(hand, shop, input.answer)
  const firstSheet = (input.firstSheet ?? 1) + copiesOf(input.answer).length
  return good({
    ...{ cut, lost, pieces: hand, cutList: { rows: needed } },
    job: jobOf(input.job, stocked, needed, rows),
    atHand: stocked.atHand,
    firstSheet,
    told: toldOf({ input, mishap, cut, lost, hand, needed }),
  })
}

/** Why a mishap cannot be: the part is not cut, or there is no such sheet. */
function refusal({ answer, firstSheet = 1 }: BreakdownInput, floor: readonly FloorPiece[], mishap: Mishap) {
  switch (mishap.kind) {
    case 'spoiled': {
      const there = new Set(floor.map(({ part }) => part))
      const missing = mishap.parts.find((part) => !there.has(part))
      return missing === undefined ? null : `${missing} is not cut yet, so it cannot be spoiled.`
    }
    case 'damaged': {
      const last = firstSheet + copiesOf(answer).length - 1
      const isThere = mishap.sheet >= firstSheet && mishap.sheet <= last
      if (isThere) return null
      const known = last < firstSheet ? 'none is laid out' : `they go from ${firstSheet} to ${last}`
      return `There is no sheet ${mishap.sheet}; ${known}.`
    }
    case 'thickness':
      return null
  }
}

/**
 * Parts that are cut: those that stay, and those that are spoiled, damaged or no longer of the right size. A part that the
 * design no longer has is neither.
 */
function sortedOut(
  floor: readonly FloorPiece[],
  before: readonly CutRow[],
  after: readonly CutRow[],
  mishap: Mishap,
): { readonly cut: PartId[]; readonly lost: PartId[] } {
  const [was, is] = [rowOfPart(before), rowOfPart(after)]
  const parts = floor.flatMap((piece) => (piece.part === null ? [] : [{ ...piece, part: piece.part }]))
  const cut: PartId[] = []
  const lost: PartId[] = []
  for (const piece of parts) {
    const [old, now] = [was.get(piece.part), is.get(piece.part)]
    if (!old || !now) continue
    if (isSameToTheSaw(old, now) && !isHit(piece, mishap)) cut.push(piece.part)
    else lost.push(piece.part)
  }
  return { cut, lost }
}

function rowOfPart(rows: readonly CutRow[]): Map<PartId, CutRow> {
  return new Map(rows.flatMap((row) => row.parts.map((part) => [part, row] as const)))
}

function isSameToTheSaw(a: CutRow, b: CutRow): boolean {
  return a.material === b.material && a.length === b.length && a.width === b.width
}

function isHit(piece: FloorPiece & { readonly part: PartId }, mishap: Mishap): boolean {
  if (mishap.kind === 'spoiled') return mishap.parts.includes(piece.part)
  if (mishap.kind !== 'damaged' || piece.sheet !== mishap.sheet) return false
  const { x: left, y: bottom, length: width, width: height } = piece
  return rectsOverlap({ left, bottom, width, height }, mishap.rect)
}

function neededOf(rows: readonly CutRow[], cut: ReadonlySet<PartId>): CutRow[] {
  return rows.flatMap((row) => {
    const parts = row.parts.filter((part) => !cut.has(part))
    return parts.length === 0 ? [] : [{ ...row, parts, quantity: parts.length }]
  })
}

/** Layouts and wishes that name sheets of the old job are not carried over; a bank is while it is still whole. */
function jobOf(
  { kerf, stages, firstCut, effort, seconds, seed, offcutLeast }: SheetJob,
  { stock }: Stocked,
  rows: readonly CutRow[],
  before: readonly CutRow[],
): SheetJob {
  const kept = Object.entries({ stages, firstCut, effort, seconds, seed, offcutLeast })
  return {
    kerf,
    ...Object.fromEntries(kept.filter(([, value]) => value !== undefined)),
    stock,
    parts: jobParts(freed(rows, before), {}),
  }
}

/** A board of a bank is cut by itself when another board of it is cut already: its grain cannot run on any more. */
function freed(rows: readonly CutRow[], before: readonly CutRow[]): CutRow[] {
  const boards = (list: readonly CutRow[], id: string) => list.filter(({ bank }) => bank?.id === id).length
  return rows.map((row) => {
    // A plan that was kept by an earlier version knows of no banks.
    const bank = row.bank && boards(rows, row.bank.id) === boards(before, row.bank.id) ? row.bank : null
    return { ...row, bank, from: null }
  })
}
