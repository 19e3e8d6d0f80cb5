import { type Interval, intervalsOverlap } from '../geometry/interval'
import { type Mm, settle } from '../units/length'
import type { Stretch } from './bay'
import type { Explode } from './board'
import { backFront, type Carcass, clearWidth, insideFront, levelTop } from './carcass'
import { type Piece, room } from './piece'

/** How wide the room to the left of the partition is: its share of what the partition leaves of the clear width. */
export function leftBayWidth(at: number, carcass: Carcass): Mm {
  return settle((clearWidth(carcass) - carcass.thickness) * at)
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
    const hasLine = role === 'bottomNailer' ? stretch.hasLineBelow : stretch.hasLineAbove
    return hasLine && intervalsOverlap(y, { from: box.min.y, to: box.max.y })
  })
  return { y, rear: Math.max(backFront(carcass), ...inTheWay.map(({ box }) => box.max.z)) }
}
