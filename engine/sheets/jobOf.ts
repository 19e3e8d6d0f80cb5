import { type KeptId, type RowKey, valuesOf } from '../basics/id'
import { otherTimeKey } from '../cutlist/groups'
import type { CutRow } from '../cutlist/row'
import type { Piece } from '../geometry/sheetTree'
import type { KeptSheet, Project } from '../project/document'
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
  for (const { id, order, stock, copies, root } of kept) {
    const named = renamed(root, job)
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

/**
 * What is left over is an offcut or waste by what is kept today; a board is named as it is now, when it was cut with the
 * others before and is cut late now, or the other way.
 */
function renamed(piece: Piece, job: SheetJob): Piece {
  if (piece.kind === 'part') {
    const isThere = (key: string) => job.parts.some((part) => part.id === key)
    const other = otherTimeKey(piece.part as RowKey)
    return !isThere(piece.part) && isThere(other) ? { ...piece, part: other } : piece
  }
  if (piece.kind === 'cut') return { ...piece, pieces: piece.pieces.map((inner) => renamed(inner, job)) }
  return { ...piece, kind: isKeptLeft(piece, job) ? 'offcut' : 'waste' }
}

function freeJob({ shop, stock }: Project, rows: readonly CutRow[]): SheetJob {
  return {
    kerf: shop.kerf,
    stages: shop.stages,
    firstCut: shop.firstCut,
    stock: valuesOf(stock)
      .filter(({ material }) => rows.some((row) => row.material === material))
      .sort((a, b) => (a.id < b.id ? -1 : 1))
      .map(({ id, material, length, width, price, quantity, isOffcut: offcut, isExcluded }): JobStock => {
        const trim = offcut ? 0 : shop.trim
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
  }
}

/** Both goals in their usual order go without saying. */
function goalsOf({ goals }: Project['shop']): Pick<SheetJob, 'goals'> {
  const { isOffcutLarge, areSettingsFew, areSettingsFirst } = goals
  if (isOffcutLarge && areSettingsFew) return areSettingsFirst ? { goals: ['settings', 'leftover'] } : {}
  return { goals: isOffcutLarge ? ['leftover'] : areSettingsFew ? ['settings'] : [] }
}

/** Rows as parts of a job; the boards of a bank follow each other in their order. A wish for sheets of another material is none. */
export function jobParts(rows: readonly CutRow[], stock: Project['stock']): JobPart[] {
  const cut = rows.filter(({ length, width }) => length > 0 && width > 0)
  const single = cut.filter(({ bank }) => !bank)
  const banked = cut
    .filter(({ bank }) => bank)
    .sort((a, b) => (a.bank!.id < b.bank!.id ? -1 : a.bank!.id > b.bank!.id ? 1 : a.bank!.place - b.bank!.place))
  const wishes = new Map(banked.flatMap(({ bank, from }) => (from ? [[bank!.id, from] as const] : [])))
  return [...single, ...banked].map(
    ({ key: id, material, length, width, quantity, isGrainBound, bank, isLate, ...row }): JobPart => {
      // A bank lies on one sheet, so what is wished for one of its boards is wished for all.
      const from = bank ? wishes.get(bank.id) : row.from
      const run = bank ? { bank: { id: bank.id, along: bank.along } } : {}
      const wish = from && stock[from]?.material === material ? { from } : {}
      const time = isLate ? { late: true } : {}
      return { id, material, length, width, quantity, rotate: !isGrainBound, ...run, ...wish, ...time }
    },
  )
}
