import type { ById, CabinetId, KeptId, PartId, RowKey } from './basics/id'
import { valuesOf } from './basics/id'
import type { Problem } from './basics/problem'
import { once, remember } from './basics/remember'
import { betweenOf } from './between/betweenOf'
import { withGrainAcross } from './between/grainAcross'
import { inSequence } from './between/inSequence'
import type { BuiltRun } from './between/run'
import type { FrontFace } from './cabinets/board'
import { type Rules, rulesOf, withOverrides } from './cabinets/build'
import { buildCabinet } from './cabinets/buildCabinet'
import type { FrontOpening } from './cabinets/frontOpening'
import { apartFinding, partedFinding } from './checks/apart'
import { cabinetFindings } from './checks/cabinetFindings'
import type { Checked, Finding } from './checks/finding'
import { guarded } from './checks/guard'
import { buildFindings } from './checks/looseShelves'
import { misfitFindings } from './checks/misfit'
import { overlapFindings } from './checks/overlap'
import { placeFindings, topFindings } from './checks/placed'
import { withLongerLegs } from './checks/shortLeg'
import { stockFindings } from './checks/stock'
import { cutListOf } from './cutlist/cutListOf'
import type { CutList, CutRow } from './cutlist/row'
import type { Box } from './geometry/box'
import { hardwareOf } from './hardware/hardwareOf'
import type { HardwareRow } from './hardware/row'
import type { Part } from './parts/part'
import { partsOf } from './parts/partsOf'
import type { Cabinet, CabinetKind, House, Project, Shop } from './project/document'
import type { CutLate } from './project/late'
import { find } from './project/references'
import { hasTopOver } from './project/topOver'
import type { SheetJob } from './sheets/job'
import { sheetOrderOf } from './sheets/jobOf'
import type { Mm } from './units/length'

/** A cabinet with all that was worked out for it alone: the same object until something it depends on changes. */
export interface DerivedCabinet {
  readonly cabinet: Cabinet
  readonly mark: string
  readonly parts: readonly Part[]
  readonly fronts: readonly FrontFace[]
  readonly openings: readonly FrontOpening[]
  /** What is bought for it besides boards. */
  readonly hardware: readonly HardwareRow[]
  readonly problems: readonly Problem[]
  /** The appliance that stands in a space for one; none in a cabinet. */
  readonly bodies?: readonly Box[]
}

/** Everything that follows from a project at once. Sheets and steps follow later, from the sheet job. */
export interface Derived {
  readonly project: Project
  /** In shop order: bases, uppers, talls by number. */
  readonly cabinets: readonly DerivedCabinet[]
  readonly cabinetOf: ById<CabinetId, DerivedCabinet>
  /** Boards over several cabinets: kicks in lengths and countertops. */
  readonly runs: readonly BuiltRun[]
  readonly partOf: ReadonlyMap<PartId, Part>
  readonly rowOf: ReadonlyMap<PartId, RowKey>
  readonly cutList: CutList
  /** The same object as before while equal boards are asked of equal stock. Its parts are rows: id is the row's key. */
  readonly sheetJob: SheetJob
  /** The kept sheets that are locked in the sheet job, in its order of them. */
  readonly heldSheets: readonly KeptId[]
  readonly problems: readonly Finding[]
}

/**
 * The street in shop order. Every step remembers its answer by the identity of what went in, so after an edit only what
 * the edit touched is worked out again; the answer is the same as from nothing. Cabinets are worked out at once; the
 * list, the job and the problems when they are first asked for, because under a moving hand nobody asks at every move.
 */
export const derive: (project: Project) => Derived = remember((project: Project): Derived => {
  const alone = inShopOrder(project).map((cabinet) => derivedCabinet(cabinet, project))
  const { cabinets, runs, apart, parted } = inSequence(withGrainAcross(alone, project), betweenOf(project), project)
  const listed = once(() => listOf([...cabinets, ...runs], project))
  const order = once(() => sheetOrderOf(project, listed().cutList.rows))
  const found = once((): readonly Finding[] => [
    ...cabinets.flatMap((one) => withLongerLegs(findingsOf(one, project), one.cabinet, project)),
    ...runs.flatMap((run) => run.problems),
    ...misfitFindings(project),
    ...placeFindings(project, cabinets),
    ...overlapFindings(project, runs),
    ...apart.map((one) => apartFinding(one, project)),
    ...parted.map((one) => partedFinding(one, project)),
    ...topFindings(project, runs, cabinets),
    ...stockFindings({ project, rows: listed().cutList.rows, job: order().job }, order().outgrown),
  ])
  const problems = once(() => found().map((finding) => guarded(finding, project, { found, judged })))
  return {
    project,
    cabinets,
    cabinetOf: Object.fromEntries(cabinets.map((one) => [one.cabinet.id, one])),
    runs,
    get partOf() {
      return listed().partOf
    },
    get rowOf() {
      return listed().rowOf
    },
    get cutList() {
      return listed().cutList
    },
    get sheetJob() {
      return order().job
    },
    get heldSheets() {
      return order().held
    },
    get problems() {
      return problems()
    },
  }
})

/** What is found about one cabinet of a project that is only tried, which leaves no mark on what was derived last. */
function judged(id: CabinetId, project: Project): readonly Finding[] {
  const cabinets = inShopOrder(project).map((cabinet) => derivedCabinet(cabinet, project, false))
  const own = cabinets.filter(({ cabinet }) => cabinet.id === id)
  return [
    ...own.flatMap((one) => findingsOf(one, project)),
    ...misfitFindings(project),
    ...placeFindings(project, cabinets, own),
    ...(own.some(({ cabinet }) => cabinet.cutout || cabinet.space || cabinet.top)
      ? topFindings(project, betweenOf(project), cabinets)
      : []),
  ]
}

/** Whose boards they are: a cabinet or a run. */
type Marked = Pick<DerivedCabinet, 'mark' | 'parts'>

type Listed = Pick<Derived, 'partOf' | 'rowOf' | 'cutList'>

/** What the last cut list was made from, and that list: it stays while the same boards go into cabinets of the same marks. */
let lastList: {
  readonly owners: readonly Marked[]
  readonly materials: Project['materials']
  readonly late: CutLate
  readonly listed: Listed
} | null = null

function listOf(owners: readonly Marked[], { materials, shop: { late } }: Project): Listed {
  const isSame = lastList?.materials === materials && lastList.late === late
  if (lastList && isSame && areSameBoards(lastList.owners, owners)) return lastList.listed
  const cutList = cutListOf(owners, materials, late)
  const listed = {
    partOf: partsById(owners),
    rowOf: rowsByPart(cutList.rows),
    cutList,
  }
  lastList = { owners, materials, late, listed }
  return listed
}

function partsById(owners: readonly Marked[]): ReadonlyMap<PartId, Part> {
  const byId = new Map<PartId, Part>()
  for (const { parts } of owners) for (const part of parts) byId.set(part.id, part)
  return byId
}

function rowsByPart(rows: readonly CutRow[]): ReadonlyMap<PartId, RowKey> {
  const byPart = new Map<PartId, RowKey>()
  for (const { key, parts } of rows) for (const part of parts) byPart.set(part, key)
  return byPart
}

function areSameBoards(before: readonly Marked[], after: readonly Marked[]): boolean {
  return (
    before.length === after.length &&
    after.every(({ parts, mark }, at) => parts === before[at]!.parts && mark === before[at]!.mark)
  )
}

const SHOP_ORDER: readonly CabinetKind[] = ['base', 'upper', 'tall']

function inShopOrder(project: Project): Cabinet[] {
  return valuesOf<Cabinet>(project.cabinets).sort(
    (a, b) => SHOP_ORDER.indexOf(a.kind) - SHOP_ORDER.indexOf(b.kind) || a.number - b.number || (a.id < b.id ? -1 : 1),
  )
}

type Known = Rules & { readonly derived: DerivedCabinet }

/** What was worked out for a cabinet last, and from which rules. */
const known = new WeakMap<Cabinet, Known>()
/** The same by the cabinet's id, for one that has only been moved. */
const lastOf = new Map<CabinetId, Known>()
const LAST_KEPT = 2000

function derivedCabinet(
  cabinet: Cabinet,
  { methods, materials, method: usual, display, between }: Project,
  isKept = true,
): DerivedCabinet {
  const rules = { method: methods[cabinet.method ?? usual]!, materials, display, kick: between.kick }
  const before = known.get(cabinet)
  if (before && areSameRules(before, rules)) return before.derived
  const last = lastOf.get(cabinet.id)
  const isMoved = last && areSameRules(last, rules) && isSameBox(last.derived.cabinet, cabinet)
  const derived = isMoved ? { ...last.derived, cabinet } : builtCabinet(cabinet, rules)
  const fresh = { ...rules, derived }
  known.set(cabinet, fresh)
  if (lastOf.size >= LAST_KEPT) lastOf.clear()
  if (isKept) lastOf.set(cabinet.id, fresh)
  return derived
}

function areSameRules(a: Rules, b: Rules): boolean {
  return a.method === b.method && a.materials === b.materials && a.display === b.display && a.kick === b.kick
}

function builtCabinet(cabinet: Cabinet, usual: Rules): DerivedCabinet {
  const rules: Rules = { ...usual, method: withOverrides(usual.method, cabinet) }
  const build = buildCabinet(cabinet, rules)
  const parts = partsOf(build, rules)
  return {
    cabinet,
    mark: build.mark,
    parts,
    hardware: hardwareOf(build, parts, rules),
    fronts: build.fronts,
    openings: build.openings,
    problems: build.problems,
    ...(build.bodies && { bodies: build.bodies }),
  }
}

/** Boards do not know where their cabinet stands along the wall. */
function isSameBox(before: Cabinet, after: Cabinet): boolean {
  const fields = Object.keys({ ...before, ...after }) as (keyof Cabinet)[]
  return fields.every((field) => field === 'left' || before[field] === after[field])
}

interface Looked {
  readonly house: House
  readonly shop: Shop
  readonly wallHeight: Mm | null
  readonly isUnderTop: boolean
  /** What was told while they were built. */
  readonly problems: readonly Problem[]
  readonly findings: readonly Finding[]
}

/** What the build and the checks said of a cabinet last. Its boards are the same object while it is only moved. */
const lookedAt = new WeakMap<readonly Part[], Looked>()

function findingsOf({ cabinet, mark, parts, fronts, problems }: DerivedCabinet, project: Project): readonly Finding[] {
  const { house, shop, display } = project
  const wallHeight = find(project.walls, cabinet.wall)?.height ?? null
  const isUnderTop = hasTopOver(cabinet, project)
  const before = lookedAt.get(parts)
  const isKnown = before?.house === house && before.shop === shop && before.problems === problems
  if (isKnown && before.wallHeight === wallHeight && before.isUnderTop === isUnderTop) return before.findings
  const rules = rulesOf(cabinet, project)
  const checked: Checked = { cabinet, mark, parts, fronts, rules, display, house, shop, wallHeight, isUnderTop }
  const findings = [...buildFindings(problems, checked), ...cabinetFindings(checked)]
  lookedAt.set(parts, { house, shop, wallHeight, isUnderTop, problems, findings })
  return findings
}
