import { holesOf, type Part, type PartId, toCabinet, unit } from '../../engine/index'
import { isFront } from './merge'
import { stagesOf } from './stage'

/** The mouths of all holes of a cabinet, in its frame: one record each, the widest first, so that the narrow ones can be left out. */
export interface Discs {
  readonly centres: Float32Array
  readonly opens: Float32Array
  readonly along: Float32Array
  /** Radius, and half of what a mortise is longer than wide. */
  readonly sizes: Float32Array
  readonly away: Float32Array
  readonly stages: Float32Array
  readonly awayThen: Float32Array
  readonly stagesThen: Float32Array
  readonly parts: readonly PartId[]
}

export function discsOf(parts: readonly Part[], areFrontsHidden: boolean): Discs {
  const shown = areFrontsHidden ? parts.filter(({ role }) => !isFront(role)) : parts
  const all = shown.flatMap((part) => holesOf(part).map((hole) => ({ part, hole })))
  all.sort((a, b) => b.hole.diameter - a.hole.diameter)
  const laid = <Vector>(vector: (one: (typeof all)[number]) => Vector, numbers: (vector: Vector) => number[]) =>
    new Float32Array(all.flatMap((one) => numbers(vector(one))))
  const first = ({ part }: (typeof all)[number]) => stagesOf(part).first
  const second = ({ part }: (typeof all)[number]) => stagesOf(part).second
  return {
    centres: laid(({ part, hole }) => toCabinet(part.placement, hole.x, hole.y, hole.z), flat),
    opens: laid(({ part, hole }) => inCabinet(unit(hole.opens), part), flat),
    along: laid(({ part, hole }) => inCabinet(hole.along, part), flat),
    sizes: new Float32Array(all.flatMap(({ hole }) => [hole.diameter / 2, (hole.length - hole.diameter) / 2])),
    away: laid((one) => first(one).away, flat),
    stages: laid(first, ({ from, to }) => [from, to]),
    awayThen: laid((one) => second(one).away, flat),
    stagesThen: laid(second, ({ from, to }) => [from, to]),
    parts: all.map(({ part }) => part.id),
  }
}

type Way = ReturnType<typeof unit>

const flat = ({ x, y, z }: Way) => [x, y, z]

const NOWHERE: Way = { x: 0, y: 0, z: 0 }

/** A direction of the board's frame in the cabinet's. */
function inCabinet({ x, y, z }: Way, { placement }: Part): Way {
  return toCabinet({ ...placement, origin: NOWHERE }, x, y, z)
}

/** How many of the widest are wider than `least`. */
export function widerThan({ sizes }: Discs, least: number): number {
  let [low, high] = [0, sizes.length / 2]
  while (low < high) {
    const middle = (low + high) >> 1
    if (sizes[2 * middle]! * 2 > least) low = middle + 1
    else high = middle
  }
  return low
}
