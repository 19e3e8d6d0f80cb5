import type { Random } from '../basics/random'
import { Columns, DUST, kindsOf, type WeighedSheet } from './columns'
import type { Goal } from './goal'
import type { Lot } from './lot'
import type { Plan } from './plan'
import type { Programme } from './programme'
import type { Saw } from './saw'
import { goalOf } from './settledSheets'
import type { PatternSheet, Patterns } from './staged'

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
 * A goal of a sheet fewer than a plan that sets out from a programme's fractions step by step: the sheets that it takes whole, or nearly, are settled,
 * and a programme of the parts that are left says which come next; the sheets after them are empty. Yields null between
 * steps. Source: the diving of
 * column generation, as in Sadykov et al., 'Primal heuristics for branch and price', INFORMS Journal on Computing 31
 * (2019), from memory.
 */
export function* diveFrom(
  lot: Lot,
  patterns: Patterns,
  programme: Programme,
  plan: Plan,
  { random, look }: Saw,
  turn: number,
): Generator<null, Goal> {
  const left = lot.kinds.map(({ quantity }) => quantity)
  // Of all sheets of the programme only those that it takes: the others would be weighed again and again.
  const columns = new Columns(left)
  columns.addPlan(plan)
  for (const { sheet } of programme.columns.taken()) columns.add(kindsOf(sheet), sheet)
  const settled: PatternSheet[] = []
  const count = plan.boards.length - 1
  const most = Math.ceil(count * (1 - OPEN[turn % OPEN.length]!))
  while (settled.length < most && left.some((quantity) => quantity > 0)) {
    const weighed = columns.solvedWith(patterns, NEW_SHEETS)
    if (weighed.length === 0) break
    for (const sheet of wholeOf(weighed, random)) {
      if (settled.length === most) break
      settled.push(sheet)
      for (const kind of kindsOf(sheet)) left[kind] = Math.max(0, left[kind]! - 1)
      for (const kind of new Set(kindsOf(sheet))) columns.demandOf(kind, left[kind]!)
    }
    yield null
  }
  look.work += columns.work
  return goalOf(lot, settled, count)
}

/** Every sheet as often as it is taken whole; where none is, the one that is most nearly. */
function wholeOf(weighed: readonly WeighedSheet[], random: Random): PatternSheet[] {
  const whole = weighed.flatMap(({ sheet, weight }) =>
    new Array<PatternSheet>(Math.floor(weight + 1 - NEARLY + DUST)).fill(sheet),
  )
  if (whole.length > 0) return whole
  // Which of nearly equal ones is a matter of luck, so that the next dive goes elsewhere.
  const [first] = weighed
    .map(({ sheet, weight }) => ({ sheet, key: weight * (1 - 0.2 * random()) }))
    .sort((a, b) => b.key - a.key)
  return [first!.sheet]
}
