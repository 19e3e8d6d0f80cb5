import { unreachable } from '../basics/assert'
import { counted } from '../basics/counted'
import type { MaterialId, StockId } from '../basics/id'
import type { CutRow } from '../cutlist/row'
import type { Material, Project } from '../project/document'
import type { Edit } from '../project/edit'
import { stockOf } from '../project/materials'
import { type Hindrance, hindranceOf, type Lacking, stockFor } from '../sheets/hindrance'
import type { JobStock, SheetJob } from '../sheets/job'
import type { SheetAnswer } from '../sheets/layout'
import { withoutLocked } from '../sheets/locked'
import { kindsOf, type PartKind } from '../sheets/lot'
import { countedStock } from '../sheets/unplaced'
import { formatWithUnit } from '../units/format'
import type { LengthDisplay } from '../units/length'
import { cutApart } from './apart'
import { ANY_SHEET, whyNotOnSheet } from './askedSheet'
import type { Finding, Remedy } from './finding'
import { sizeIn, sizes, stockName } from './stockWords'

/** A design, and what the packer is asked for it. */
export interface Asked {
  readonly project: Project
  readonly rows: readonly CutRow[]
  readonly job: SheetJob
}

/** Boards of one kind that are on no sheet. */
interface Left {
  readonly kind: PartKind
  readonly hindrance: Hindrance | null
  readonly rows: readonly { readonly row: CutRow; readonly quantity: number }[]
}

/** Boards that no sheet can give, whatever the layout: once for each cause. Those on kept sheets have one. */
export function hindered(asked: Asked): Finding[] {
  const free = withoutLocked(asked.job)
  const counts = new Map(free.parts.map(({ id, quantity }) => [id, quantity]))
  const left = kindsOf(free).flatMap((kind): Left[] => {
    const hindrance = kind.quantity === 0 ? null : hindranceOf(kind, asked.job)
    const rows = hindrance ? rowsOf(kind, asked, counts) : []
    return rows.length > 0 ? [{ kind, hindrance, rows }] : []
  })
  return wordsOf(left, asked, [])
}

/** Boards that a layout leaves out, and why, in the maker's words and units. */
export function leftOut(asked: Asked, { unplaced, sheets }: Pick<SheetAnswer, 'unplaced' | 'sheets'>): Finding[] {
  const counts = new Map(unplaced.map(({ part, quantity }) => [part, quantity]))
  const left = kindsOf(asked.job).flatMap((kind): Left[] => {
    const rows = rowsOf(kind, asked, counts)
    return rows.length > 0 ? [{ kind, hindrance: hindranceOf(kind, asked.job), rows }] : []
  })
  return wordsOf(left, asked, sheets)
}

/** The rows of a kind, as often as they are counted. */
function rowsOf({ part, block }: PartKind, { rows }: Asked, counts: ReadonlyMap<string, number>): Left['rows'] {
  const ids = new Set((block ?? [part]).map(({ id }) => id))
  return rows.flatMap((row) => {
    const quantity = ids.has(row.key) ? (counts.get(row.key) ?? 0) : 0
    return quantity > 0 ? [{ row, quantity }] : []
  })
}

function wordsOf(all: readonly Left[], asked: Asked, sheets: SheetAnswer['sheets']): Finding[] {
  const groups = new Map<string, Left[]>()
  for (const left of all) {
    const { hindrance, kind } = left
    // What was left when the sheets ran out is told together as far as the same sheets would have taken it.
    const near = hindrance ? nearIn(hindrance) : takers(left, asked).map(({ id }) => id)
    const key = [hindrance?.kind, ...near, kind.part.material, kind.from, kind.sheet, Boolean(kind.block)].join(' ')
    groups.set(key, [...(groups.get(key) ?? []), left])
  }
  return [...groups.values()].map((group) => findingOf(group, asked, sheets))
}

/** The sheets that a hindrance is told by, and why the one lacks that would do. */
function nearIn(hindrance: Hindrance): (string | undefined)[] {
  if (hindrance.kind === 'lacking') return [hindrance.stock.id, hindrance.why]
  if (hindrance.kind !== 'large') return []
  return [hindrance.stock.id, hindrance.lacking?.stock.id, hindrance.lacking?.why]
}

/** The sheets on hand that are large enough for a board. */
function takers({ kind, rows }: Pick<Left, 'kind' | 'rows'>, { job }: Asked): JobStock[] {
  return stockFor(job, rows[0]!.row.key).filter(({ id, excluded, quantity }) => {
    return !excluded && quantity !== 0 && (kind.from ?? id) === id
  })
}

function findingOf(group: readonly Left[], asked: Asked, sheets: SheetAnswer['sheets']): Finding {
  const { kind, hindrance } = group[0]!
  const material = asked.project.materials[kind.part.material as MaterialId]!
  const why = hindrance ? whyHindered(group, hindrance, material, asked) : whyLeft(group[0]!, material, asked, sheets)
  const rows = group.flatMap((left) => left.rows)
  const count = rows.reduce((sum, { quantity }) => sum + quantity, 0)
  const isOne = rows.length === 1
  const boards = `${counted(count, 'board')}${isOne ? ` of ${nameOf(rows[0]!.row)}` : ''} ${count === 1 ? 'is' : 'are'} on no sheet`
  const names = isOne ? '' : ` (${marksOf(marksIn(rows))})`
  const remedy = remedyFor(group, material, asked)
  return {
    ...{ weight: 'stop', about: { kind: 'material', material: material.id } },
    message: `${boards}${names}: ${why}`,
    ...figuresOf(group, count, asked),
    source: STOCK,
    ...(remedy ? { remedy } : {}),
  }
}

/** Who says what can be cut. */
export const STOCK = 'the sheets, the trim and the kerf of the shop'

/** What the boards are, and what the sheets that were looked at give. */
function figuresOf(
  [first, ...more]: readonly Left[],
  count: number,
  { project, job }: Asked,
): Pick<Finding, 'measure' | 'limit'> {
  const { hindrance, kind } = first!
  const boards = counted(count, 'board')
  switch (hindrance?.kind) {
    case 'large': {
      const [is, gives] = sizes(kind.part, hindrance.usable, project.display)
      return { measure: more.length > 0 ? `${is} and others` : is, limit: gives }
    }
    case 'trimmed':
      return { measure: `trim ${formatWithUnit(project.shop.trim, project.display)}`, limit: 'what leaves a sheet' }
    case 'none':
    case 'lacking':
      return { measure: boards, limit: 'no sheet' }
    case undefined: {
      const own = takers(first!, { project, job, rows: [] })
      return { measure: boards, limit: counted(onHand(own), 'sheet') }
    }
  }
}

const WHERE = 'under Shop and boards, on the Cut page'

function whyHindered(group: readonly Left[], hindrance: Hindrance, { name }: Material, asked: Asked): string {
  const { project } = asked
  const { part, from } = group[0]!.kind
  const wished = from === undefined ? null : project.stock[from as StockId]
  const wish = wished ? `${stockName(wished, project)}, which ${WISH}` : null
  switch (hindrance.kind) {
    case 'none':
      return `there is no sheet of ${name}. Add a sheet size ${WHERE}.`
    case 'lacking':
      return hindrance.isAll && !wish
        ? allLack(hindrance, name)
        : `${lackWords(hindrance, asked, wish)}${wish ? OR_OTHER : ''}.`
    case 'trimmed':
      return `the trim of ${formatWithUnit(project.shop.trim, project.display)} leaves nothing of ${wish ?? `the sheets of ${name}`}.`
    case 'large': {
      const { stock, usable, best, lacking } = hindrance
      const [is, gives] = sizes(part, usable, project.display)
      const sheet = wish ?? stockName(stock, project)
      const [what, fits] =
        group.length > 1
          ? ['each is', fittingSizes(group, project.display)]
          : [`${is} is`, sizeIn(best, project.display)]
      const large = `${what} larger than ${gives}, what ${sheet}${wish ? ',' : ''} gives less its trim. ${fits} would fit.`
      return lacking ? `${large} ${capital(lackWords(lacking, asked, null))}.` : large
    }
    default:
      return unreachable(hindrance)
  }
}

/** `A1 at 1473 mm x 560 mm, A4 at 1473 mm x 540 mm`. */
function fittingSizes(group: readonly Left[], display: LengthDisplay): string {
  const shown = group.slice(0, MARKS_SHOWN).flatMap(({ hindrance, rows }) => {
    return hindrance?.kind === 'large' ? [`${marksOf(marksIn(rows))} at ${sizeIn(hindrance.best, display)}`] : []
  })
  return shown.join(', ')
}

const WISH = 'was chosen to cut from'

const OR_OTHER = ', or choose another sheet'
const MORE = `Have more on hand ${WHERE}`

function allLack({ why }: Lacking, name: string): string {
  switch (why) {
    case 'aside':
      return `every sheet of ${name} is set aside. Take one back into use ${WHERE}.`
    case 'gone':
      return `there are 0 sheets of ${name} on hand. ${MORE}.`
    case 'kept':
      return `the kept sheets take all that is on hand of ${name}. ${MORE}, or let a kept sheet go.`
    default:
      return unreachable(why)
  }
}

/** Why a sheet that is large enough is not cut, and what to do, without the full stop; `wish` is how a chosen one is called. */
function lackWords({ why, stock }: Lacking, { project }: Asked, wish: string | null): string {
  const sheet = wish ?? `${stockName(stock, project)} would do`
  switch (why) {
    case 'aside':
      return wish
        ? `${sheet}, is set aside. Take it back into use ${WHERE}`
        : `${sheet}, but is set aside. Take it back into use ${WHERE}`
    case 'gone':
      return wish ? `of ${sheet}, there are 0 on hand. ${MORE}` : `${sheet}, but there are 0 of it on hand. ${MORE}`
    case 'kept':
      return wish
        ? `${sheet}, is all taken by kept sheets. ${MORE}`
        : `${sheet}, but kept sheets take all ${stock.quantity} on hand. ${MORE}, or let a kept sheet go`
    default:
      return unreachable(why)
  }
}

/** What was left when the sheets ran out, or the directions of cuts. */
function whyLeft(left: Left, { name }: Material, asked: Asked, sheets: SheetAnswer['sheets']): string {
  const { kind } = left
  const { project, job } = asked
  const own = takers(left, asked)
  if (isUncuttable(kind, job)) return 'the boards of a run of grain cannot be cut apart as one piece in two directions.'
  if (kind.sheet !== undefined) return whyNotOnSheet(kind.part, name, job, sheets)
  const there = onHand(own)
  const used = sheets.reduce((sum, { stock, copies }) => sum + (own.some(({ id }) => id === stock) ? copies : 0), 0)
  if (kind.block && used < there)
    return 'the boards of a run of grain cannot be cut apart as one piece in these cut directions.'
  if (kind.from !== undefined)
    return `${stockName(own[0]!, project)}, which ${WISH}, has no room left. ${MORE}${OR_OTHER}.`
  const isSome = job.stock.some((stock) => {
    return stock.material === kind.part.material && !stock.excluded && stock.quantity !== 0 && !own.includes(stock)
  })
  const which = isSome
    ? `, of those that are large enough (${own.map((one) => sizeIn(one, project.display)).join(', ')}),`
    : ''
  return `the ${countedStock(own)} of ${name} on hand${which} ${there === 1 ? 'is' : 'are'} used up. ${MORE}.`
}

/** Whether the boards of a run lie side by side where a third direction would be needed to part them. */
function isUncuttable({ block }: PartKind, { stages = 3, firstCut = 'rip' }: SheetJob): boolean {
  const along = block?.[0]?.bank?.along
  return stages === 2 && ((along === 'width' && firstCut === 'rip') || (along === 'length' && firstCut === 'crosscut'))
}

function onHand(stocks: readonly JobStock[]): number {
  return stocks.reduce((sum, { quantity = Infinity }) => sum + quantity, 0)
}

/** What would place the boards by what is known of sizes; tried before it is offered. */
function remedyFor(group: readonly Left[], material: Material, { project, job }: Asked): Remedy | null {
  const { kind, hindrance } = group[0]!
  const boards = group.flatMap(({ rows }) => rows.flatMap(({ row }) => row.parts))
  if (!hindrance && isUncuttable(kind, job)) return cutApart(boards, project)
  if (!hindrance && kind.sheet !== undefined)
    return { label: ANY_SHEET, edit: { kind: 'pinSheet', parts: boards, sheet: null } }
  if (!hindrance) return null
  if (kind.from !== undefined) {
    const isFree = group.every((left) => hindranceOf({ ...left.kind, from: undefined }, job) === null)
    const edit: Edit = { kind: 'pin', parts: boards, stock: null }
    return isFree ? { label: ANY_SHEET, edit } : null
  }
  const lacking = hindrance.kind === 'lacking' ? hindrance : hindrance.kind === 'large' ? hindrance.lacking : null
  if (lacking?.why !== 'aside') return null
  const isAll = hindrance.kind === 'lacking' && hindrance.isAll
  const back = stockOf(project.stock, material.id).filter(
    ({ id, isExcluded }) => isExcluded && (isAll || id === lacking.stock.id),
  )
  const ids = new Set<string>(back.map(({ id }) => id))
  const used = { ...job, stock: job.stock.map((stock) => (ids.has(stock.id) ? { ...stock, excluded: false } : stock)) }
  if (group.some((left) => hindranceOf(left.kind, used) !== null)) return null
  const edits = back.map((stock): Edit => ({ kind: 'putStock', stock: { ...stock, isExcluded: false } }))
  const which = isAll ? `the sheets of ${material.name}` : stockName(lacking.stock, project)
  return { label: `Take ${which} back into use`, edit: { kind: 'several', edits } }
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1)
}

function nameOf({ mark, name }: CutRow): string {
  return `${mark} (${name})`
}

const MARKS_SHOWN = 6

function marksIn(rows: Left['rows']): string[] {
  return rows.map(({ row }) => row.mark)
}

function marksOf(marks: readonly string[]): string {
  const more = marks.length - MARKS_SHOWN
  return `${marks.slice(0, MARKS_SHOWN).join(', ')}${more > 0 ? ` and ${counted(more, 'other row')}` : ''}`
}
