import type { PartId } from '../basics/id'
import type { CutRow } from '../cutlist/row'
import type { CutPiece, PartPiece, Piece } from '../sheets/layout'
import type { PieceAtHand } from './atHand'
import { usableOf } from './cutAway'
import { leftOver, redrawnOn, without } from './redrawn'
import type { BreakdownInput } from './steps'
import { partsIn } from './task'
import { walksOf } from './walks'

/** What lies there, with what is still to be cut of it: on the piece as it lies, parts called by their ids. */
export interface Lying {
  readonly piece: PieceAtHand
  readonly root: Piece
  readonly parts: readonly PartId[]
  /** Whether all that was planned of it stays. */
  readonly isAsDrawn: boolean
}

export function lyingOn(
  pieces: readonly PieceAtHand[],
  input: BreakdownInput,
  isGone: (drawn: readonly Drawn[]) => ReadonlySet<string>,
): Lying[] {
  const dealt = dealtOn(input)
  const { job } = input
  const drawn = pieces.map((piece) => ({ piece, whole: redrawnOn(placeOf(piece, input), dealt(piece), job.kerf) }))
  const gone = isGone(drawn.flatMap(({ piece, whole }) => partsIn(whole).map((on) => ({ piece, on }))))
  return drawn.map(({ piece, whole }) => {
    const root = without(whole, (part) => gone.has(part), job)
    const parts = partsIn(root).map(({ part }) => part as PartId)
    return { piece, root, parts, isAsDrawn: root === whole }
  })
}

/** A part on a piece, as the layout has it. */
interface Drawn {
  readonly piece: PieceAtHand
  readonly on: PartPiece
}

/**
 * The parts of layouts that do not stay: on a piece that is given up, not asked for at that size any more, or of a bank
 * of which others are missing.
 */
export function isGone(
  { banked }: { readonly banked: readonly CutRow[] },
  rowOf: ReadonlyMap<string, CutRow>,
  givenUp: ReadonlySet<PieceAtHand>,
): (drawn: readonly Drawn[]) => Set<string> {
  return (drawn) => {
    const isOut = ({ piece, on }: Drawn) => givenUp.has(piece) || !isSameSize(on, rowOf.get(on.part))
    const gone = new Set(drawn.filter(isOut).map(({ on }) => on.part))
    const lying = new Set(drawn.map(({ on }) => on.part).filter((part) => !gone.has(part)))
    for (const id of new Set(banked.map(({ bank }) => bank!.id))) {
      const boards = banked.filter(({ bank }) => bank!.id === id).flatMap(({ parts }) => parts)
      if (boards.some((board) => !lying.has(board))) for (const board of boards) gone.add(board)
    }
    return gone
  }
}

/** Parts that are larger now than the piece which they were to be cut from. */
export function outgrownOn(
  pieces: readonly PieceAtHand[],
  input: BreakdownInput,
  rowOf: ReadonlyMap<PartId, CutRow>,
): PartId[] {
  const dealt = dealtOn(input)
  return pieces.flatMap((piece) => {
    const { length, width } = usableOf(piece.place, piece.rough)
    return partsIn(dealt(piece)).flatMap(({ part, rotated }) => {
      const row = rowOf.get(part as PartId)
      if (!row) return []
      const [along, across] = rotated ? [row.width, row.length] : [row.length, row.width]
      return along > length || across > width ? [part as PartId] : []
    })
  })
}

function isSameSize({ length, width, rotated }: PartPiece, row: CutRow | undefined): boolean {
  if (!row) return false
  return rotated ? row.length === width && row.width === length : row.length === length && row.width === width
}

/** What is drawn on a piece, with the parts that its places were dealt; nothing where it is free. */
function dealtOn(input: BreakdownInput): (piece: PieceAtHand) => Piece {
  const walks = new Map(walksOf(input, 'rip').map((walk) => [walk.sheet, walk]))
  return ({ sheet, future, place, rough }) => {
    const walk = walks.get(sheet)
    if (!walk || !future) return leftOver({ x: 0, y: 0, ...usableOf(place, rough) }, input.job)
    const named = (drawn: Piece): Piece => {
      if (drawn.kind === 'part') return { ...drawn, part: walk.dealt(drawn).part ?? '' }
      return drawn.kind === 'cut' ? ({ ...drawn, pieces: drawn.pieces.map(named) } satisfies CutPiece) : drawn
    }
    return named(future.drawn)
  }
}

/** Of a sheet inside its trim, and of a piece by itself. */
function placeOf({ isWhole, place, rough, stock }: PieceAtHand, { job }: BreakdownInput) {
  const trim = isWhole ? job.stock.find(({ id }) => id === stock)?.trim : undefined
  return { x: trim?.length ?? 0, y: trim?.width ?? 0, ...usableOf(place, rough) }
}
