import type { PartId } from '../basics/id'
import type { CutList, CutRow } from '../cutlist/row'
import { isKeptLeft } from '../sheets/draw'
import type { SheetJob } from '../sheets/job'
import {
  type CutPiece,
  type Piece,
  type Place,
  placementsIn,
  type SheetAnswer,
  type SheetLayout,
} from '../sheets/layout'
import { settle } from '../units/length'
import { assignParts } from './assign'

/**
 * A layout drawn again for a design that has changed a little: every board keeps its place among the cuts, at the size
 * that it has now, and the cuts move with it.
 *
 *     |  A  |  B  |w|     A has grown     |   A   |  B  |
 *
 * A sheet that its boards have outgrown is left out, and so are boards that are no longer there; whether what comes of
 * it is sound is for the packer to judge.
 */
export function relaid(answer: SheetAnswer, before: Pick<CutList, 'rows'>, job: SheetJob, rows: readonly CutRow[]) {
  const rowOf = new Map<PartId, CutRow>(rows.flatMap((row) => row.parts.map((part) => [part, row] as const)))
  const boards = boardsOfSheets(answer, before)
  const alike = new Map<string, SheetLayout>()
  let sheet = 0
  for (const { stock: id, copies, root } of answer.sheets) {
    const stock = job.stock.find((one) => one.id === id)
    for (let copy = 0; copy < copies; copy++) {
      const parts = boards[sheet++]!.values()
      const wanted = stock && wantedOf(root, () => rowOf.get(parts.next().value!), job.kerf)
      const { x, y } = root
      const length = stock ? settle(stock.length - 2 * (stock.trim?.length ?? 0)) : 0
      const width = stock ? settle(stock.width - 2 * (stock.trim?.width ?? 0)) : 0
      if (!wanted || wanted.length > length || wanted.width > width) continue
      const drawn = drawnAt(wanted, { x, y, length, width }, job)
      const key = JSON.stringify([id, drawn])
      const known = alike.get(key)
      const fresh = { stock: id, copies: 1, root: drawn, placements: placementsIn(drawn) }
      alike.set(key, known ? { ...known, copies: known.copies + 1 } : fresh)
    }
  }
  return [...alike.values()]
}

/** For each sheet, with copies counted out, the boards that lie on it in the order of its tree. */
function boardsOfSheets(answer: SheetAnswer, before: Pick<CutList, 'rows'>): PartId[][] {
  const boards: PartId[][] = answer.sheets.flatMap(({ copies }) => Array.from({ length: copies }, () => []))
  for (const { part, sheet } of assignParts(before, answer)) boards[sheet - 1]!.push(part)
  return boards
}

/** A piece of the tree with the room that it needs now. */
type Wanted = { readonly length: number; readonly width: number } & (
  | { readonly kind: 'part'; readonly part: string; readonly rotated: boolean }
  | { readonly kind: 'cut'; readonly direction: CutPiece['direction']; readonly pieces: readonly Wanted[] }
)

/** What is left over is forgotten; null where nothing else is. */
function wantedOf(piece: Piece, nextRow: () => CutRow | undefined, kerf: number): Wanted | null {
  if (piece.kind === 'part') {
    const row = nextRow()
    if (!row) return null
    const [length, width] = piece.rotated ? [row.width, row.length] : [row.length, row.width]
    return { kind: 'part', part: row.key, rotated: piece.rotated, length, width }
  }
  if (piece.kind !== 'cut') return null
  const pieces = piece.pieces.flatMap((inner) => wantedOf(inner, nextRow, kerf) ?? [])
  if (pieces.length === 0) return null
  const side = (all: number[], isInRow: boolean) =>
    isInRow ? settle(all.reduce((sum, one) => sum + one, kerf * (all.length - 1))) : Math.max(...all)
  return {
    ...{ kind: 'cut', direction: piece.direction, pieces },
    length: side(
      pieces.map(({ length }) => length),
      piece.direction === 'crosscut',
    ),
    width: side(
      pieces.map(({ width }) => width),
      piece.direction === 'rip',
    ),
  }
}

/** The piece in the room that there is: what it does not need is cut off, across it first. */
function drawnAt(wanted: Wanted, place: Place, job: SheetJob): Piece {
  const isRip = wanted.kind === 'cut' ? wanted.direction === 'rip' : wanted.width < place.width
  const along = isRip ? 'width' : 'length'
  if (wanted.kind === 'part' && wanted[along] === place[along]) {
    const { kind, part, rotated } = wanted
    return { kind, part, rotated, ...place }
  }
  const inner = wanted.kind === 'part' ? [wanted] : wanted.pieces
  const pieces: Piece[] = []
  let used = 0
  const next = (): Place => (isRip ? { ...place, y: settle(place.y + used) } : { ...place, x: settle(place.x + used) })
  for (const piece of inner) {
    pieces.push(drawnAt(piece, { ...next(), [along]: piece[along] }, job))
    used = settle(used + piece[along] + job.kerf)
  }
  if (inner.length === 1 && inner[0]![along] === place[along]) return pieces[0]!
  const left = settle(place[along] - used)
  if (left > 0) {
    const rest = { ...next(), [along]: left }
    pieces.push({ kind: isKeptLeft(rest, job) ? 'offcut' : 'waste', ...rest })
  }
  return { kind: 'cut', direction: isRip ? 'rip' : 'crosscut', pieces, ...place }
}
