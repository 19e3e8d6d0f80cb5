import type { Part } from '../parts/part'
import type { House } from '../project/document'
import { inch, type Mm } from '../units/length'
import { NEWTON_PER_KG } from '../units/weight'
import { bayOf, withRole } from './boards'
import { type Borne, boardsBorne } from './borne'
import { builtWith, type Changed, ofThicker, withPartition, withShelvesFixed } from './changed'
import { about, type Checked, type Finding, PRACTICE, type Remedy, withRemedy } from './finding'
import { CASEWORK_LOADS, KITCHEN_TEST, loadOfShelf, MOST_ON_A_SHELF, SHELF_LOADS } from './load'
import { evenSagOf, greatestSpan, HOUSED_RULE, sagOf } from './sag'
import { sayIn } from './say'

/** A sag that is too much by somebody's word. */
interface Limit {
  readonly weight: Finding['weight']
  /** For a span, in mm. */
  readonly at: (span: Mm) => Mm
  readonly words: string
  readonly source: string
  /** Held against what is left of it after years, and not against what shows at once. */
  readonly isInTime: boolean
  /** Held against the even load in full, and not against the most that a shelf is asked to carry. */
  readonly isWhole?: true
}

/**
 * An even load that stays lets the sag grow by half, or more: this is the least. Source: Building Furniture (Fine
 * Woodworking, 2007), page 25; mdf-info.eu, 'MDF shelves and storage units', says the same.
 */
const IN_TIME = 1.5
const CREEP_SOURCE = 'growth by half in time: Building Furniture (Fine Woodworking, 2007), p. 25, and mdf-info.eu'

const CASEWORK_SAG = 'Architectural Woodwork Standards (2009), section 10, 1.2.21.3'

const STANDARD: Limit = {
  weight: 'stop',
  at: (span) => span / 144,
  words: '1/144 of the span',
  source: CASEWORK_SAG,
  isInTime: false,
}

/** A 16th of an inch to the foot, and never over a quarter of an inch. */
const KITCHEN: Limit = {
  weight: 'mind',
  at: (span) => Math.min(span / 192, inch(0.25)),
  words: '1/192 of the span and at most 1/4 in',
  source: KITCHEN_TEST,
  isInTime: false,
}

const STANDARD_IN_TIME: Limit = {
  ...STANDARD,
  weight: 'mind',
  source: `${CASEWORK_SAG}; ${CREEP_SOURCE}`,
  isInTime: true,
}

/** Longer than the published table of spans has it, which knows no most that a shelf carries in all. */
const PUBLISHED: Limit = {
  ...STANDARD,
  weight: 'know',
  source: 'Architectural Woodwork Standards (2009), section 10, longest shelves, 4.4.14.10 to 13',
  isWhole: true,
}

/** A 32nd of an inch to the foot. */
const SEEN: Limit = {
  weight: 'know',
  at: (span) => span / 384,
  words: '1/384 of the span, what the eye notices',
  source: `Building Furniture (Fine Woodworking, 2007), p. 25; ${CREEP_SOURCE}`,
  isInTime: true,
}

/** The gravest first. */
function limitsFor(load: House['shelfLoad']): readonly Limit[] {
  return load === 'kitchen' ? [STANDARD, KITCHEN, SEEN] : [STANDARD, STANDARD_IN_TIME, PUBLISHED, SEEN]
}

/**
 * The shelves that sag too much under what the house asks of them: the worst of each cabinet, or of each of its bays where
 * those have their own, with a way out.
 */
export function shelfFindings(checked: Checked): Finding[] {
  const borne = boardsBorne(checked)
  const bays = [...new Set(borne.map(({ bay }) => bay))].sort((a, b) => (a ?? 0) - (b ?? 0))
  return bays.flatMap((bay) => {
    const worst = worstOf(
      borne.filter((board) => board.bay === bay),
      checked,
    )
    return worst ? [sagFinding(worst, checked)] : []
  })
}

function sagFinding(worst: Worst, checked: Checked): Finding {
  const { board, limit, count } = worst
  const { pressure } = SHELF_LOADS[checked.house.shelfLoad]
  const say = sayIn(checked.display)
  const factor = limit.isInTime ? IN_TIME : 1
  const [sag, most] = say.apart(factor * sagBy(limit, board, pressure), limit.at(board.span))
  const load = loadOn(board, limit, checked)
  const holds = greatestSpan(board, pressure, (span) => limit.at(span) / factor)
  const when = limit.isInTime ? 'in the course of years' : 'at once'
  const finding = about(checked, {
    weight: limit.weight,
    message:
      `${count === 1 ? `the ${board.one}` : `${count} ${board.many}`} of ${say.length(board.span)} ${board.bay === null ? '' : `in bay ${board.bay} `}${board.held} would sag ${sag} ${when} under ` +
      `${load.words}; ${most} (${limit.words}) is the limit. ${say.length(holds)} is the greatest span that holds${load.isCapped ? ` under ${say.load(pressure)}` : ''}.${board.advice ? ` ${board.advice}` : ''}`,
    measure: sag,
    limit: most,
    source: sourceOf(board, limit.source, load.source),
  })
  return withRemedy(finding, () => remedyFor(checked, worst))
}

/** Who says so of the limit, of the load, and of the ends where those were judged by a rule of the trade. */
function sourceOf({ ends }: Borne, limit: string, load: string): string {
  const told = load === limit ? load : `${limit}; load: ${load}`
  return ends === 'housed' ? `${told}; housed ends ${HOUSED_RULE}: ${PRACTICE}` : told
}

/** What it sags at once under the load that goes with a limit. */
function sagBy({ isWhole }: Limit, board: Borne, pressure: number): Mm {
  return isWhole ? evenSagOf(board.span, board, pressure) : sagOf(board.span, board, pressure)
}

interface Load {
  readonly words: string
  readonly source: string
  /** Whether it is less than the even one. */
  readonly isCapped: boolean
}

/** The load that the sag is of: the even one, or, where that comes to more than any shelf is asked to carry, the most. */
function loadOn({ span, depth }: Borne, { isWhole }: Limit, { house, display }: Checked): Load {
  const { pressure, source } = SHELF_LOADS[house.shelfLoad]
  const say = sayIn(display)
  const whole = pressure * span * depth
  if (loadOfShelf(span, depth, pressure) === whole) return { words: say.load(pressure), source, isCapped: false }
  const [carried, asked] = [MOST_ON_A_SHELF, whole].map((newtons) => say.weight(newtons / NEWTON_PER_KG))
  if (isWhole) {
    return {
      words: `${say.load(pressure)}, ${asked} in all (it holds the ${carried} that one is taken to carry at most)`,
      source,
      isCapped: false,
    }
  }
  return {
    isCapped: true,
    words: `${carried}, the most that one is taken to carry in all (${say.load(pressure)} would be ${asked})`,
    source: source === CASEWORK_LOADS ? source : `${source}; the most in all: ${CASEWORK_LOADS}`,
  }
}

interface Worst {
  readonly board: Borne
  readonly limit: Limit
  /** How many like it break the same limit. */
  readonly count: number
}

/** How many times as much as a limit lets a board sags. */
function excessOf(board: Borne, limit: Limit, { house }: Checked): number {
  const { pressure } = SHELF_LOADS[house.shelfLoad]
  return ((limit.isInTime ? IN_TIME : 1) * sagBy(limit, board, pressure)) / limit.at(board.span)
}

function worstOf(borne: readonly Borne[], checked: Checked): Worst | null {
  for (const limit of limitsFor(checked.house.shelfLoad)) {
    const excess = (board: Borne) => excessOf(board, limit, checked)
    const over = borne.filter((board) => excess(board) > 1)
    if (over.length === 0) continue
    const board = over.reduce((a, b) => (excess(b) > excess(a) ? b : a))
    return { board, limit, count: over.filter(({ one }) => one === board.one).length }
  }
  return null
}

/**
 * A way out is offered when the cabinet can be built so and nothing of it then sags past more than the eye notices, nor past
 * that where it offended nothing but the eye: its shelves fixed, a partition, or a thicker board that the project has. Where
 * none does, a partition is offered that cures the boards that sag worst and makes none sag more.
 */
function remedyFor(checked: Checked, worst: Worst): Remedy | null {
  const { mark, parts } = checked
  const { bay } = worst.board
  const isCured = (change: Changed) => isSound(change, checked, worst)
  const fixed = withShelvesFixed(checked, bay)
  const isLoose = (part: Part) => bay === null || bayOf(part, parts) === bay
  if (withRole(parts, 'adjustableShelf').some(isLoose) && isCured(fixed))
    return { label: `Fix the shelves ${bay === null ? '' : `in bay ${bay} `}of ${mark}`, edit: fixed.edit }
  const parted = withPartition(checked)
  const partedRemedy = parted && { label: `Put a partition into ${mark}`, edit: parted.edit }
  if (parted && isCured(parted)) return partedRemedy
  // The thinnest board of the project of which everything holds.
  const thicker = ofThicker(checked, 'carcassMaterial').find(isCured)
  if (thicker) return { label: `Build ${mark} of ${thicker.name}`, edit: thicker.edit }
  return parted && isBetter(parted, checked, worst) ? partedRemedy : null
}

/** Whether nothing in the cabinet, or in the bay, then sags past more than the eye notices, where it did, or at all. */
function isSound(change: Changed, checked: Checked, { board: { bay }, limit }: Worst): boolean {
  const after = builtWith(change, checked)
  const worst =
    after &&
    worstOf(
      boardsBorne(after).filter((board) => bay === null || board.bay === bay),
      after,
    )
  return after !== null && (worst === null || (worst.limit.weight === 'know' && limit.weight !== 'know'))
}

/** Whether what sagged worst is cured, and no kind of board breaks any limit by more than it did. */
function isBetter(change: Changed, checked: Checked, worst: Worst): boolean {
  const after = builtWith(change, checked)
  if (!after) return false
  const excessIn = (one: Checked, limit: Limit, kind: string) =>
    Math.max(
      0,
      ...boardsBorne(one)
        .filter((board) => board.one === kind)
        .map((board) => excessOf(board, limit, one)),
    )
  const kinds = new Set(boardsBorne(after).map(({ one }) => one))
  const isNoWorse = limitsFor(checked.house.shelfLoad).every((limit) =>
    [...kinds].every((kind) => excessIn(after, limit, kind) <= Math.max(1, excessIn(checked, limit, kind))),
  )
  return isNoWorse && excessIn(after, worst.limit, worst.board.one) <= 1
}
