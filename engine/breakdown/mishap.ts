import type { PartId } from '../basics/id'
import { bad, good, type Result } from '../basics/result'
import type { CutRow } from '../cutlist/row'
import type { JobPart, SheetJob } from '../sheets/job'
import { jobParts } from '../sheets/jobOf'
import { handOf, isStillWood, type PieceAtHand, pieceOf, type Stocked, stockOf } from './atHand'
import type { CutAway } from './cutAway'
import { isHitBy, placedDamage } from './damage'
import { type FloorPiece, floorAfter, type Progress } from './floor'
import { type Kept, keptAfter } from './keep'
import { outgrownOn } from './lying'
import type { Mishap } from './mishapKinds'
import { happened, type Resized, summaryOf, toldOf } from './mishapWords'
import { pinned } from './pins'
import { type BreakdownInput, worksOf } from './steps'
import { sheetNumbers } from './walks'

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
  /** For the breakdown of the new layouts, by the same names as there. */
  readonly atHand: NonNullable<BreakdownInput['atHand']>
  readonly numbered: NonNullable<BreakdownInput['numbered']>
  readonly firstSheet: number
  /** The blade that is in the saw; undefined where nothing was cut yet. */
  readonly bladeIn: BreakdownInput['bladeIn']
  readonly cutAways: readonly CutAway[]
  readonly cutBefore: readonly CutRow[]
  readonly aside: readonly CutRow[]
  readonly kinds: ReadonlyMap<string, string>
  /** Still to be cut, otherwise than was planned. */
  readonly resized: readonly Resized[]
  /** In plain words: what has happened, and what it changes when the rest is laid out anew. */
  readonly told: readonly string[]
  readonly happened: readonly string[]
  /** The same in a line, counted. */
  readonly summary: string
  /** The plan with the layouts that can stay as they are; null where none can. */
  readonly kept: Kept | null
}

/**
 * Plans again after a mishap. What is cut stays cut; what lies in the shop is stock, damaged pieces by their clean
 * rectangles; and the parts that are missing are a new sheet job.
 */
export function replanAfter(input: BreakdownInput, progress: Progress, mishap: Mishap): Result<Replan> {
  const floor = floorAfter(input, progress)
  if (!floor.ok) return floor
  const before = allRows(input)
  const refused = mishap.kind === 'spoiled' ? notCut(mishap.parts, floor.value, input) : null
  if (refused) return bad(refused)
  const placed = mishap.kind === 'damaged' ? placedDamage(input, floor.value, mishap) : good(null)
  if (!placed.ok) return placed
  const damage = placed.value
  const hit = (piece: FloorPiece) => damage !== null && isHitBy(damage, piece)
  const isLost = (part: PartId, piece?: FloorPiece) =>
    mishap.kind === 'spoiled' ? mishap.parts.includes(part) : piece !== undefined && hit(piece)
  const rows = mishap.kind === 'thickness' || mishap.kind === 'openings' ? mishap.rows : before
  const sorted = sortedOut(partsCutBy(floor.value, input), before, rows, isLost)
  const { lost } = sorted
  const again = fitAgain(input.aside, rows, sorted.cut)
  const cut = [...sorted.cut, ...again]
  const needed = splitRows(rows, (part) => !cut.includes(part))
  const nextSheet = sheetNumbers(input).afterSheets
  const { job, toBuy, atHand: earlier = new Map() } = input
  const shop = { job, rows: needed, before: earlier, toBuy, firstNumber: nextSheet }
  const lies = floor.value.map((piece) =>
    damage && hit(piece) ? { ...piece, damages: [...piece.damages, damage.rect] } : piece,
  )
  const hand = handOf(lies, shop)
  const resized = resizedParts(before, needed)
  const stocked = stockOf(hand.pieces, shop, input.answer)
  const outgrown = outgrownOn(hand.pieces, input, rowOfPart(needed))
  const outcome = {
    input,
    mishap,
    damage,
    cut,
    lost,
    again,
    hit: floor.value.filter(hit),
    hand,
    needed,
    resized,
    outgrown,
  }
  return good({
    ...{ cut, lost, pieces: hand.pieces, cutAways: hand.cutAways, cutList: { rows: needed } },
    cutBefore: splitRows(rows, (part) => cut.includes(part)),
    aside: [
      ...splitRows(input.aside ?? [], (part) => !cut.includes(part)),
      ...(mishap.kind === 'thickness' || mishap.kind === 'openings'
        ? splitRows(before, (part) => lost.includes(part))
        : []),
    ],
    job: jobOf(input.job, stocked, needed, rows),
    ...{ atHand: stocked.atHand, kinds: stocked.kinds, numbered: stocked.numbered },
    resized,
    bladeIn: bladeAfter(input, progress),
    firstSheet: nextSheet + hand.cutAways.length,
    told: toldOf(outcome),
    happened: happened(outcome),
    summary: summaryOf(outcome),
    kept: keptAfter(
      {
        ...{ input, rows: needed, pieces: hand.pieces },
        banked: freed(needed, rows).filter(({ bank }) => bank !== null),
        stockOf: (pieces) => stockOf(pieces, shop, input.answer),
        jobOf: (stocked) => jobOf(input.job, stocked, needed, rows),
      },
      loosenedBy(mishap, hand.pieces),
    ),
  })
}

function bladeAfter(input: BreakdownInput, { done }: Progress): BreakdownInput['bladeIn'] {
  const works = [...worksOf(input)].flatMap(([id, alike]) => (done.has(id) ? alike : []))
  return works.at(-1)?.blade ?? input.bladeIn
}

/** Of a batch that measures otherwise so many boards change that they are packed together. */
function loosenedBy(mishap: Mishap, pieces: readonly PieceAtHand[]): ReadonlySet<PieceAtHand> {
  return new Set(mishap.kind === 'thickness' ? pieces.filter(({ material }) => material === mishap.material) : [])
}

export interface LyingNow extends PieceAtHand {
  /** Whether a step that is still to come takes it; what none takes is left over. */
  readonly isToCut: boolean
}

/**
 * Every sheet and piece that lies in the shop now and can be cut, damaged ones with the damage still on them; and the
 * sheets that are still to be bought, named as such.
 */
export function atHandNow(input: BreakdownInput, progress: Progress): Result<LyingNow[]> {
  const floor = floorAfter(input, progress)
  if (!floor.ok) return floor
  const { atHand: before = new Map(), toBuy } = input
  const open = [...worksOf(input)].flatMap(([id, alike]) => (progress.done.has(id) ? [] : alike))
  const taken = new Set(open.map(({ task, takes }) => `${task.sheet} ${takes.name}`))
  return good(
    floor.value.filter(isStillWood).map((piece) => {
      return { ...pieceOf(piece, { before, toBuy }), isToCut: taken.has(`${piece.sheet} ${piece.name}`) }
    }),
  )
}

/** What was asked for when the cutting began: what is laid out, and what was cut before that. */
export function allRows({ cutList, cutBefore = [] }: BreakdownInput): CutRow[] {
  const rows = new Map(cutList.rows.map((row) => [row.key, row]))
  for (const row of cutBefore) {
    const parts = [...(rows.get(row.key)?.parts ?? []), ...row.parts]
    rows.set(row.key, { ...row, parts, quantity: parts.length })
  }
  return [...rows.values()]
}

interface CutPart {
  readonly part: PartId
  /** Where it lies; not known of a part that was cut before the layouts were made. */
  readonly piece?: FloorPiece
}

function partsCutBy(floor: readonly FloorPiece[], { cutBefore = [] }: BreakdownInput): CutPart[] {
  const here = floor.flatMap((piece) => (piece.part === null ? [] : [{ part: piece.part, piece }]))
  return [...cutBefore.flatMap(({ parts }) => parts.map((part) => ({ part }))), ...here]
}

/** Why parts cannot be spoiled: one of them is not cut yet. */
function notCut(parts: readonly PartId[], floor: readonly FloorPiece[], input: BreakdownInput): string | null {
  const there = new Set(partsCutBy(floor, input).map(({ part }) => part))
  const missing = parts.find((part) => !there.has(part))
  return missing === undefined
    ? null
    : `${input.marks.get(missing) ?? missing} is not cut yet, so it cannot be spoiled.`
}

/**
 * Parts that are cut: those that stay, and those that are spoiled, damaged or no longer of the right size. A part that the
 * design no longer has is neither.
 */
function sortedOut(
  parts: readonly CutPart[],
  before: readonly CutRow[],
  after: readonly CutRow[],
  isLost: (part: PartId, piece?: FloorPiece) => boolean,
): { readonly cut: PartId[]; readonly lost: PartId[] } {
  const [was, is] = [rowOfPart(before), rowOfPart(after)]
  const cut: PartId[] = []
  const lost: PartId[] = []
  for (const { part, piece } of parts) {
    const [old, now] = [was.get(part), is.get(part)]
    if (!old || !now) continue
    if (isSameToTheSaw(old, now) && !isLost(part, piece)) cut.push(part)
    else lost.push(part)
  }
  return { cut, lost }
}

/** Parts that were cut, did not fit for a while and have the size again that they were cut to. */
function fitAgain(aside: readonly CutRow[] = [], rows: readonly CutRow[], cut: readonly PartId[]): PartId[] {
  const is = rowOfPart(rows)
  const fitting = aside.flatMap((row) =>
    row.parts.filter((part) => {
      const now = is.get(part)
      return now && isSameToTheSaw(row, now) && !cut.includes(part)
    }),
  )
  return [...new Set(fitting)]
}

export function rowOfPart(rows: readonly CutRow[]): Map<PartId, CutRow> {
  return new Map(rows.flatMap((row) => row.parts.map((part) => [part, row] as const)))
}

export function isSameToTheSaw(a: CutRow, b: CutRow): boolean {
  return a.material === b.material && a.length === b.length && a.width === b.width
}

/** Parts that are cut otherwise than was planned, in the order of the rows. */
function resizedParts(before: readonly CutRow[], needed: readonly CutRow[]): Resized[] {
  const was = rowOfPart(before)
  return needed.flatMap((row) =>
    row.parts.flatMap((part) => {
      const old = was.get(part)
      return old && !isSameToTheSaw(old, row) ? [{ part, from: old, to: row }] : []
    }),
  )
}

/** Rows with those of their parts that are wanted. */
function splitRows(rows: readonly CutRow[], isWanted: (part: PartId) => boolean): CutRow[] {
  return rows.flatMap((row) => {
    const parts = row.parts.filter(isWanted)
    return parts.length === 0 ? [] : [{ ...row, parts, quantity: parts.length }]
  })
}

/** Layouts of the old job are not carried over; goals and pins are, and a bank is while it is still whole. */
function jobOf(
  { kerf, stages, firstCut, effort, seconds, seed, offcutLeast, goals, isCountFirst, parts }: SheetJob,
  stocked: Stocked,
  rows: readonly CutRow[],
  before: readonly CutRow[],
): SheetJob {
  const kept = Object.entries({ stages, firstCut, effort, seconds, seed, offcutLeast, goals, isCountFirst })
  return {
    kerf,
    ...Object.fromEntries(kept.filter(([, value]) => value !== undefined)),
    stock: stocked.stock,
    parts: pinned(turnedAs(parts, jobParts(freed(rows, before), {})), rows, stocked),
  }
}

/** What was turned in the plan may be turned again. */
function turnedAs(before: readonly JobPart[], parts: readonly JobPart[]): JobPart[] {
  const turned = new Set(before.flatMap(({ id, rotate }) => (rotate ? [id] : [])))
  return parts.map((part) => (turned.has(part.id) ? { ...part, rotate: true } : part))
}

/** A board of a bank is cut by itself when another board of it is cut already: its grain cannot run on any more. */
function freed(rows: readonly CutRow[], before: readonly CutRow[]): CutRow[] {
  const boards = (list: readonly CutRow[], id: string) => list.filter(({ bank }) => bank?.id === id).length
  return rows.map((row) => {
    // A plan that was kept by an earlier version knows of no banks.
    const bank = row.bank && boards(rows, row.bank.id) === boards(before, row.bank.id) ? row.bank : null
    const { sheet: _, ...free } = row
    return { ...free, bank, from: null }
  })
}
