import { type Rect, rectsOverlap, rightOf, topOf } from '../geometry/rect'
import { type Mm, settle } from '../units/length'

/**
 * The clean rectangles that are left of a piece when a damage is cut away, each edge to edge. Cut along first or across
 * first, whichever leaves the largest; the kerfs fall into the damage as far as it is wide enough. One frame, mm.
 *
 *     +-------------------+          +-----+---+---------+
 *     |       above       |          |     | a |         |
 *     +-----+///+---------+    or    |     +---+         |
 *     |  l  |///|    r    |          |  l  |///|    r    |
 *     +-----+///+---------+          |     +---+         |
 *     |       below       |          |     | b |         |
 *     +-------------------+          +-----+---+---------+
 */
export function cleanRects(piece: Rect, damage: Rect, kerf: Mm): Rect[] {
  if (!rectsOverlap(piece, damage)) return [piece]
  const rows = splitOf([piece.bottom, topOf(piece)], [damage.bottom, topOf(damage)], kerf)
  const columns = splitOf([piece.left, rightOf(piece)], [damage.left, rightOf(damage)], kerf)
  const whole = { row: [piece.bottom, topOf(piece)], column: [piece.left, rightOf(piece)] } as const
  const along = [
    ...rows.clean.map((row) => rectOf(whole.column, row)),
    ...columns.clean.map((column) => rectOf(column, rows.damaged)),
  ]
  const across = [
    ...columns.clean.map((column) => rectOf(column, whole.row)),
    ...rows.clean.map((row) => rectOf(columns.damaged, row)),
  ]
  const [a, b] = [along, across].map((rects) => rects.filter(({ width, height }) => width > 0 && height > 0))
  return largest(b!) > largest(a!) ? b! : a!
}

type Range = readonly [from: Mm, to: Mm]

interface Split {
  readonly clean: readonly Range[]
  /** What the cuts on either side leave of the damaged range. */
  readonly damaged: Range
}

function splitOf([from, to]: Range, [damageFrom, damageTo]: Range, kerf: Mm): Split {
  const hasBefore = damageFrom > from
  const afterFrom = hasBefore ? Math.max(damageTo, settle(damageFrom + kerf)) : damageTo
  const hasAfter = afterFrom < to
  const before: Range[] = hasBefore ? [[from, damageFrom]] : []
  const after: Range[] = hasAfter ? [[afterFrom, to]] : []
  const damaged: Range = [hasBefore ? settle(damageFrom + kerf) : from, hasAfter ? settle(afterFrom - kerf) : to]
  return { clean: [...before, ...after], damaged }
}

function rectOf([left, right]: Range, [bottom, top]: Range): Rect {
  return { left, bottom, width: settle(right - left), height: settle(top - bottom) }
}

function largest(rects: readonly Rect[]): number {
  return Math.max(0, ...rects.map(({ width, height }) => width * height))
}
