import type { ById, CabinetId, PartId, RowKey } from './basics/id'
import { valuesOf } from './basics/id'
import type { Problem } from './basics/problem'
import { once, remember } from './basics/remember'
import type { FrontFace } from './cabinets/board'
import { type Rules, withOverrides } from './cabinets/build'
import { buildCabinet } from './cabinets/buildCabinet'
import { cutListOf } from './cutlist/cutListOf'
import type { CutList, CutRow } from './cutlist/row'
import { type HardwareRow, hardwareOf } from './hardware/hardwareOf'
import type { Part } from './parts/part'
import { partsOf } from './parts/partsOf'
import type { Cabinet, CabinetKind, Project } from './project/document'
import { misfits } from './runs/fit'
import type { JobPart, JobStock, SheetJob } from './sheets/job'
import { formatWithUnit } from './units/format'
import type { LengthDisplay, Mm } from './units/length'

/** A cabinet with all that was worked out for it alone: the same object until something it depends on changes. */
export interface DerivedCabinet {
  readonly cabinet: Cabinet
  readonly mark: string
  readonly parts: readonly Part[]
  readonly fronts: readonly FrontFace[]
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
  readonly partOf: ReadonlyMap<PartId, Part>
  readonly rowOf: ReadonlyMap<PartId, RowKey>
  readonly cutList: CutList
  /** The same object as before while equal boards are asked of equal stock. Its parts are rows: id is the row's key. */
  readonly sheetJob: SheetJob
  readonly problems: readonly Problem[]
}

/**
 * The street in shop order. Every step remembers its answer by the identity of what went in, so after an edit only what
 * the edit touched is worked out again; the answer is the same as from nothing. Cabinets are worked out at once; the
 * list, the job and the problems when they are first asked for, because under a moving hand nobody asks at every move.
 */
export const derive: (project: Project) => Derived = remember((project: Project): Derived => {
  const cabinets = inShopOrder(project).map((cabinet) => derivedCabinet(cabinet, project))
  const listed = once(() => listOf(cabinets, project.materials))
  const sheetJob = once(() => sheetJobOf(project, listed().cutList.rows))
  const problems = once(() => [
    ...cabinets.flatMap((cabinet) => cabinet.problems),
    ...placeProblems(project),
    ...stockProblems(project, listed().cutList.rows),
  ])
  return {
    project,
    cabinets,
    cabinetOf: Object.fromEntries(cabinets.map((one) => [one.cabinet.id, one])),
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
      return sheetJob()
    },
    get problems() {
      return problems()
    },
  }
})

type Listed = Pick<Derived, 'partOf' | 'rowOf' | 'cutList'>

/** What the last cut list was made from, and that list: it stays while the same boards go into cabinets of the same marks. */
let lastList: {
  readonly cabinets: readonly DerivedCabinet[]
  readonly materials: Project['materials']
  readonly listed: Listed
} | null = null

function listOf(cabinets: readonly DerivedCabinet[], materials: Project['materials']): Listed {
  if (lastList && lastList.materials === materials && areSameBoards(lastList.cabinets, cabinets)) return lastList.listed
  const cutList = cutListOf(cabinets, materials)
  const listed = {
    partOf: partsById(cabinets),
    rowOf: rowsByPart(cutList.rows),
    cutList,
  }
  lastList = { cabinets, materials, listed }
  return listed
}

function partsById(cabinets: readonly DerivedCabinet[]): ReadonlyMap<PartId, Part> {
  const byId = new Map<PartId, Part>()
  for (const { parts } of cabinets) for (const part of parts) byId.set(part.id, part)
  return byId
}

function rowsByPart(rows: readonly CutRow[]): ReadonlyMap<PartId, RowKey> {
  const byPart = new Map<PartId, RowKey>()
  for (const { key, parts } of rows) for (const part of parts) byPart.set(part, key)
  return byPart
}

function areSameBoards(before: readonly DerivedCabinet[], after: readonly DerivedCabinet[]): boolean {
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

function derivedCabinet(cabinet: Cabinet, { methods, materials, method: usual, display }: Project): DerivedCabinet {
  const rules = { method: methods[cabinet.method ?? usual]!, materials, display }
  const before = known.get(cabinet)
  if (before && areSameRules(before, rules)) return before.derived
  const last = lastOf.get(cabinet.id)
  const isMoved = last && areSameRules(last, rules) && isSameBox(last.derived.cabinet, cabinet)
  const derived = isMoved ? { ...last.derived, cabinet } : builtCabinet(cabinet, rules)
  const fresh = { ...rules, derived }
  known.set(cabinet, fresh)
  if (lastOf.size >= LAST_KEPT) lastOf.clear()
  lastOf.set(cabinet.id, fresh)
  return derived
}

function areSameRules(a: Rules, b: Rules): boolean {
  return a.method === b.method && a.materials === b.materials && a.display === b.display
}

function builtCabinet(cabinet: Cabinet, usual: Rules): DerivedCabinet {
  const rules: Rules = { ...usual, method: withOverrides(usual.method, cabinet.overrides) }
  const build = buildCabinet(cabinet, rules)
  const parts = partsOf(build, rules)
  return {
    cabinet,
    mark: build.mark,
    parts,
    hardware: hardwareOf(build, parts, rules),
    fronts: build.fronts,
    problems: build.problems,
  }
}

/** Boards do not know where their cabinet stands along the wall. */
function isSameBox(before: Cabinet, after: Cabinet): boolean {
  const fields = Object.keys({ ...before, ...after }) as (keyof Cabinet)[]
  return fields.every((field) => field === 'left' || before[field] === after[field])
}

/** What stands where it cannot stand. A drag never lands there, but a file or a changed wall may ask for it. */
function placeProblems(project: Project): Problem[] {
  return misfits(project).map(({ cabinet, why }): Problem => {
    return { weight: 'stop', about: { kind: 'cabinet', cabinet: cabinet.id }, message: why }
  })
}

/** Rows that no sheet of their material can give, and materials of which there is no sheet at all. */
function stockProblems(project: Project, rows: readonly CutRow[]): Problem[] {
  return rows.flatMap((row): Problem[] => {
    const material = project.materials[row.material]!
    const about = { kind: 'material', material: row.material } as const
    const all = valuesOf(project.stock).filter((stock) => stock.material === row.material)
    const sheets = all.filter(({ isExcluded }) => !isExcluded)
    if (sheets.length === 0 && all.length > 0) {
      return [
        { weight: 'stop', about, message: `${row.mark} (${row.name}): every sheet of ${material.name} is set aside.` },
      ]
    }
    if (sheets.length === 0) {
      return [{ weight: 'stop', about, message: `${row.mark} (${row.name}): there is no sheet of ${material.name}.` }]
    }
    const { trim } = project.shop
    const usable = sheets.map(({ length, width }) => ({ length: length - 2 * trim, width: width - 2 * trim }))
    const fits = (length: Mm, width: Mm) => usable.some((sheet) => length <= sheet.length && width <= sheet.width)
    if (fits(row.length, row.width) || (!row.isGrainBound && fits(row.width, row.length))) return []
    const largest = usable.reduce((a, b) => (b.length * b.width > a.length * a.width ? b : a))
    const size = (length: Mm, width: Mm) => sizeIn(project.display, length, width)
    const message = `${row.mark} (${row.name}) is ${size(row.length, row.width)}; a sheet of ${material.name} less its trim gives ${size(largest.length, largest.width)} at most.`
    return [{ weight: 'stop', about, message }]
  })
}

function sizeIn(display: LengthDisplay, length: Mm, width: Mm): string {
  return `${formatWithUnit(length, display)} x ${formatWithUnit(width, display)}`
}

/** The last few jobs by what they ask, so that going back and forth in a drag finds the same object again. */
const jobs = new Map<string, SheetJob>()
const JOBS_KEPT = 32

function sheetJobOf(project: Project, rows: readonly CutRow[]): SheetJob {
  const { shop } = project
  const job: SheetJob = {
    kerf: shop.kerf,
    stages: shop.stages,
    firstCut: shop.firstCut,
    stock: valuesOf(project.stock)
      .filter(({ material }) => rows.some((row) => row.material === material))
      .sort((a, b) => (a.id < b.id ? -1 : 1))
      .map((stock): JobStock => {
        const { id, material, length, width, price, quantity, isOffcut: offcut, isExcluded } = stock
        const trim = offcut ? 0 : shop.trim
        const enough = quantity === null ? {} : { quantity }
        const excluded = isExcluded ? { excluded: true } : {}
        return {
          ...{ id, material, length, width, trim: { length: trim, width: trim }, price, offcut },
          ...{ ...enough, ...excluded },
        }
      }),
    parts: rows
      .filter(({ length, width }) => length > 0 && width > 0)
      .map(({ key: id, material, length, width, quantity, isGrainBound }): JobPart => {
        return { id, material, length, width, quantity, rotate: !isGrainBound }
      }),
    offcutLeast: shop.offcutLeast,
  }
  const asked = JSON.stringify(job)
  const same = jobs.get(asked)
  if (same) return same
  if (jobs.size === JOBS_KEPT) jobs.delete(jobs.keys().next().value!)
  jobs.set(asked, job)
  return job
}
