import type { Interval } from '../geometry/interval'
import type { Mm } from '../units/length'
import { downward, STAYS, upward, WAYS } from './apart'
import { type Carcass, clearBottom, clearTop } from './carcass'
import type { Cell } from './openings'
import { partitionOf } from './partition'
import type { Piece } from './piece'

/** The short boards in parted rows. They leave towards the end of the carcass that their row is at. */
export function rowPosts(
  cells: readonly Cell[],
  boards: readonly Piece[],
  obstacles: readonly Piece[],
  carcass: Carcass,
): Piece[] {
  return cells.flatMap(({ opening, parted }) => {
    if (parted?.at !== 0) return []
    const hasLineBelow = opening.from > clearBottom(carcass)
    const hasLineAbove = opening.to < clearTop(carcass)
    const isMet = (edge: Mm) =>
      cells.some((other) => {
        return (
          other.parted?.at === 0 &&
          other.opening !== opening &&
          (other.opening.from === edge || other.opening.to === edge)
        )
      })
    const lines = { hasLineBelow, hasLineAbove, isMetBelow: isMet(opening.from), isMetAbove: isMet(opening.to) }
    const stretch = { ...besideLines(opening, boards), ...lines }
    if (!(stretch.to > stretch.from)) return []
    const apart = !hasLineAbove ? upward(WAYS.drawerLine) : !hasLineBelow ? downward(WAYS.drawerLine) : STAYS
    return parted.posts.map((post) => partitionOf(post, apart, stretch, obstacles, carcass))
  })
}

/** What boards at its edges leave of an opening. */
export function besideLines(opening: Interval, lines: readonly Piece[]): Interval {
  let { from, to } = opening
  for (const { box } of lines) {
    if (box.min.y < from && from < box.max.y) from = box.max.y
    if (box.min.y < to && to < box.max.y) to = box.min.y
  }
  return { from, to }
}
