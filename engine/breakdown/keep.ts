import type { PartId } from '../basics/id'
import type { CutRow } from '../cutlist/row'
import { unlocked } from '../sheets/held'
import type { SheetJob } from '../sheets/job'
import { layoutKey, type SheetAnswer, type SheetLayout } from '../sheets/layout'
import { withoutLocked } from '../sheets/locked'
import { wrongInSheets } from '../sheets/verify'
import { wrongInBanks } from '../sheets/verifyBanks'
import type { PieceAtHand, Stocked } from './atHand'
import { compare, type Ground, insetOf, layoutOf } from './inset'
import { isGone, type Lying, lyingOn } from './lying'
import type { Stage } from './stage'
import { type BreakdownInput, cutOrderOf } from './steps'
import { partsIn } from './task'
import { sheetNumbers } from './walks'

/** The layouts that stay, with what could be put on their free places and on offcuts that lie there. */
export interface Kept extends Pick<BreakdownInput, 'job' | 'atHand' | 'kinds' | 'numbered' | 'rounds' | 'shop'> {
  /** The parts of each row in the order in which the layouts have them. */
  readonly cutList: { readonly rows: readonly CutRow[] }
  readonly sheets: readonly SheetLayout[]
  /** What found no free place is still to be packed; null where all did. */
  readonly open: SheetJob | null
  /** The parts that are laid out anew. */
  readonly anew: readonly PartId[]
  /** The pieces whose layouts stay, of the materials of which parts are missing, those with the most room first. */
  readonly loosest: readonly PieceAtHand[]
  /** The same with the layouts of some pieces given up too. */
  readonly without: (loosened: Loosened) => Kept | null
}

export interface KeepInput {
  readonly input: BreakdownInput
  /** What is still to be cut. */
  readonly rows: readonly CutRow[]
  /** Those of them whose grain runs on from one to the next still. */
  readonly banked: readonly CutRow[]
  readonly pieces: readonly PieceAtHand[]
  readonly stockOf: (pieces: readonly PieceAtHand[]) => Stocked
  readonly jobOf: (stocked: Stocked) => SheetJob
}

/** Pieces whose layouts do not stay, so that their parts and those that are missing are packed together. */
type Loosened = ReadonlySet<PieceAtHand>

/** A layout whose parts are called by their ids. */
interface Laid extends Ground {
  readonly piece: PieceAtHand
}

type RowOf = ReadonlyMap<string, CutRow>

/**
 * What is not cut yet stays as it was laid out; only parts that are missing are put where there is room: on waste and
 * offcuts of the layouts, and on offcuts that lie there. Null where nothing can stay.
 */
export function keptAfter(given: KeepInput, loosened: Loosened = new Set()): Kept | null {
  const { input, rows } = given
  const rowOf: RowOf = new Map(rows.flatMap((row) => row.parts.map((part) => [part, row] as const)))
  const all = lyingOn(given.pieces, input, isGone(given, rowOf, loosened))
  const staying = inOrder(
    all.filter(({ parts }) => parts.length > 0),
    input,
  )
  const there = new Set<string>(staying.flatMap(({ parts }) => parts))
  const anew = ([...rowOf.keys()] as PartId[]).filter((part) => !there.has(part))
  const first = Math.min(...staying.map(({ piece }) => roundOf(piece.future!.stage)))
  const free = all.filter(({ parts }) => parts.length === 0).map(asLaidDown)
  const kept = staying.map((lying) => inItsTurn(lying, first))
  const ordered = [...kept, ...free]
  const stocked = given.stockOf(ordered.map(({ piece }) => piece))
  const job = withoutPins(given.jobOf(stocked), anew, rowOf)
  const laid = withInsets(
    ordered.map(({ piece, root }): Laid => ({ piece, root, stock: stocked.idOf(piece) })),
    loosened.size > 0 ? [] : anew,
    job,
    rowOf,
  )
  const sheets = alikeTogether(laid.map((root) => layoutOf(root, (part) => rowOf.get(part)!.key)))
  if (rows.length === 0 || wrongIn(sheets, job)) return null
  return {
    ...{ job, sheets, anew, kinds: stocked.kinds, open: openJob(job, sheets) },
    atHand: stocked.atHand,
    shop: { ...input.shop, cutOrder: cutOrderOf(input) },
    rounds: roundsOf(kept),
    numbered: stocked.numbered,
    loosest: loosestOf(staying, anew, rowOf),
    without: (more) => keptAfter(given, new Set([...loosened, ...more])),
    cutList: { rows: dealtIn(rows, laid) },
  }
}

/** The whole answer, with what was packed of the parts that had no free place. */
export function keptAnswer({ sheets }: Kept, rest: SheetAnswer | null): SheetAnswer {
  return { sheets: [...sheets, ...(rest?.sheets ?? [])], unplaced: rest?.unplaced ?? [], bounds: {}, proved: false }
}

/** As the sheets were laid out. */
function inOrder(staying: readonly Lying[], input: BreakdownInput): Lying[] {
  const numbers = sheetNumbers(input).laid
  const rank = ({ piece: { sheet, place } }: Lying) => [numbers.indexOf(sheet), place.bottom, place.left]
  return [...staying].sort((a, b) => compare(rank(a), rank(b)))
}

/**
 * What is done to it keeps its round, counted from the first that is left; which blade it takes tells its turn in that. What
 * comes of it has the name that it was to have.
 */
function inItsTurn({ piece, root, isAsDrawn }: Lying, first: number): Pick<Lying, 'piece' | 'root'> {
  const { stage, called } = piece.future!
  const now = { ...stage, phase: 0, round: roundOf(stage) - first }
  return { piece: { ...piece, stage: now, called: isAsDrawn ? called : [] }, root }
}

/** What lies there for whatever comes is cut when the others are. */
function asLaidDown({ piece, root }: Lying): Pick<Lying, 'piece' | 'root'> {
  const hasBeenRipped = piece.future?.stage.hasBeenRipped ?? false
  const stage = { phase: 0, round: 0, isSheet: false, hasBeenRipped }
  return { piece: piece.isWhole ? piece : { ...piece, stage }, root }
}

function roundOf({ round = 0 }: Stage): number {
  return round
}

/** Of whole sheets that stay; pieces carry theirs with them. */
function roundsOf(kept: readonly Pick<Lying, 'piece'>[]): Map<number, number> {
  const sheets = kept.filter(({ piece: { isWhole, stage } }) => isWhole && roundOf(stage!) > 0)
  return new Map(sheets.map(({ piece: { sheet, stage } }) => [sheet, roundOf(stage!)]))
}

/** The largest first; boards whose grain must run on are left to the packer. */
function withInsets(grounds: readonly Laid[], anew: readonly PartId[], job: SheetJob, rowOf: RowOf): Laid[] {
  const parts = new Map(job.parts.map((part) => [part.id, part]))
  const area = (id: PartId) => rowOf.get(id)!.length * rowOf.get(id)!.width
  const now = [...grounds]
  for (const id of [...anew].sort((a, b) => area(b) - area(a))) {
    const part = parts.get(rowOf.get(id)!.key)
    if (!part || part.bank) continue
    const open = now.filter((ground) => !ground.piece.isWhole || isLaidOut(ground))
    const inset = insetOf(open, part, id, job, (name) => rowOf.get(name)!.key)
    if (inset) now[now.indexOf(inset.on)] = { ...inset.on, root: inset.root }
  }
  return now.filter(isLaidOut)
}

/** By how much of the piece is left over. */
function loosestOf(staying: readonly Lying[], anew: readonly PartId[], rowOf: RowOf): PieceAtHand[] {
  const materials = new Set<string>(anew.map((part) => rowOf.get(part)!.material))
  const area = ({ length, width }: { readonly length: number; readonly width: number }) => length * width
  const room = ({ root }: Lying) => area(root) - partsIn(root).reduce((sum, part) => sum + area(part), 0)
  return staying
    .filter(({ piece }) => materials.has(piece.material))
    .sort((a, b) => room(b) - room(a))
    .map(({ piece }) => piece)
}

function isLaidOut({ root }: Laid): boolean {
  return partsIn(root).length > 0
}

function alikeTogether(sheets: readonly SheetLayout[]): SheetLayout[] {
  const together: SheetLayout[] = []
  for (const sheet of sheets) {
    const last = together.at(-1)
    if (last && layoutKey(last) === layoutKey(sheet)) together.splice(-1, 1, { ...last, copies: last.copies + 1 })
    else together.push(sheet)
  }
  return together
}

function wrongIn(sheets: readonly SheetLayout[], job: SheetJob): boolean {
  const wrong = [
    ...wrongInSheets(job, sheets),
    ...wrongInBanks(job, { sheets, unplaced: [], bounds: {}, proved: false }),
  ]
  return wrong.length > 0
}

/** What lies on a kind of sheet already need not be told to come from there. */
function withoutPins(job: SheetJob, anew: readonly PartId[], rowOf: RowOf): SheetJob {
  const keys = new Set<string>(anew.map((part) => rowOf.get(part)!.key))
  return {
    ...job,
    parts: job.parts.map(({ from, ...part }) => (from !== undefined && keys.has(part.id) ? { ...part, from } : part)),
  }
}

function openJob(job: SheetJob, sheets: readonly SheetLayout[]): SheetJob | null {
  const left = unlocked(withoutLocked({ ...job, locked: sheets }))
  const parts = left.parts.filter(({ quantity }) => quantity > 0)
  return parts.length > 0 ? { ...left, parts } : null
}

/** The parts of a row are dealt out in its order, so the order is that of the layouts. */
function dealtIn(rows: readonly CutRow[], laid: readonly Laid[]): CutRow[] {
  const order = new Map(laid.flatMap(({ root }) => partsIn(root)).map(({ part }, at) => [part, at]))
  const rank = (part: string) => order.get(part) ?? order.size
  return rows.map((row) => ({ ...row, parts: [...row.parts].sort((a, b) => rank(a) - rank(b)) }))
}
