import { remember } from '../basics/remember'
import { fromTicks, ticks } from '../units/length'
import { type Board, RIP, type Twig } from './cutTree'
import { patternOf } from './handling'
import type { SheetJob } from './job'
import { type LeftPiece, type Piece, type Place, placementsIn, type SheetLayout } from './layout'
import type { Lot } from './lot'
import { onHandFirst } from './onHand'

const LEAST_OFFCUT = { length: 300, width: 150 }

/** A planned board as a layout: grown ticks become places in mm, with a kerf between pieces. */
function layoutOf(board: Board, lot: Lot, job: SheetJob): SheetLayout {
  const trim = board.stock.stock.trim
  const x = ticks(trim?.length ?? 0)
  const y = ticks(trim?.width ?? 0)
  const least = job.offcutLeast ?? LEAST_OFFCUT
  const root = pieceOf(board.root, x, y, lot, least)
  return { stock: board.stock.stock.id, copies: 1, root, placements: placementsIn(root) }
}

function pieceOf(twig: Twig, x: number, y: number, lot: Lot, least: typeof LEAST_OFFCUT): Piece {
  const { kerf } = lot
  const place = placed(x, y, twig.length - kerf, twig.width - kerf)
  if (twig.kind >= 0) return partPiece(twig, place, lot)
  if (twig.pieces.length === 0) return leftPiece(place, least)
  if (twig.pieces.length === 1 && twig.rest === 0) return pieceOf(twig.pieces[0]!, x, y, lot, least)
  const isRip = twig.way === RIP
  const direction = isRip ? 'rip' : 'crosscut'
  const pieces: Piece[] = []
  let at = isRip ? y : x
  for (const piece of inCuttingOrder(twig)) {
    const drawn = isRip ? pieceOf(piece, x, at, lot, least) : pieceOf(piece, at, y, lot, least)
    const isBankCutAlike = piece.kind >= 0 && drawn.kind === 'cut' && drawn.direction === direction
    pieces.push(...(isBankCutAlike ? drawn.pieces : [drawn]))
    at += isRip ? piece.width : piece.length
  }
  const rest = twig.rest - kerf
  if (rest > 0) {
    const length = twig.length - kerf
    const width = twig.width - kerf
    pieces.push(leftPiece(isRip ? placed(x, at, length, rest) : placed(at, y, rest, width), least))
  }
  return { kind: 'cut', direction, pieces, ...place }
}

/** A board, or a bank of boards cut apart in its order with a kerf between. */
function partPiece({ kind, turned }: Twig, place: Place, { kinds, kerf }: Lot): Piece {
  const { part, block } = kinds[kind]!
  if (!block) return { kind: 'part', part: part.id, rotated: turned, ...place }
  const isRip = (part.bank!.along === 'width') !== turned
  let at = ticks(isRip ? place.y : place.x)
  const pieces = block.map((board): Piece => {
    const [along, across] = turned ? [board.width, board.length] : [board.length, board.width]
    const size = { length: along, width: across }
    const where = isRip ? { x: place.x, y: fromTicks(at) } : { x: fromTicks(at), y: place.y }
    at += ticks(isRip ? across : along) + kerf
    return { kind: 'part', part: board.id, rotated: turned, ...where, ...size }
  })
  return { kind: 'cut', direction: isRip ? 'rip' : 'crosscut', pieces, ...place }
}

/** The largest first, so that equal settings follow each other; sheets that are cut alike come out in one order. */
function inCuttingOrder({ pieces, way }: Twig): Twig[] {
  const along = (twig: Twig) => (way === RIP ? twig.width : twig.length)
  const marks = new Map(pieces.map((piece) => [piece, { kind: firstKind(piece), pattern: patternOf(piece) }]))
  return [...pieces].sort((a, b) => {
    const [one, other] = [marks.get(a)!, marks.get(b)!]
    return along(b) - along(a) || one.kind - other.kind || one.pattern - other.pattern
  })
}

function firstKind(twig: Twig): number {
  return twig.kind >= 0 ? twig.kind : twig.pieces.reduce((least, piece) => Math.min(least, firstKind(piece)), Infinity)
}

function leftPiece(place: Place, least: typeof LEAST_OFFCUT): LeftPiece {
  return { kind: isKeptLeft(place, { offcutLeast: least }) ? 'offcut' : 'waste', ...place }
}

/** Whether what is left over is large enough to be kept. */
export function isKeptLeft(
  { length, width }: Place,
  { offcutLeast: least = LEAST_OFFCUT }: Pick<SheetJob, 'offcutLeast'>,
) {
  return length >= least.length && width >= least.width
}

function placed(x: number, y: number, length: number, width: number): Place {
  return { x: fromTicks(x), y: fromTicks(y), length: fromTicks(length), width: fromTicks(width) }
}

/**
 * Draws the boards of one lot; sheets that are cut alike are one with copies, in the order in which they first come. A
 * plan shares most boards with the plan before it, and those are not drawn again.
 */
export function drawerFor(lot: Lot, job: SheetJob): (boards: readonly Board[]) => SheetLayout[] {
  const drawn = remember((board: Board) => {
    const layout = layoutOf(board, lot, job)
    return { layout, key: JSON.stringify([layout.stock, layout.root]) }
  })
  return (boards) => {
    const alike = new Map<string, SheetLayout>()
    for (const { layout, key } of onHandFirst(boards, lot).map(drawn)) {
      const known = alike.get(key)
      alike.set(key, known ? { ...known, copies: known.copies + 1 } : layout)
    }
    return [...alike.values()]
  }
}
