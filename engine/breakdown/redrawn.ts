import { isKeptLeft } from '../sheets/draw'
import type { SheetJob } from '../sheets/job'
import type { CutPiece, LeftPiece, Piece, Place } from '../sheets/layout'
import { type Mm, settle } from '../units/length'

/**
 * What is still to be cut of a piece, drawn on the piece as it lies there: what stays beside each other stays so, from the
 * clean corner on, a kerf apart.
 */
export function redrawnOn(place: Place, drawn: Piece, kerf: Mm): Piece {
  const at = movedTo(place, drawn, kerf)
  return at.kind === 'part' ? at : { ...at, ...place }
}

function movedTo({ x, y }: Pick<Place, 'x' | 'y'>, piece: Piece, kerf: Mm): Piece {
  if (piece.kind !== 'cut') return { ...piece, x, y }
  let done = 0
  const pieces = piece.pieces.map((inner) => {
    const corner = piece.direction === 'rip' ? { x, y: settle(y + done) } : { x: settle(x + done), y }
    done = settle(done + along(inner, piece.direction) + kerf)
    return movedTo(corner, inner, kerf)
  })
  return { ...piece, x, y, pieces }
}

/** A layout without some of its parts: what they leave is one piece behind the others that are cut of the same. */
export function without(piece: Piece, isGone: (part: string) => boolean, job: SheetJob): Piece {
  if (piece.kind === 'part') return isGone(piece.part) ? leftOver(piece, job) : piece
  if (piece.kind !== 'cut') return piece
  const pieces = piece.pieces.map((inner) => without(inner, isGone, job))
  if (pieces.every((inner, at) => inner === piece.pieces[at])) return piece
  if (pieces.every(isLeft)) return leftOver(piece, job)
  const isAnyFreed = pieces.some((inner, at) => isLeft(inner) && !isLeft(piece.pieces[at]!))
  return isAnyFreed ? gathered({ ...piece, pieces }, job) : { ...piece, pieces }
}

function gathered(cut: CutPiece, job: SheetJob): Piece {
  const { direction, pieces } = cut
  const used = pieces.filter((piece) => !isLeft(piece))
  const moved = movedTo(cut, { ...cut, pieces: used }, job.kerf) as CutPiece
  const taken = used.reduce((sum, piece) => settle(sum + along(piece, direction) + job.kerf), 0)
  const rest = settle(along(cut, direction) - taken)
  if (rest <= 0) return moved
  const place =
    direction === 'rip'
      ? { x: cut.x, y: settle(cut.y + taken), length: cut.length, width: rest }
      : { x: settle(cut.x + taken), y: cut.y, length: rest, width: cut.width }
  return { ...moved, pieces: [...moved.pieces, leftOver(place, job)] }
}

export function leftOver({ x, y, length, width }: Place, job: SheetJob): LeftPiece {
  const place = { x, y, length, width }
  return { kind: isKeptLeft(place, job) ? 'offcut' : 'waste', ...place }
}

export function isLeft(piece: Piece): piece is LeftPiece {
  return piece.kind === 'offcut' || piece.kind === 'waste'
}

/** How far a piece reaches in the direction in which pieces lie side by side, in mm. */
export function along(piece: Place, direction: CutPiece['direction']): Mm {
  return direction === 'rip' ? piece.width : piece.length
}
