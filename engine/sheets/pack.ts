import { areaBound, boundOf } from './bound'
import { checkJob } from './check'
import type { Board } from './cutTree'
import { drawerFor } from './draw'
import { isBest } from './goal'
import { heldBy, unlocked } from './held'
import { improve, improvedBriefly } from './improve'
import type { SheetJob } from './job'
import type { SheetAnswer, SheetLayout } from './layout'
import { asIfFree, lockedOf, withoutLocked } from './locked'
import { type Lot, lotsOf, partsIn, type StockKind } from './lot'
import { stayNear } from './near'
import { firstPlan, isBetter, type Known, type Plan } from './plan'
import { standing } from './standing'
import { stripPlan } from './stripPlan'
import { sheetCount } from './tally'
import { shutOut, unfitting, unplacedOf } from './unplaced'

export { checkJob }

/**
 * Rests looked at for fewer sheets, over the materials of a job; the goals after them get a part of it. Together about
 * a second and a half for forty cabinets, half of it, a glance.
 */
const WORK = { thorough: 16_000_000, quick: 8_000_000, glance: 100_000 }
/**
 * Rests looked at before the first answer: some six milliseconds' worth, or a tenth of all. Many parts get less: a process
 * that has just begun takes ten times as long for it.
 */
const FIRST_WORK = 200_000
const FIRST_SHARE = 0.1
const MANY_FIRST = { parts: 250, share: 0.25 }
/** About as many as are looked at in a second for large jobs; small ones take longer, and end by the clock. */
const WORK_A_SECOND = 60_000_000

/** What a linear programme may take, at most and as a share of what the search for fewer sheets may: few take so much. */
const PROGRAMME_WORK = 12_000_000
const PROGRAMME_SHARE = 1.5

/** One material on its way: its best plan so far, and that as layouts. */
interface Bay {
  readonly lot: Lot
  readonly draw: (boards: readonly Board[]) => SheetLayout[]
  bound: number
  plan: Plan
  layouts: readonly SheetLayout[]
  /** With its locked sheets; null where none is locked. */
  readonly locks: Locks | null
}

/** The locked sheets of a material, and what any layout of all its parts needs, whatever is kept. */
interface Locks {
  readonly sheets: readonly StockKind[]
  readonly lot: Lot
  readonly bound: number
}

/**
 * Packs a job: a first answer at once, then null every ten milliseconds or so, that the caller can look up, and every
 * better answer as it comes; the last and best is returned. Each material is packed by itself, and they take turns. The
 * answer depends on the job and its seed only.
 */
export function* packing(job: SheetJob): Generator<SheetAnswer | null, SheetAnswer, void> {
  const lifted = new Map<string, number>()
  const search = packingLocked(job, lifted)
  if (!mayBeHeld(job)) return yield* search
  // A search begins with an answer.
  const first = search.next().value!
  yield first
  const free = yield* silently(packingLocked(unlocked(job)))
  const held = heldBy(job, free)
  if (held && sheetCount(held) <= sheetCount(first)) return standing(job)(held)
  if (!isExcludedLocked(job)) for (const [material, bound] of Object.entries(free.bounds)) lifted.set(material, bound)
  return yield* search
}

/** A kept sheet that is set aside otherwise may be larger than all that can be laid out freely, and need fewer of them. */
function isExcludedLocked({ stock, locked = [] }: SheetJob): boolean {
  return stock.some(({ id, excluded }) => excluded && locked.some((sheet) => sheet.stock === id))
}

/** For materials, the least number of sheets that any layout of all parts needs, as far as it was found out elsewhere. */
type Lifted = ReadonlyMap<string, number>
const NOT_LIFTED: Lifted = new Map()

/**
 * At rest, sheets that are kept as they were laid out leave the others as they were: the job is laid out as if nothing
 * was locked, and if that gives the locked sheets as they are, it is the answer.
 */
function mayBeHeld({ locked = [], near, seconds, effort }: SheetJob): boolean {
  return locked.length > 0 && !near && seconds === undefined && effort !== 'glance'
}

function* silently(search: Generator<SheetAnswer | null, SheetAnswer, void>): Generator<null, SheetAnswer, void> {
  for (;;) {
    const { done, value } = search.next()
    if (done) return value
    yield null
  }
}

function* packingLocked(job: SheetJob, lifted: Lifted = NOT_LIFTED): Generator<SheetAnswer | null, SheetAnswer, void> {
  const near = stayNear(job)
  const placed = standing(job)
  const search = packingFree(job, withoutLocked(job), lifted)
  for (;;) {
    const { done, value } = search.next()
    const answer = value && placed(near(value))
    if (done) return answer!
    yield answer
  }
}

function* packingFree(
  whole: SheetJob,
  job: SheetJob,
  lifted: Lifted,
): Generator<SheetAnswer | null, SheetAnswer, void> {
  const lots = lotsOf(job)
  const firstWork = Math.min(FIRST_WORK, workOf(job) * FIRST_SHARE)
  const locks = locksOf(whole, lifted)
  const bays = lots.map((lot, at) => bayOf(lot, job, seedOf(job) + at, firstWork / lots.length, locks[at] ?? null))
  yield answerOf(whole, job, bays)
  for (const bay of bays) bay.bound = boundOf(bay.lot)
  let answer = answerOf(whole, job, bays)
  yield answer
  const open = bays.filter(({ lot }) => lot.kinds.length > 0 && lot.stocks.length > 0)
  const budget = workOf(job) / Math.max(1, open.length)
  // A glance has no time for it: its bounds are those of areas and dual-feasible functions.
  const programmeWork = job.effort === 'glance' ? 0 : Math.min(PROGRAMME_WORK, PROGRAMME_SHARE * budget)
  const running = open.map((bay, at) => ({
    bay,
    search: improve(bay.lot, bay, seedOf(job) + at, budget, programmeWork),
  }))
  for (let turn = 0; running.length > 0; turn++) {
    const at = turn % running.length
    const { bay, search } = running[at]!
    const { done, value: known } = search.next()
    if (done) {
      running.splice(at, 1)
      turn = at - 1
      continue
    }
    if (known) answer = withKnown(whole, job, bays, bay, known)
    yield known ? answer : null
  }
  return answer
}

/** The settled answer, or the best there is when the caller has waited long enough. */
export function packSheets(job: SheetJob, until: () => boolean = () => false): SheetAnswer {
  const search = packing(job)
  let best: SheetAnswer | null = null
  for (;;) {
    const { done, value } = search.next()
    if (value) best = value
    if (done || (best && until())) return best!
  }
}

function workOf({ seconds, effort }: SheetJob): number {
  return seconds === undefined ? WORK[effort ?? 'thorough'] : Math.max(0.05, seconds) * WORK_A_SECOND
}

function seedOf({ seed }: SheetJob): number {
  return seed ?? 1
}

/** For each material in turn; nothing where no sheet is locked. */
function locksOf(whole: SheetJob, lifted: Lifted): Locks[] {
  if (!whole.locked || whole.locked.length === 0) return []
  return lotsOf(asIfFree(whole)).map((lot): Locks => {
    const quick = boundOf(lot)
    return {
      ...{ lot, sheets: lockedOf(whole, lot.material) },
      get bound() {
        return Math.max(quick, lifted.get(lot.material) ?? 0)
      },
    }
  })
}

function bayOf(lot: Lot, job: SheetJob, seed: number, work: number, locks: Locks | null): Bay {
  const share = partsIn(lot) >= MANY_FIRST.parts ? MANY_FIRST.share : 1
  const plan = improvedBriefly(lot, beginning(lot), areaBound(lot), seed, share * work)
  const draw = drawerFor(lot, job)
  return { lot, draw, bound: areaBound(lot), plan, layouts: draw(plan.boards), locks }
}

/** Strip by strip, or part by part where that is better; many parts are placed only once. */
function beginning(lot: Lot): Plan {
  const byStrips = stripPlan(lot)
  if (byStrips && partsIn(lot) >= MANY_FIRST.parts) return byStrips
  const byParts = firstPlan(lot)
  return byStrips && byParts.left.length === 0 && !isBetter(byParts, byStrips) ? byStrips : byParts
}

function withKnown(
  whole: SheetJob,
  job: SheetJob,
  bays: readonly Bay[],
  bay: Bay,
  { plan, bound }: Known,
): SheetAnswer {
  bay.bound = bound
  if (plan !== bay.plan) bay.layouts = bay.draw(plan.boards)
  bay.plan = plan
  return answerOf(whole, job, bays)
}

/**
 * Proved: every part has its place, on as many sheets as the bound says. With locked sheets that is said of all layouts,
 * and by itself of those that have them. What the sheets cost is a matter of its own.
 */
function answerOf(whole: SheetJob, job: SheetJob, bays: readonly Bay[]): SheetAnswer {
  const unplaced = [
    ...unfitting(job, whole),
    ...shutOut(whole),
    ...bays.flatMap(({ lot, plan }) => unplacedOf(lot, plan, whole)),
  ]
  const proved = unplaced.length === 0 && bays.every(isProved)
  const provedWithLocked = unplaced.length === 0 && bays.every(isProvedWithLocked)
  const mayCostLess = proved ? !bays.every(isCheapest) : provedWithLocked && !bays.every(isCheapestWithLocked)
  return {
    sheets: [...(whole.locked ?? []), ...bays.flatMap(({ layouts }) => layouts)],
    unplaced,
    bounds: Object.fromEntries(bays.map(({ lot, bound, locks }) => [lot.material, locks?.bound ?? bound])),
    proved,
    ...(whole.locked?.length ? { provedWithLocked } : {}),
    ...(mayCostLess ? { mayCostLess } : {}),
  }
}

function isProved(bay: Bay): boolean {
  const { plan, locks } = bay
  return locks ? locks.sheets.length + plan.boards.length === locks.bound : isProvedWithLocked(bay)
}

function isProvedWithLocked({ plan, bound }: Bay): boolean {
  return plan.boards.length === bound
}

function isCheapest(bay: Bay): boolean {
  const { plan, locks } = bay
  if (!locks) return isCheapestWithLocked(bay)
  const boards = [...locks.sheets.map((stock) => ({ stock })), ...plan.boards]
  return isBest({ boards, left: plan.left }, locks.lot, locks.bound)
}

function isCheapestWithLocked({ plan, lot, bound }: Bay): boolean {
  return isBest(plan, lot, bound)
}
