import { type KeptId, type RowKey, valuesOf } from '../basics/id'
import { anySheetKey, otherTimeKey } from '../cutlist/groups'
import type { CutRow } from '../cutlist/row'
import type { Piece } from '../geometry/sheetTree'
import type { KeptSheet, Project } from '../project/document'
import { trimOf, wishedFrom } from '../project/materials'
import { wrongLocks } from './checkLayouts'
import { isKeptLeft } from './draw'
import type { JobPart, JobStock, SheetJob } from './job'
import { type Placement2D, placementsIn, type SheetLayout } from './layout'
import { withBacksTurned } from './turned'

/** What the packer is asked for a design, and what became of the sheets that the maker kept. */
export interface SheetOrder {
  /** The same object as before while equal boards are asked of equal stock. Its parts are rows: id is the row's key. */
  readonly job: SheetJob
  /** The kept sheets that are locked in the job, in its order of them. */
  readonly held: readonly KeptId[]
  /** The kept sheets that the design has outgrown, and why. They are not held. */
  readonly outgrown: readonly Outgrown[]
}

/** A kept sheet that cannot be cut as it is any more. */
export interface Outgrown {
  readonly id: KeptId
  /** A board on it that the design does not ask for, or not so often; null when the sheet or the shop has changed. */
  readonly board: Placement2D | null
}

/** The last few orders by what they ask, so that going back and forth in a drag finds the same objects again. */
const orders = new Map<string, SheetOrder>()
const ORDERS_KEPT = 32

export function sheetOrderOf(project: Project, rows: readonly CutRow[]): SheetOrder {
  const job = withBacksTurned(freeJob(project, rows), rows, project)
  const kept = valuesOf(project.kept).sort((a, b) => a.order - b.order || (a.id < b.id ? -1 : 1))
  const asked = JSON.stringify([job, kept])
  const same = orders.get(asked)
  if (same) return same
  const order = withKept(job, kept)
  if (orders.size === ORDERS_KEPT) orders.delete(orders.keys().next().value!)
  orders.set(asked, order)
  return order
}

/** Locks the kept sheets one by one, as long as the job still asks for what is on them. */
function withKept(job: SheetJob, kept: readonly KeptSheet[]): SheetOrder {
  const locked: SheetLayout[] = []
  const lockedAt: number[] = []
  const held: KeptId[] = []
  const outgrown: Outgrown[] = []
  for (const { id, order, stock, copies, root, ...one } of kept) {
    const named = renamed(root, job, copies === 1 ? askingFor(one.sheet, job) : new Map())
    const layout: SheetLayout = { stock, copies, root: named, placements: placementsIn(named) }
    if (wrongLocks({ ...job, locked: [...locked, layout] }) === null) {
      locked.push(layout)
      lockedAt.push(order)
      held.push(id)
    } else outgrown.push({ id, board: boardTooMany(job, [...locked, layout]) })
  }
  return { job: locked.length > 0 ? { ...job, locked, lockedAt } : job, held, outgrown }
}

function boardTooMany({ parts }: SheetJob, locked: readonly SheetLayout[]): Placement2D | null {
  const missing = new Map<string, number>(parts.map(({ id, quantity }) => [id, quantity]))
  for (const { placements, copies } of locked) {
    for (const board of placements) {
      const left = (missing.get(board.part) ?? 0) - copies
      if (left < 0) return board
      missing.set(board.part, left)
    }
  }
  return null
}

/** The rows whose boards ask for the sheet of a number, and how many of them: each may be one on a sheet that was kept. */
function askingFor(sheet: number | undefined, { parts }: SheetJob): Map<string, number> {
  const asking = parts.filter((part) => part.sheet !== undefined && part.sheet === sheet)
  return new Map(asking.map(({ id, quantity }) => [id, quantity]))
}

/**
 * What is left over is an offcut or waste by what is kept today. A board is named as it is now: as one that asks for this
 * sheet, as long as there are such; otherwise as it was, or as it is when it was cut with the others before and is cut late
 * now, or the other way, or asked for a sheet and does not any more.
 */
function renamed(piece: Piece, job: SheetJob, asking: Map<string, number>): Piece {
  if (piece.kind === 'part') return { ...piece, part: nameNow(piece.part as RowKey, job, asking) }
  if (piece.kind === 'cut') return { ...piece, pieces: piece.pieces.map((inner) => renamed(inner, job, asking)) }
  return { ...piece, kind: isKeptLeft(piece, job) ? 'offcut' : 'waste' }
}

function nameNow(key: RowKey, { parts }: SheetJob, asking: Map<string, number>): string {
  const isThere = (name: string) => parts.some(({ id }) => id === name)
  if (asking.size === 0 && isThere(key)) return key
  const any = anySheetKey(key)
  const other = otherTimeKey(any)
  for (const [asked, count] of asking) {
    const plain = anySheetKey(asked as RowKey)
    if (count === 0 || (plain !== any && plain !== other)) continue
    asking.set(asked, count - 1)
    return asked
  }
  // Those that ask for this sheet are given their names already, whichever they were.
  const names = asking.size > 0 ? [any, other, key] : [key, any, other]
  return names.find(isThere) ?? key
}

function freeJob({ shop, stock }: Project, rows: readonly CutRow[]): SheetJob {
  return {
    kerf: shop.kerf,
    stages: shop.stages,
    firstCut: shop.firstCut,
    stock: valuesOf(stock)
      .filter(({ material }) => rows.some((row) => row.material === material))
      .sort((a, b) => (a.id < b.id ? -1 : 1))
      .map((sheet): JobStock => {
        const { id, material, length, width, price, quantity, isOffcut: offcut, isExcluded } = sheet
        const trim = trimOf(sheet, shop)
        const enough = quantity === null ? {} : { quantity }
        const excluded = isExcluded ? { excluded: true } : {}
        return {
          ...{ id, material, length, width, trim: { length: trim, width: trim }, price, offcut },
          ...{ ...enough, ...excluded },
        }
      }),
    parts: jobParts(rows, stock),
    offcutLeast: shop.offcutLeast,
    ...goalsOf(shop),
    ...(shop.goals.isCountFirst ? { isCountFirst: true } : {}),
  }
}

/** Both goals in their usual order go without saying. */
function goalsOf({ goals }: Project['shop']): Pick<SheetJob, 'goals'> {
  const { isOffcutLarge, areSettingsFew, areSettingsFirst } = goals
  if (isOffcutLarge && areSettingsFew) return areSettingsFirst ? { goals: ['settings', 'leftover'] } : {}
  return { goals: isOffcutLarge ? ['leftover'] : areSettingsFew ? ['settings'] : [] }
}

/**
 * Rows as parts of a job; the boards of a bank follow each other in their order, and the last of them that asks for sheets
 * asks for all. A wish for sheets of another material is none.
 */
export function jobParts(rows: readonly CutRow[], stock: Project['stock']): JobPart[] {
  const cut = rows.filter(({ length, width }) => length > 0 && width > 0)
  const single = cut.filter(({ bank }) => !bank)
  const banked = cut
    .filter(({ bank }) => bank)
    .sort((a, b) => (a.bank!.id < b.bank!.id ? -1 : a.bank!.id > b.bank!.id ? 1 : a.bank!.place - b.bank!.place))
  const wishes = new Map(
    banked.flatMap(({ bank, material, from }) => {
      const wish = wishedFrom(stock, material, from)
      return wish ? [[bank!.id, wish] as const] : []
    }),
  )
  const asked = new Map(banked.flatMap(({ bank, sheet }) => (sheet === undefined ? [] : [[bank!.id, sheet] as const])))
  return [...single, ...banked].map(
    ({ key: id, material, length, width, quantity, isGrainBound, bank, isLate, ...row }): JobPart => {
      // A bank lies on one sheet, so what is wished for one of its boards is wished for all.
      const from = bank ? wishes.get(bank.id) : wishedFrom(stock, material, row.from)
      const run = bank ? { bank: { id: bank.id, along: bank.along } } : {}
      const wish = from ? { from } : {}
      const sheet = bank ? asked.get(bank.id) : row.sheet
      const one = sheet === undefined ? {} : { sheet }
      const time = isLate ? { late: true } : {}
      return { id, material, length, width, quantity, rotate: !isGrainBound, ...run, ...wish, ...one, ...time }
    },
  )
}
