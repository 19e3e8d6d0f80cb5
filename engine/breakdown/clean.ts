import { type Rect, rectsOverlap, rightOf, topOf } from '../geometry/rect'
import { type Mm, settle } from '../units/length'

/** One cut from edge to edge that frees what is clean on one side of a damage. One frame with the piece, mm. */
export interface CleanCut {
  readonly direction: 'rip' | 'crosscut'
  readonly takes: Rect
  /** What is freed. */
  readonly clean: Rect
  /** What is left with the damage in it; without height or width where the blade takes it all. */
  readonly rest: Rect
}

/**
 * The cuts that part a damaged piece, the one that frees the largest piece first, as long as what is freed is worth
 * keeping. The kerf falls on the side of the damage.
 *
 *     +-------------------+
 *     |         1         |      1  is ripped off first,
 *     +----+--------------+      2  next,
 *     |    |       2      |      3  is crosscut from what is left beside the damage
 *     | 3  +-----+--------+
 *     |    |/////| waste  |
 *     +----+-----+--------+
 */
export function cleanCuts(
  piece: Rect,
  damages: readonly Rect[],
  kerf: Mm,
  isWorthKeeping: (clean: Rect) => boolean,
): CleanCut[] {
  const damage = damages.find((each) => rectsOverlap(piece, each))
  if (!damage) return []
  const free = waysPast(piece, damage, kerf).filter(({ clean }) => areaOf(clean) > 0 && isWorthKeeping(clean))
  if (free.length === 0) return []
  const cut = free.reduce((a, b) => (areaOf(b.clean) > areaOf(a.clean) ? b : a))
  const further = (part: Rect) => (areaOf(part) > 0 ? cleanCuts(part, damages, kerf, isWorthKeeping) : [])
  return [cut, ...further(cut.clean), ...further(cut.rest)]
}

/** What the cuts leave for use: freed, and not cut again. */
export function freedBy(cuts: readonly CleanCut[], damages: readonly Rect[]): Rect[] {
  const taken = new Set(cuts.map(({ takes }) => takes))
  const left = cuts.flatMap(({ clean, rest }) => [clean, rest]).filter((rect) => areaOf(rect) > 0)
  return left.filter((rect) => !taken.has(rect) && !damages.some((damage) => rectsOverlap(rect, damage)))
}

function waysPast(piece: Rect, damage: Rect, kerf: Mm): CleanCut[] {
  const [left, right, bottom, top] = [piece.left, settle(rightOf(piece)), piece.bottom, settle(topOf(piece))]
  const across = ([from, to]: Range): Rect => ({ left, bottom: from, width: piece.width, height: settle(to - from) })
  const along = ([from, to]: Range): Rect => ({ left: from, bottom, width: settle(to - from), height: piece.height })
  const way = (direction: CleanCut['direction'], rectOf: (range: Range) => Rect, { clean, rest }: Split): CleanCut => {
    return { direction, takes: piece, clean: rectOf(clean), rest: rectOf(rest) }
  }
  return [
    ...sidesOf([bottom, top], [damage.bottom, settle(topOf(damage))], kerf).map((split) => way('rip', across, split)),
    ...sidesOf([left, right], [damage.left, settle(rightOf(damage))], kerf).map((split) =>
      way('crosscut', along, split),
    ),
  ]
}

type Range = readonly [from: Mm, to: Mm]

interface Split {
  readonly clean: Range
  readonly rest: Range
}

function sidesOf([from, to]: Range, [damageFrom, damageTo]: Range, kerf: Mm): Split[] {
  const last = Math.min(damageFrom, to)
  // A blade that begins at the very edge takes a whole kerf.
  const first = Math.max(damageTo, settle(from + kerf))
  return [
    { clean: [from, Math.max(from, last)], rest: [Math.min(to, settle(last + kerf)), to] },
    { clean: [Math.min(first, to), to], rest: [from, settle(Math.min(first, to) - kerf)] },
  ]
}

function areaOf({ width, height }: Rect): number {
  return width > 0 && height > 0 ? width * height : 0
}
