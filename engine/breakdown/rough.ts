import type { CutPiece, Piece } from '../sheets/layout'
import { type Mm, settle } from '../units/length'
import { runsIn } from './grainRuns'
import type { Task } from './task'

/**
 * Where a piece can be crosscut roughly before it is cut as drawn, so that neither half is longer than `most`: from its
 * rough start, in mm; null where no such cut leaves every part whole. Each new end keeps `allowance` to be squared.
 *
 *     drawn   +--------+--------+------+-----------+
 *             |   A    |   B    |  C   |   left    |
 *             +--------+--------+------+-----------+
 *     rough   +--------+--------+--    --+------+------+
 *             |   A    |   B    | :    : |  C   |      |
 *             +--------+--------+--    --+------+------+
 */
export function roughCutOf(task: Task, most: Mm, kerf: Mm, allowance: Mm): Mm | null {
  const { drawn, rough } = task
  const length = settle(rough.start + drawn.length + rough.end)
  const strips = drawn.direction === 'rip' ? drawn.pieces : [drawn]
  const ranges = strips.map((strip) => rangesOf(itemsOf(strip, task, kerf), { length, rough, kerf, allowance }))
  const fits = (at: Mm) => ranges.every((all) => all.some(({ from, to }) => at >= from && at <= to))
  const longest = (at: Mm) => Math.max(at, settle(length - at - kerf))
  const middle = settle((length - kerf) / 2)
  const places = [middle, ...ranges.flatMap((all) => all.flatMap(({ from, to }) => [from, to]))]
  const good = places.filter((at) => at > 0 && settle(at + kerf) < length && longest(at) <= most && fits(at))
  return good.length === 0 ? null : good.reduce((a, b) => (longest(b) < longest(a) ? b : a))
}

interface Stick {
  readonly length: Mm
  readonly rough: Task['rough']
  readonly kerf: Mm
  readonly allowance: Mm
}

/**
 * Lengths that lie one after another in a strip and must stay whole, a run of grain as one; what is left over may be cut
 * anywhere.
 */
function itemsOf(piece: Piece, { runOf }: Task, kerf: Mm): Mm[] {
  if (piece.kind !== 'cut' || piece.direction !== 'crosscut') {
    return piece.kind === 'cut' || piece.kind === 'part' ? [piece.length] : []
  }
  const used = usedIn(piece)
  const runs = runsIn(used, runOf)
  const items: Mm[] = []
  for (const [at, { length }] of used.entries()) {
    const run = runs[at]
    if (run && run === runs[at - 1]) items.push(items.pop()! + kerf + length)
    else items.push(length)
  }
  return items
}

function usedIn({ pieces }: CutPiece): Piece[] {
  return pieces.filter(({ kind }) => kind === 'cut' || kind === 'part')
}

/** For every number of items before the cut, from where to where the cut may be. */
function rangesOf(items: readonly Mm[], { length, rough, kerf, allowance }: Stick): { from: Mm; to: Mm }[] {
  const extent = (some: readonly Mm[]) => some.reduce((sum, item) => sum + item, 0) + kerf * (some.length - 1)
  return items
    .concat(0)
    .map((_, count) => {
      const [before, behind] = [items.slice(0, count), items.slice(count)]
      const from = before.length === 0 ? 0 : rough.start + extent(before) + allowance
      const to = behind.length === 0 ? length : length - rough.end - extent(behind) - allowance - kerf
      return { from: settle(from), to: settle(to) }
    })
    .filter(({ from, to }) => from <= to)
}
