import type { Random } from '../basics/random'
import { Columns, DUST, kindsOf, type WeighedSheet } from './columns'
import type { Goal } from './goal'
import { isRepeated, type Lot } from './lot'
import type { PatternSheet } from './pattern'
import type { Plan } from './plan'
import type { Programme } from './programme'
import type { Saw } from './saw'
import { goalOf } from './settledSheets'
import type { Patterns } from './staged'

/** A fraction of so much is taken for a whole sheet. */
const NEARLY = 0.75
/** So many new sheets are looked for at the prices of what is left. */
const NEW_SHEETS = 30
/**
 * So much of the sheets is left open, by turns, for the search to fill: a programme takes too much of too few parts. What
 * can be left over of all sheets is left over on these, so that they are filled the more easily (shares found by trial).
 */
const OPEN = [0.4, 0.3, 0.5, 0.25]
/**
 * A programme that leaves over no more than this, in sheets, is tight. Then no fraction is taken for whole, new sheets
 * are looked for several times, of some sheets the one is settled that loses the least, and so much of what is left over
 * must still be so in the end: most of its sheets lead nowhere (found by trial).
 */
const TIGHT = { over: 0.4, rounds: 3, choices: 3, kept: 0.3 }
/**
 * Where parts repeat, as many sheets of a tight programme are left open as have so much left over each, by turns some
 * more, within a least number and a most share of all; looking for new sheets less often leaves time for more dives
 * (found by trial).
 */
const REPEATED = { over: 0.025, more: [0, 1, 2], least: 3, most: 0.4, rounds: 2 }
/** What telling demands apart may have taken from a whole sheet. */
const WHOLE_DUST = 1e-4
/** So far luck may change which sheet comes first, so that the next dive goes elsewhere. */
const LUCK = { tight: 0.5, easy: 0.2 }

/**
 * A goal of a sheet fewer than a plan that sets out from a programme's fractions step by step: the sheets that it takes
 * whole, or nearly, are settled, and a programme of the parts that are left says which come next; the sheets after them
 * are empty. Yields null between steps. Source: the diving of column generation, the strong one where it is tight, as in
 * Sadykov et al., 'Primal heuristics for branch and price', INFORMS Journal on Computing 31 (2019), from memory.
 */
export function* diveFrom(
  lot: Lot,
  programme: Programme,
  plan: Plan,
  { random, look }: Saw,
  turn: number,
): Generator<null, Goal> {
  const count = plan.boards.length - 1
  const over = count - programme.value
  const isTight = over < TIGHT.over
  const repeats = isRepeated(lot)
  const most = count - openOf(count, over, turn, repeats)
  const rounds = !isTight ? 1 : repeats ? REPEATED.rounds : TIGHT.rounds
  const dive = new Dive(lot, programme, plan)
  while (dive.settled.length < most && !dive.isDone()) {
    const weighed = dive.weighed(programme.patterns, rounds)
    if (weighed.length === 0) break
    yield null
    const whole = wholeOf(weighed, isTight)
    const next = inLuck(weighed, random, isTight ? LUCK.tight : LUCK.easy)
    if (whole.length > 0) for (const sheet of whole.slice(0, most - dive.settled.length)) dive.settle(sheet)
    else if (!isTight) dive.settle(next[0]!)
    else {
      const least = dive.leastOf(next.slice(0, TIGHT.choices))
      if (dive.settled.length + least.value > count - TIGHT.kept * over) break
      dive.settle(least.sheet)
    }
    yield null
  }
  look.work += dive.columns.work
  return goalOf(lot, dive.settled, count)
}

/** How many sheets a dive leaves open at least. */
function openOf(count: number, over: number, turn: number, repeats: boolean): number {
  if (over >= TIGHT.over || !repeats) return Math.floor(count * OPEN[turn % OPEN.length]!)
  const more = REPEATED.more[turn % REPEATED.more.length]!
  const most = Math.floor(REPEATED.most * count)
  return Math.max(REPEATED.least, Math.min(Math.round(over / REPEATED.over), most)) + more
}

/** What is settled, and the programme of the parts that are left. */
class Dive {
  readonly settled: PatternSheet[] = []
  readonly columns: Columns
  private readonly left: number[]

  constructor({ kinds }: Lot, programme: Programme, plan: Plan) {
    this.left = kinds.map(({ quantity }) => quantity)
    // Of all sheets of the programme only those that it takes: the others would be weighed again and again.
    this.columns = new Columns(this.left)
    this.columns.addPlan(plan)
    for (const { sheet } of programme.columns.taken()) this.columns.add(kindsOf(sheet), sheet)
  }

  isDone(): boolean {
    return this.left.every((quantity) => quantity === 0)
  }

  weighed(patterns: Patterns, rounds: number): WeighedSheet[] {
    let weighed: WeighedSheet[] = []
    for (let round = 0; round < rounds; round++) weighed = this.columns.solvedWith(patterns, NEW_SHEETS)
    return weighed
  }

  settle(sheet: PatternSheet): void {
    this.settled.push(sheet)
    for (const kind of kindsOf(sheet)) this.left[kind] = Math.max(0, this.left[kind]! - 1)
    this.demand(sheet)
  }

  /** The one with which the programme takes the fewest sheets in all of what is left, and how many. */
  leastOf(sheets: readonly PatternSheet[]): { readonly sheet: PatternSheet; readonly value: number } {
    const each = sheets.map((sheet) => ({ sheet, value: this.valueWith(sheet) }))
    return each.reduce((a, b) => (b.value < a.value ? b : a))
  }

  private valueWith(sheet: PatternSheet): number {
    const before = [...this.left]
    this.settle(sheet)
    const value = this.columns.solve()?.value ?? Infinity
    this.settled.pop()
    for (const [kind, quantity] of before.entries()) this.left[kind] = quantity
    this.demand(sheet)
    return 1 + value
  }

  private demand(sheet: PatternSheet): void {
    for (const kind of new Set(kindsOf(sheet))) this.columns.demandOf(kind, this.left[kind]!)
  }
}

/** Every sheet as often as it is taken whole, or nearly where the programme is not tight. */
function wholeOf(weighed: readonly WeighedSheet[], isTight: boolean): PatternSheet[] {
  const more = isTight ? WHOLE_DUST : 1 - NEARLY + DUST
  return weighed.flatMap(({ sheet, weight }) => new Array<PatternSheet>(Math.floor(weight + more)).fill(sheet))
}

/** Those that are most nearly whole first; which of nearly equal ones is a matter of luck. */
function inLuck(weighed: readonly WeighedSheet[], random: Random, luck: number): PatternSheet[] {
  return weighed
    .map(({ sheet, weight }) => ({ sheet, key: weight * (1 - luck * random()) }))
    .sort((a, b) => b.key - a.key)
    .map(({ sheet }) => sheet)
}
