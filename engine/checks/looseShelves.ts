import { counted } from '../basics/counted'
import type { Problem } from '../basics/problem'
import { buildCabinet } from '../cabinets/buildCabinet'
import type { ColumnShelves } from '../project/document'
import { baysOf, withBayShelves } from '../project/interior'
import { settle } from '../units/length'
import { builtWay } from './builtWays'
import { type Changed, withInside, withShelvesFixed } from './changed'
import { type Checked, type Finding, type Remedy, withRemedy } from './finding'
import { sayIn } from './say'

/** What the build of a cabinet tells, with the ways out that there are. */
export function buildFindings(problems: readonly Problem[], checked: Checked): Finding[] {
  return problems.map((problem) => {
    const { way } = problem
    if (way === 'looseShelves') return withRemedy(problem, () => shelvesRemedy(checked))
    // How long the legs of a corner may be is asked of what stands beside it.
    if (way === undefined || way === 'ownLeg' || way === 'otherLeg') return problem
    return withRemedy(problem, () => builtWay(way, checked))
  })
}

/** A change, and what it does in words. */
interface Way extends Changed {
  readonly label: string
}

/**
 * The first that leaves no loose shelf without its holes and nothing else that is told of the build: fewer loose shelves
 * where they stand too many, as many as find holes; holes that begin nearer to the boards below and above; the shelves
 * fixed; none at all.
 */
function shelvesRemedy(checked: Checked): Remedy | null {
  const before = problemsOf(checked).length
  const isCured = ({ changed }: Changed) => {
    const after = problemsOf(changed)
    return after.length < before && after.every(({ way }) => way !== 'looseShelves')
  }
  const fewer = ownersOf(checked).flatMap(fewerIn)
  const isSome = ({ count }: { readonly count: number }) => count > 0
  const ways = [
    ...fewer.filter(isSome),
    ...nearerHoles(checked),
    fixed(checked),
    ...fewer.filter((one) => !isSome(one)),
  ]
  const way = ways.find(isCured)
  return way ? { label: way.label, edit: way.edit } : null
}

function problemsOf({ cabinet, rules }: Checked): readonly Problem[] {
  return buildCabinet(cabinet, rules).problems
}

/** Where it is said how many loose shelves stand: for the whole cabinet, or for one bay or column of it. */
interface Owner {
  readonly count: number
  /** `into U1`, `into bay 2 of U1`. */
  readonly place: string
  readonly withCount: (count: number) => Changed
}

function ownersOf(checked: Checked): Owner[] {
  const { cabinet, mark } = checked
  const { interior, front } = cabinet
  const bays = baysOf(interior)
  const columns = front.kind === 'columns' ? front.columns : []
  const isParted = bays.length > 0 || columns.length > 0
  const inBays = bays.flatMap(({ shelves }, at): Owner[] => {
    if (!shelves) return []
    const withCount = (count: number) => withInside(checked, withBayShelves(interior, at, counting(shelves, count)))
    return [{ count: shelves.adjustableShelves, place: `bay ${at + 1} of ${mark}`, withCount }]
  })
  const inColumns = columns.flatMap(({ shelves }, at): Owner[] => {
    if (!shelves) return []
    const withCount = (count: number): Changed => {
      const others = columns.map((one, index) => (index === at ? { ...one, shelves: counting(shelves, count) } : one))
      const changed = { kind: 'columns', columns: others } as const
      return {
        changed: { ...checked, cabinet: { ...cabinet, front: changed } },
        edit: { kind: 'setFront', ids: [cabinet.id], front: changed },
      }
    }
    return [{ count: shelves.adjustableShelves, place: `column ${at + 1} of ${mark}`, withCount }]
  })
  const whole: Owner = {
    count: interior.adjustableShelves,
    place: isParted ? `each part of ${mark} that has none of its own` : mark,
    withCount: (count) => withInside(checked, counting(interior, count)),
  }
  return [whole, ...inBays, ...inColumns]
}

function counting<Shelves extends ColumnShelves>(shelves: Shelves, adjustableShelves: number): Shelves {
  return { ...shelves, adjustableShelves }
}

/** The most first. */
function fewerIn({ count, place, withCount }: Owner): (Way & { readonly count: number })[] {
  return Array.from({ length: Math.min(count, MOST_TRIED) }, (_, less) => {
    const left = count - less - 1
    const label =
      left > 0
        ? `Put ${counted(left, 'loose shelf', 'loose shelves')} into ${place} instead of ${count}`
        : `Leave the loose ${count === 1 ? 'shelf' : 'shelves'} out of ${place}`
    return { ...withCount(left), count: left, label }
  })
}

/** A cabinet is built anew for each that is tried. */
const MOST_TRIED = 40

/** One pitch nearer, two and so on, as long as half a pitch is left. */
function nearerHoles(checked: Checked): Way[] {
  const { cabinet, rules, mark, display } = checked
  const { shelves } = rules.method
  const { firstHole, pitch } = shelves
  const steps = pitch > 0 ? Math.min(MOST_TRIED, Math.floor((firstHole - pitch / 2) / pitch)) : 0
  return Array.from({ length: Math.max(0, steps) }, (_, at) => {
    const nearer = settle(firstHole - (at + 1) * pitch)
    const method = { ...rules.method, shelves: { ...shelves, firstHole: nearer } }
    return {
      changed: { ...checked, rules: { ...rules, method } },
      edit: { kind: 'override', ids: [cabinet.id], choices: { shelves: { firstHole: nearer } } },
      label: `Begin the pin holes of ${mark} ${sayIn(display).length(nearer)} from the boards below and above`,
    }
  })
}

function fixed(checked: Checked): Way {
  return { ...withShelvesFixed(checked), label: `Fix the shelves of ${checked.mark}` }
}
