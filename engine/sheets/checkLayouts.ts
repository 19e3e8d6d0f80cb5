import { banksOf } from './bank'
import type { JobPart, SheetJob } from './job'
import type { SheetLayout } from './layout'
import { wrongInSheets } from './verify'
import { wrongInBanks } from './verifyBanks'
import { wrongInPins } from './verifyPins'

type Fields = Readonly<Record<string, unknown>>

/** Nothing is cut that deep; a tree that is deeper was not made by a sawyer. */
const DEEPEST = 40

/** Whether a list of layouts from outside has the form of one; the first field that has not. */
export function wrongLayouts(list: string, layouts: unknown): string | null {
  if (layouts === undefined) return null
  if (!Array.isArray(layouts)) return `${list} must be a list of sheets`
  for (const [at, layout] of layouts.entries()) {
    const path = `${list}[${at}]`
    if (!isFields(layout)) return `${path} must be an object`
    if (typeof layout.stock !== 'string') return `${path}.stock must be a text`
    if (!Number.isInteger(layout.copies) || (layout.copies as number) < 1) return `${path}.copies must be 1 or more`
    const wrong = wrongPlacements(`${path}.placements`, layout.placements) ?? wrongPiece(`${path}.root`, layout.root, 0)
    if (wrong) return wrong
  }
  return null
}

/** Why locked sheets cannot be taken as they are: not sound, or more parts or sheets than the job has. */
export function wrongLocks(job: SheetJob): string | null {
  const { locked = [] } = job
  for (const [at, layout] of locked.entries()) {
    const [wrong] = wrongInSheets(job, [layout])
    if (wrong) return `locked[${at}]: ${wrong}`
  }
  return tooMany(job, locked) ?? splitBank(job, locked) ?? wrongInPins(job, { sheets: locked })[0] ?? null
}

function splitBank(job: SheetJob, locked: readonly SheetLayout[]): string | null {
  const count = ({ id }: JobPart) =>
    locked.reduce((sum, sheet) => sum + sheet.copies * sheet.placements.filter(({ part }) => part === id).length, 0)
  for (const { id, boards } of banksOf(job)) {
    const kinds = [...new Set(boards)]
    const some = kinds.reduce((sum, part) => sum + count(part), 0)
    if (some !== 0 && some !== boards.length) return `locked has ${some} of the ${boards.length} boards of bank ${id}`
  }
  return wrongInBanks(job, { sheets: locked, unplaced: [], bounds: {}, proved: false })[0] ?? null
}

function tooMany({ parts, stock }: SheetJob, locked: readonly SheetLayout[]): string | null {
  for (const { id, quantity } of parts) {
    const count = locked.reduce(
      (sum, sheet) => sum + sheet.copies * sheet.placements.filter((p) => p.part === id).length,
      0,
    )
    if (count > quantity) return `locked has ${id} ${count} times; the job asks for ${quantity}`
  }
  for (const { id, quantity } of stock) {
    const count = locked.reduce((sum, sheet) => sum + (sheet.stock === id ? sheet.copies : 0), 0)
    if (quantity !== undefined && count > quantity)
      return `locked takes ${count} sheets of ${id}; there are ${quantity}`
  }
  return null
}

function wrongPlacements(path: string, placements: unknown): string | null {
  if (!Array.isArray(placements)) return `${path} must be a list`
  const at = placements.findIndex(
    (placement) => !isFields(placement) || typeof placement.part !== 'string' || !isPlace(placement),
  )
  return at < 0 ? null : `${path}[${at}] must be a part with its place`
}

function wrongPiece(path: string, piece: unknown, depth: number): string | null {
  if (!isFields(piece) || !isPlace(piece)) return `${path} must be a piece with its place`
  if (depth > DEEPEST) return `${path} lies deeper than ${DEEPEST} cuts`
  if (piece.kind === 'offcut' || piece.kind === 'waste') return null
  if (piece.kind === 'part') return typeof piece.part === 'string' ? null : `${path}.part must be a text`
  if (piece.kind !== 'cut' || !Array.isArray(piece.pieces)) return `${path}.kind must be part, offcut, waste or cut`
  if (piece.direction !== 'rip' && piece.direction !== 'crosscut') return `${path}.direction must be rip or crosscut`
  for (const [at, inner] of piece.pieces.entries()) {
    const wrong = wrongPiece(`${path}.pieces[${at}]`, inner, depth + 1)
    if (wrong) return wrong
  }
  return null
}

function isPlace({ x, y, length, width }: Fields): boolean {
  return [x, y, length, width].every((number) => typeof number === 'number' && Number.isFinite(number))
}

function isFields(value: unknown): value is Fields {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}
