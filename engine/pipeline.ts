import type { ById, CabinetId, KeptId, PartId, RowKey } from './basics/id'
import { valuesOf } from './basics/id'
import type { Problem } from './basics/problem'
import { once, remember } from './basics/remember'
import { betweenOf } from './between/betweenOf'
import type { BuiltRun } from './between/run'
import type { FrontFace } from './cabinets/board'
import { areFrontsInset, methodOf, type Rules, withOverrides } from './cabinets/build'
import { buildCabinet } from './cabinets/buildCabinet'
import type { FrontOpening } from './cabinets/frontOpening'
import { acrossFindings } from './checks/across'
import { besideFindings } from './checks/beside'
import { blindMeasureFindings } from './checks/blindMeasure'
import { drawerOut } from './checks/boards'
import { cabinetFindings } from './checks/cabinetFindings'
import { cornerFindings } from './checks/corner'
import type { Finding } from './checks/finding'
import { guarded } from './checks/guard'
import { hobFindings } from './checks/hob'
import { insideCornerFindings } from './checks/insideCorner'
import { landingFindings } from './checks/landing'
import { misfitFindings } from './checks/misfit'
import { overlapFindings } from './checks/overlap'
import { seenScrewFindings } from './checks/seenScrews'
import { sillFindings } from './checks/sill'
import { drawerFindings, freeFindings, standingFindings } from './checks/standing'
import { stockFindings } from './checks/stock'
import { underCutoutFindings } from './checks/underCutout'
import { cutListOf } from './cutlist/cutListOf'
import type { CutList, CutRow } from './cutlist/row'
import { hardwareOf } from './hardware/hardwareOf'
import type { HardwareRow } from './hardware/row'
import type { Part } from './parts/part'
import { partsOf } from './parts/partsOf'
import type { Cabinet, CabinetKind, House, Project, Shop } from './project/document'
import type { CutLate } from './project/late'
import { find } from './project/references'
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
  const cabinets = inShopOrder(project).map((cabinet) => derivedCabinet(cabinet, project))
  const runs = betweenOf(project)
  const listed = once(() => listOf([...cabinets, ...runs], project))
  const order = once(() => sheetOrderOf(project, listed().cutList.rows))
  const found = once((): readonly Finding[] => [
    ...cabinets.flatMap((one) => [...one.problems, ...findingsOf(one, project)]),
    ...runs.flatMap((run) => run.problems),
    ...misfitFindings(project),
    ...placeFindings(project, cabinets),
    ...overlapFindings(project, runs),
    ...countertopFindings(project, runs, cabinets),
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
    ...own.flatMap((one) => [...one.problems, ...findingsOf(one, project)]),
    ...misfitFindings(project),
    ...placeFindings(project, cabinets, own),
    ...(own.some(({ cabinet }) => cabinet.cutout) ? countertopFindings(project, betweenOf(project), cabinets) : []),
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
  readonly findings: readonly Finding[]
}

/** What the checks said of a cabinet last. Its boards are the same object while it is only moved. */
const lookedAt = new WeakMap<readonly Part[], Looked>()

function findingsOf({ cabinet, mark, parts, fronts }: DerivedCabinet, project: Project): readonly Finding[] {
  const { house, shop, display, materials } = project
  const wallHeight = find(project.walls, cabinet.wall)?.height ?? null
  const before = lookedAt.get(parts)
  if (before && before.house === house && before.shop === shop && before.wallHeight === wallHeight) {
    return before.findings
  }
  const rules = { method: methodOf(cabinet, project), materials, display, kick: project.between.kick }
  const findings = cabinetFindings({ cabinet, mark, parts, fronts, rules, display, house, shop, wallHeight })
  lookedAt.set(parts, { house, shop, wallHeight, findings })
  return findings
}

/** What depends on where a cabinet stands and on what is beside it. */
function placeFindings(
  project: Project,
  cabinets: readonly DerivedCabinet[],
  ones: readonly DerivedCabinet[] = cabinets,
): Finding[] {
  const standing = cabinets.map(({ cabinet, mark, fronts, parts }) => {
    const method = methodOf(cabinet, project)
    const thickness = project.materials[method.frontMaterial]?.thickness ?? 0
    // The doors of a corner open into the corner, away from what is beside it.
    const beside = cabinet.corner ? [] : fronts
    const frontThickness = areFrontsInset(method) || fronts.length === 0 ? 0 : thickness
    return { cabinet, mark, fronts: beside, frontThickness, drawerOut: drawerOut(parts, method) }
  })
  const boxes = ones.map(({ cabinet }) => cabinet)
  const asked = ones === cabinets ? standing : standing.filter(({ cabinet }) => boxes.includes(cabinet))
  return [
    ...besideFindings(project, standing, asked),
    ...standingFindings(project, boxes),
    ...drawerFindings(project, ones),
    ...freeFindings(project, boxes),
    ...cornerFindings(project, boxes),
    ...insideCornerFindings(project, standing, asked),
    ...acrossFindings(project, standing, asked),
    ...blindMeasureFindings(project, asked),
    ...seenScrewFindings(project, boxes),
  ]
}

/** What lies in the countertops, hangs over them and stands behind them. */
function countertopFindings(
  project: Project,
  runs: readonly BuiltRun[],
  cabinets: readonly DerivedCabinet[],
): Finding[] {
  if (project.between.countertop === null) return []
  const boardsOf = (id: CabinetId) => cabinets.find(({ cabinet }) => cabinet.id === id)?.parts ?? []
  return [
    ...hobFindings(project, runs),
    ...underCutoutFindings(project, runs, boardsOf),
    ...landingFindings(project, runs),
    ...sillFindings(project, runs),
  ]
}
