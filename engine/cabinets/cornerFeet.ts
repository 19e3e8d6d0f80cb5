import type { Mm } from '../units/length'
import { settle } from '../units/length'
import { kickRear, sideRear } from './carcass'
import type { Legs } from './cornerLegs'
import { frontLine } from './cornerLevels'
import type { Foot } from './leg'
import { placesAlong } from './spacing'

/**
 * The legs that a corner cabinet stands on, seen from above with the corner at its left: along both walls, the one in the
 * corner shared; and behind the kick, of an L with one in its inside corner, of a diagonal along its line.
 *
 *      o      o      o
 *
 *      o    o        o
 *
 *      o    o
 */
export function feetInCorner(legs: Legs): { readonly rear: readonly Foot[]; readonly front: readonly Foot[] } {
  return { rear: alongWalls(legs), front: legs.kind === 'L' ? behindKicks(legs) : behindSlant(legs) }
}

function alongWalls({ own, other }: Legs): Foot[] {
  const { fromEdge, spacing } = own.method.legs
  const rear = sideRear(own)
  const at = settle(rear + fromEdge)
  const along = ({ width }: { readonly width: Mm }) => placesAlong({ from: rear, to: width }, { fromEdge, spacing })
  const [, ...across] = along(other)
  return [...along(own).map((x) => ({ x, z: at })), ...across.map((z) => ({ x: at, z }))]
}

function behindKicks({ own, other }: Legs): Foot[] {
  const { fromEdge, spacing } = own.method.legs
  const [x, z] = [settle(kickRear(other) - fromEdge), settle(kickRear(own) - fromEdge)]
  const upTo = (from: Mm, width: Mm) => placesAlong({ from, to: settle(width - fromEdge) }, { fromEdge: 0, spacing })
  const [, ...across] = upTo(z, other.width)
  return [...upTo(x, own.width).map((along) => ({ x: along, z })), ...across.map((along) => ({ x, z: along }))]
}

function behindSlant(legs: Legs): Foot[] {
  const { own, other } = legs
  const { fromEdge, spacing } = own.method.legs
  const line = frontLine(legs, settle(own.depth - kickRear(own) + fromEdge))
  const [right, far] = [settle(own.width - fromEdge), settle(other.width - fromEdge)]
  const from = { x: line.x(far), z: far }
  const [x, z] = [right - from.x, line.z(right) - from.z]
  const long = settle(Math.hypot(x, z))
  return placesAlong({ from: 0, to: long }, { fromEdge: 0, spacing }).map((at): Foot => {
    return { x: settle(from.x + (x * at) / long), z: settle(from.z + (z * at) / long) }
  })
}
