import { type Interval, intervalsOverlap } from '../geometry/interval'
import type { InteriorBay } from '../project/interior'
import { type Mm, settle } from '../units/length'
import { baysBetween, type Stretch } from './bay'
import type { Explode } from './board'
import { backFront, type Carcass, clearWidth, insideFront, levelTop } from './carcass'
import { type Piece, room } from './piece'
import type { Report } from './report'
import { sharedOut } from './sharing'

/** The clear widths of the bays, in mm: fixed ones keep theirs, the others share what those and the partitions leave. */
export function bayWidths(bays: readonly InteriorBay[], carcass: Carcass, report: Report): Mm[] {
  const sizes = bays.map(({ size }) => (size.kind === 'fixed' ? { fixed: size.width } : size))
  const words = { one: 'bay', long: 'wide inside', between: 'partitions', of: 'carcass' }
  return sharedOut(sizes, clearWidth(carcass), carcass.thickness, words, report)
}

/** The left faces of the partitions between bays, in the cabinet's frame; null, and told, where a bay would be no room. */
export function bayPosts(bays: readonly InteriorBay[], carcass: Carcass, report: Report): Mm[] | null {
  const widths = bayWidths(bays, carcass, report)
  const posts = widths.slice(0, -1).map((_, at) => {
    const before = widths.slice(0, at + 1).reduce((sum, width) => sum + width, 0)
    return settle(carcass.thickness + before + at * carcass.thickness)
  })
  const clear = baysBetween(posts, carcass).map(({ from, to }) => settle(to - from))
  const least = Math.min(...clear)
  if (least > 0) return posts
  const [left, right] = clear
  const text =
    clear.length === 2
      ? `the partition would leave ${report.left(left!)} to its left and ${report.left(right!)} to its right; it is left out.`
      : `a bay would be ${report.left(least)} wide between its partitions; they are left out.`
  report.stop(text, report.room(least))
  return null
}

/**
 * In a dado shop a partition sinks into the boards below and above it, as the corners do; otherwise it is butted. A line
 * that is housed from both faces gives each a quarter at most, as a partition does to shelves.
 */
export function partitionSink({ method, jointDepth, thickness }: Carcass, isMet = false): Mm {
  if (method.cornerJoint.kind !== 'dado') return 0
  return isMet ? Math.min(jointDepth, settle(thickness / 4)) : jointDepth
}

/**
 * A partition stands in its stretch, from the bottom or the drawer line below to the top or the drawer line above. It
 * is notched round nailers and round stretchers on edge, and is butted at an end where it has such a notch, so that the
 * notch stays open.
 */
export function partitionOf(
  left: Mm,
  explode: Explode,
  stretch: Stretch,
  obstacles: readonly Piece[],
  carcass: Carcass,
): Piece {
  const { y, rear } = partitionStand(stretch, obstacles, carcass)
  return {
    role: 'partition',
    number: 1,
    material: carcass.method.carcassMaterial,
    box: room([left, left + carcass.thickness], [y.from, y.to], [rear, insideFront(carcass)]),
    lie: 'uprightLookingRight',
    banded: { edges: 'front', thickness: carcass.method.banding.carcass },
    explode,
  }
}

/** Whether a stretch reaches past one end of another or up to it, and not past both. */
function isAtAnEnd(it: Interval, of: Interval): boolean {
  return intervalsOverlap(it, of) && !(of.from < it.from && it.to < of.to)
}

function partitionStand(stretch: Stretch, obstacles: readonly Piece[], carcass: Carcass): { y: Interval; rear: Mm } {
  const has = (role: Piece['role']) => obstacles.some((piece) => piece.role === role)
  const isNotchedBelow = !stretch.hasLineBelow && has('bottomNailer')
  const isNotchedAbove = !stretch.hasLineAbove && (has('topNailer') || carcass.top === 'onEdge')
  const head = stretch.hasLineAbove ? stretch.to : levelTop(carcass)
  const y = {
    from: settle(stretch.from - (isNotchedBelow ? 0 : partitionSink(carcass, stretch.isMetBelow))),
    to: settle(head + (isNotchedAbove ? 0 : partitionSink(carcass, stretch.isMetAbove))),
  }
  // What reaches past a drawer line cannot be notched in from an end: the partition stands before it.
  const inTheWay = obstacles.filter(({ role, box }) => {
    if (role === 'middleNailer') return isAtAnEnd({ from: box.min.y, to: box.max.y }, y)
    const hasLine = role === 'bottomNailer' ? stretch.hasLineBelow : stretch.hasLineAbove
    return hasLine && intervalsOverlap(y, { from: box.min.y, to: box.max.y })
  })
  return { y, rear: Math.max(backFront(carcass), ...inTheWay.map(({ box }) => box.max.z)) }
}
