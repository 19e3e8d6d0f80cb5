import { sheetCost } from '../estimate/price'
import { derive } from '../pipeline'
import { applyEdit } from '../project/apply'
import type { Project } from '../project/document'
import type { Edit } from '../project/edit'
import type { SheetAnswer } from '../sheets/layout'
import { packing } from '../sheets/pack'
import { type Taken, takenBy } from '../sheets/tally'
import { verify } from '../sheets/verify'
import { type Mm, settle } from '../units/length'
import { type Dimension, editFor, type Freedom, sizeAfter } from './freedom'

/** A change that saves sheets or money, with a layout that shows it. */
export interface Saving {
  readonly changes: readonly { readonly dimension: Dimension; readonly to: Mm }[]
  /** The change as one step to undo. */
  readonly edit: Edit
  /** Whole sheets; offcuts from the rack are not counted. */
  readonly sheets: number
  readonly sheetsSaved: number
  readonly moneySaved: number
  /** What it adds to what is to be made and bought, as where a wider door becomes two: nothing for most changes. */
  readonly added: Pieces
  /** So many sheets that are kept as they are now would no longer do. */
  readonly released: number
  /** Over so many boards the grain would no longer run on. */
  readonly outOfRuns: number
}

/** How many there are in a design. */
interface Pieces {
  readonly parts: number
  readonly hardware: number
}

export interface Thrift {
  /** What the design takes as it is, looked for as long as every change is. */
  readonly taken: Taken
  /** The most sheets saved come first, then the most money, then the least change. */
  readonly savings: readonly Saving[]
}

export interface ThriftProgress {
  readonly tried: number
  readonly of: number
}

/** Changes are looked for to so much of a millimetre. */
const STEP: Mm = 0.5
/** So many layouts are made for one freedom at most: all of it, and halvings down to a step. */
const LAYOUTS_EACH = 7

/**
 * What small changes of the dimensions that were left open would save: of each by itself the least change that saves
 * something, and where none does, the least share of all of them together. Every saving has a layout of the changed
 * design that the verifier has passed, looked for as long as that of the design as it is; whether a lesser change would
 * do may stay open. Yields its progress between steps of work; equal projects and freedoms give equal savings.
 */
export function* savingsOf(project: Project, freedoms: readonly Freedom[]): Generator<ThriftProgress, Thrift> {
  const of = 1 + freedoms.length * LAYOUTS_EACH
  const open = freedoms.filter(({ most }) => most >= STEP)
  const trial = { tried: 0, of }
  const now = yield* laidOut(project, trial)
  const savings: Saving[] = []
  for (const freedom of open) {
    const saving = yield* leastChange(project, [freedom], now, trial)
    if (saving) savings.push(saving)
  }
  if (savings.length === 0 && open.length > 1) {
    const saving = yield* leastChange(project, open, now, trial)
    if (saving) savings.push(saving)
  }
  const changed = ({ changes }: Saving) =>
    changes.reduce((sum, { dimension, to }) => sum + Math.abs(dimension.size - to), 0)
  savings.sort((a, b) => b.sheetsSaved - a.sheetsSaved || b.moneySaved - a.moneySaved || changed(a) - changed(b))
  return { taken: { sheets: now.sheets, offcuts: now.offcuts }, savings }
}

/** What a design comes to. */
interface Laid extends Taken, Pieces {
  readonly cost: number
  /** Parts on no sheet, and findings to stop for. */
  readonly faults: number
  /** Sheets that are kept as they are. */
  readonly held: number
  /** Boards over which the grain runs on. */
  readonly inRuns: number
}

/** By halving: all of the freedoms first, and then as little of them as still saves as much. */
function* leastChange(
  project: Project,
  freedoms: readonly Freedom[],
  now: Laid,
  trial: { tried: number; of: number },
): Generator<ThriftProgress, Saving | null> {
  const most = Math.max(...freedoms.map((freedom) => freedom.most))
  const whole = yield* changedBy(project, freedoms, 1, now, trial)
  if (!whole) return null
  let best = whole
  for (let [low, high] = [0, 1], tries = 1; (high - low) * most > STEP && tries < LAYOUTS_EACH; tries++) {
    const share = (low + high) / 2
    const found = yield* changedBy(project, freedoms, share, now, trial)
    if (found && found.sheetsSaved >= best.sheetsSaved && found.moneySaved >= best.moneySaved) {
      best = found
      high = share
    } else low = share
  }
  return best
}

function* changedBy(
  project: Project,
  freedoms: readonly Freedom[],
  share: number,
  now: Laid,
  trial: { tried: number; of: number },
): Generator<ThriftProgress, Saving | null> {
  const steps = freedoms.map(({ dimension, most }) => {
    const change = settle(Math.max(STEP, Math.round((share * most) / STEP) * STEP))
    return { dimension, change: Math.min(change, most) }
  })
  const edits = steps.map(({ dimension, change }) => editFor(project, dimension, change))
  const edit: Edit = edits.length === 1 ? edits[0]! : { kind: 'several', edits }
  const laid = yield* laidOut(applyEdit(project, edit), trial)
  if (laid.faults > now.faults || laid.sheets > now.sheets || laid.cost > now.cost) return null
  if (laid.sheets === now.sheets && laid.cost === now.cost) return null
  const changes = steps.map(({ dimension, change }) => ({ dimension, to: sizeAfter(dimension, change) }))
  const moneySaved = Math.round(100 * (now.cost - laid.cost)) / 100
  const added = { parts: laid.parts - now.parts, hardware: laid.hardware - now.hardware }
  const released = Math.max(0, now.held - laid.held)
  const outOfRuns = Math.max(0, now.inRuns - laid.inRuns)
  const sheetsSaved = now.sheets - laid.sheets
  return { changes, edit, sheets: laid.sheets, sheetsSaved, moneySaved, added, released, outOfRuns }
}

/** An unsound layout counts as a fault, too: nothing is promised by it. */
function* laidOut(project: Project, trial: { tried: number; of: number }): Generator<ThriftProgress, Laid> {
  const { sheetJob, problems, cabinets, partOf, heldSheets, cutList } = derive(project)
  trial.tried++
  let answer: SheetAnswer | null = null
  for (const better of packing({ ...sheetJob, effort: 'quick', goals: [] })) {
    if (better) answer = better
    yield { ...trial }
  }
  const laid = answer!
  const left = laid.unplaced.reduce((sum, { quantity }) => sum + quantity, 0)
  const stops = problems.filter(({ weight }) => weight === 'stop').length
  const faults = left + stops + verify(sheetJob, laid).length
  const hardware = cabinets.flatMap(({ hardware: rows }) => rows).reduce((sum, { quantity }) => sum + quantity, 0)
  const held = heldSheets.reduce((sum, id) => sum + project.kept[id]!.copies, 0)
  const inRuns = cutList.rows.filter(({ bank }) => bank).length
  return {
    ...takenBy(sheetJob, laid),
    cost: sheetCost(sheetJob, laid),
    faults,
    parts: partOf.size,
    hardware,
    held,
    inRuns,
  }
}
