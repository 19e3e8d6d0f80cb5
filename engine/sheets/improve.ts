import { type Board, depthUsed, freshBoard, listParts, RIP, release } from './cutTree'
import { diveFrom } from './dive'
import { settledExactly } from './exact'
import { firstWay, type Goal, goalsFor, isBest } from './goal'
import { HandlingCount, offcutsOn } from './handling'
import type { JobGoal } from './job'
import { isRepeated, type Lot, partsIn } from './lot'
import { neaten } from './neaten'
import type { Known, Plan } from './plan'
import { type Programme, programmeOf, type Underway } from './programme'
import { type Saw, sawFor } from './saw'
import { scaledBound } from './scaledBound'
import { Search } from './search'
import { MANY_PARTS } from './settings'
import { patternsOf } from './staged'

/** Each goal after the sheets gets so much of the work that the sheets may get, up to so much. */
const GOAL_SHARE = 0.3
const GOAL_WORK = 48_000_000
/** A large leftover of few parts is found with so much for each, or not with more either (found by trial). */
const LEFTOVER_WORK_A_PART = 150_000
/**
 * Few settings of many parts get a larger share, and at least so much for each part, but not over so many times what the
 * sheets may get; of yet more parts it would take long for little.
 */
const SETTINGS_WORK = { share: 0.75, aPart: 14_000, mostShare: 4, mostParts: 1000 }
/** Of the budget: what is searched before a linear programme is asked, and what rounding it may take. */
const EARLY_SHARE = 0.5
const EARLY_WORK = 2_000_000
const DIVE_SHARE = 0.4
const EARLY_DIVE_SHARE = 0.25
const EARLY_DIVE_WORK = 6_000_000
const DIVES = 16
/**
 * Of what a programme may take, the functions of the bound may take so much to be made the best for each other: less where
 * there is a programme too, which says more nearly always (found by trial).
 */
const SCALES_SHARE = { alone: 0.4, before: 0.05 }
/** Rounding it waits then until so much of the budget is searched. */
const LATE_SHARE = 0.7
/** Settling it for a few sheets may take so much of the budget, and so much in all. */
const SETTLING_SHARE = 0.7
const SETTLING_WORK = 60_000_000
const NOTHING: Plan = { boards: [], left: [] }
/** Where the programme takes nearly as much as the sheets that are hoped for, rounding it leads nowhere. */
const LEAST_SLACK = 0.05
/**
 * Where parts repeat most of the budget is well spent on rounding, nearly to where nothing is left over. After each dive
 * the search has such a part of that work for the sheets that are left open, but no less than so much, and after each a
 * part of it more (found by trial).
 */
const REPEATED = { share: 0.8, leastSlack: 0.015, part: 1 / 20, leastWork: 6_000_000, more: 0.3 }
/** So much of what a part counts for in that search is what it costs in the programme, the rest is its area. */
const BY_PRICE = 0.8

/**
 * Better and better plans: first fewer or cheaper sheets, as long as the bound leaves hope and the budget (rests looked
 * at) lasts; then, on as many sheets, the goals of the job in their order. A linear programme of so much work at most lifts the bound and shows the way to fewer sheets where the search has not met it. Yields null between
 * chunks of work.
 */
export function* improve(
  lot: Lot,
  first: Known,
  seed: number,
  budget: number,
  programmeWork: number,
): Generator<Known | null> {
  const saw = sawFor(lot, seed, budget)
  let best = first
  const keep = function* (plans: Generator<Plan | null>, until = Infinity): Generator<Known | null> {
    while (saw.look.work < until) {
      const { done, value: plan } = plans.next()
      if (done) return
      if (plan) best = { ...best, plan }
      yield plan && best
    }
  }
  let searched = best.plan
  let search = saveSheets(saw, searched, () => best.bound, budget)
  const searchOn = function* (until: number): Generator<Known | null> {
    if (best.plan !== searched) search = saveSheets(saw, best.plan, () => best.bound, budget)
    yield* keep(search, until)
    searched = best.plan
  }
  yield* searchOn(Math.min(EARLY_WORK, EARLY_SHARE * budget))
  const repeats = isRepeated(lot)
  const lift = function* ({ bound }: Pick<Known, 'bound'>): Generator<Known> {
    if (bound <= best.bound) return
    best = { ...best, bound: Math.min(bound, best.plan.boards.length) }
    yield best
  }
  const count = best.plan.boards.length
  const scales = lot.depth === Infinity ? SCALES_SHARE.alone : SCALES_SHARE.before
  if (programmeWork > 0 && best.plan.left.length === 0 && count > best.bound)
    yield* lift({ bound: yield* scaledBound(lot, count, scales * programmeWork) })
  const running = programmeFor(lot, best, programmeWork)
  let step = running.next()
  const settle = function* (programme: Programme): Generator<Known | null> {
    if (isBest(best.plan, lot, best.bound)) return
    const work = Math.min(SETTLING_WORK, SETTLING_SHARE * budget)
    const { plan, isNone } = yield* settledExactly(lot, programme, best, work)
    if (plan) best = { ...best, plan }
    else if (isNone) best = { ...best, bound: best.plan.boards.length }
    if (plan || isNone) yield best
  }
  for (; !step.done && !isBest(best.plan, lot, best.bound); step = running.next()) {
    if (step.value) yield* lift(step.value)
    if (step.value?.isEasy && repeats)
      yield* keep(
        divedFrom(saw, best, step.value, { dives: 1, work: Math.min(EARLY_DIVE_WORK, EARLY_DIVE_SHARE * budget) }),
      )
    yield null
  }
  const programme = step.done ? step.value : null
  if (programme) yield* lift(programme)
  if (programme) yield* settle(programme)
  if (programme && !repeats) yield* searchOn(LATE_SHARE * budget)
  const share = repeats ? REPEATED.share : DIVE_SHARE
  if (programme) yield* keep(divedFrom(saw, best, programme, { dives: DIVES, work: share * budget }))
  yield* searchOn(budget)
  for (const { goal, isFirst } of passesOf(lot.goals)) {
    if (best.plan.left.length > 0) return
    const work = goalWork(goal, lot, budget)
    const search =
      goal === 'settings' ? neaten(saw, best.plan, work, !isFirst) : enlargeOffcut(saw, best.plan, work, isFirst)
    yield* keep(search)
  }
}

function goalWork(goal: JobGoal, lot: Lot, budget: number): number {
  const parts = partsIn(lot)
  const work = Math.min(GOAL_WORK, GOAL_SHARE * budget)
  if (goal === 'leftover') return parts < MANY_PARTS ? Math.min(work, LEFTOVER_WORK_A_PART * parts) : work
  const { share, aPart, mostShare, mostParts } = SETTINGS_WORK
  if (parts < MANY_PARTS || parts > mostParts) return work
  return Math.min(GOAL_WORK, mostShare * budget, Math.max(share * budget, aPart * parts))
}

/** The linear programme of a lot, where it can help. */
function* programmeFor(lot: Lot, known: Known, work: number): Generator<Underway | null, Programme | null> {
  if (work === 0 || known.plan.left.length > 0 || isBest(known.plan, lot, known.bound)) return null
  const patterns = patternsOf(lot)
  return patterns ? yield* programmeOf(lot, patterns, known, work) : null
}

/**
 * Searches for a sheet fewer, several times, beside whole sheets that come near to what a programme takes in fractions:
 * on those that these leave open, for the parts that these leave over.
 * Where there are several kinds of sheets a programme takes what may not be there, and only its bound is of use.
 */
function* divedFrom(
  saw: Saw,
  known: Known,
  programme: Programme,
  { dives, work }: { readonly dives: number; readonly work: number },
): Generator<Plan | null> {
  const { lot, look } = saw
  const repeats = isRepeated(lot)
  const over = known.plan.boards.length - 1 - programme.value
  if (lot.stocks.length > 1 || over < (repeats ? REPEATED.leastSlack : LEAST_SLACK)) return
  const until = look.work + work
  const urgency = repeats ? urgencyOf(lot, programme) : undefined
  const own = Math.max(REPEATED.leastWork, REPEATED.part * work)
  let best = known.plan
  for (let turn = 0; turn < dives && look.work < until && !isBest(best, lot, known.bound); turn++) {
    const { boards, pool } = yield* diveFrom(lot, programme, best, saw, turn)
    if (boards.length === 0) continue
    const settled = boards.filter(({ used }) => used > 0)
    const open = boards.filter(({ used }) => used === 0)
    const left = until - look.work
    const slice = repeats ? Math.min(left, own * (1 + turn * REPEATED.more)) : left / (dives - turn)
    const goal = { boards: open, pool, urgency }
    const found = pool.length === 0 ? NOTHING : yield* reach(saw, goal, look.work + slice, best)
    if (!found) continue
    best = { boards: [...settled, ...found.boards], left: [] }
    yield best
  }
}

/** What an area of each kind counts where a part counts by what it costs in a programme, and a little by its area. */
function urgencyOf({ kinds, sheetArea }: Lot, { prices }: Programme): Float64Array {
  return prices.map((price, kind) => 1 - BY_PRICE + (BY_PRICE * price * sheetArea) / kinds[kind]!.area)
}

/** A search for one of the goals; the one that is first gives nothing up for the other. */
interface Pass {
  readonly goal: JobGoal
  readonly isFirst: boolean
}

/** Few settings first sets out from what the other order finds, so that it never has more to set. */
function passesOf(goals: readonly JobGoal[]): Pass[] {
  const inOrder = goals.map((goal, at): Pass => ({ goal, isFirst: at === 0 }))
  const areTurned = goals[0] === 'settings' && goals.length > 1
  return areTurned ? [...passesOf([...goals].reverse()), ...inOrder] : inOrder
}

/** What a search finds in little time: for a first answer that is worth showing. */
export function improvedBriefly(lot: Lot, first: Plan, bound: number, seed: number, budget: number): Plan {
  let best = first
  for (const plan of saveSheets(sawFor(lot, seed, budget), first, () => bound, budget)) if (plan) best = plan
  return best
}

function* saveSheets(saw: Saw, first: Plan, bound: () => number, budget: number): Generator<Plan | null> {
  const { lot, look } = saw
  let best = first
  let slices = 1
  while (!isBest(best, lot, bound()) && look.work < budget) {
    const goals = goalsFor(best, lot, bound())
    if (goals.length === 0) return
    // One goal is worth all of the work; several take turns, each time for longer.
    const slice = goals.length === 1 ? budget : (budget * slices) / (8 * goals.length)
    const workBefore = look.work
    let found: Plan | null = null
    for (const goal of goals) {
      const until = Math.min(budget, look.work + slice)
      found = yield* reach(saw, goal, until, best)
      if (found) break
    }
    // Without a single sheet there is nothing to search on.
    if (look.work === workBefore && !found) return
    if (!found) slices *= 2
    else {
      best = found
      yield best
    }
  }
}

/** Searches until every part of the pool has its place; with sheets running short, fewer parts left are a gain too. */
function* reach(saw: Saw, goal: Goal, until: number, now: Plan): Generator<null, Plan | null> {
  const { lot, look, random, chunk } = saw
  if (goal.boards.length === 0) return null
  const search = new Search(lot, goal, look, random)
  let next = look.work + chunk
  while (look.work < until) {
    search.turn()
    const isDone = search.pool.length === 0
    const isGain = isDone || (now.left.length > 0 && search.pool.length < now.left.length)
    if (isGain) return { boards: search.settled(), left: search.pool }
    if (look.work > next) {
      next = look.work + chunk
      yield null
    }
  }
  return null
}

/** The steps by which the last sheet's parts must draw together, as shares of the sheet. */
const STEPS = [0.16, 0.08, 0.04, 0.02, 0.01]

/**
 * On the sheet with the least on it, the parts draw together so that what is left is one piece as long as the sheet
 * (or as wide, in a shop that crosscuts first): the sheet is taken to be narrower, and the search goes on. Where this is
 * not the first goal, no setting is given for it.
 */
function* enlargeOffcut(saw: Saw, first: Plan, work: number, isFirst: boolean): Generator<Plan | null> {
  const { lot, look } = saw
  const handling = new HandlingCount(lot)
  const budget = look.work + work
  const isAsHandy = ({ boards }: Plan) => isFirst || handling.of(boards) <= handling.of(best.boards)
  let best = first
  for (let step = 0; step < STEPS.length && look.work < budget; ) {
    const last = emptiest(best)
    if (!last) return
    const whole = last.root.way === RIP ? last.stock.width : last.stock.length
    const most = Math.floor(depthUsed(last) - STEPS[step]! * whole)
    const until = Math.min(budget, look.work + (budget - look.work) / (STEPS.length - step + 1))
    const found = most > 0 ? yield* reach(saw, drawTogether(best, last, most, lot), until, best) : null
    const isKept = found && offcutsOn(found.boards) >= offcutsOn(best.boards)
    if (isKept && found.boards.length <= best.boards.length && isAsHandy(found)) {
      for (const board of found.boards) if (board.isHeld) release(board, lot)
      best = found
      yield best
    } else step++
  }
}

function emptiest({ boards }: Plan): Board | null {
  const share = ({ used, stock }: Board) => used / (stock.length * stock.width)
  return boards.reduce<Board | null>((a, b) => (a && share(a) <= share(b) ? a : b), null)
}

function drawTogether({ boards }: Plan, last: Board, most: number, lot: Lot): Goal {
  const pool: number[] = []
  listParts(last.root, pool)
  const way = lot.first === 'any' ? last.root.way : firstWay(lot)
  return {
    boards: [...boards.filter((board) => board !== last), freshBoard(last.stock, way, lot, most, last.sheet)],
    pool,
  }
}
