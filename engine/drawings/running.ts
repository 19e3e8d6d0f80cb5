import { formatLength } from '../units/format'
import { type LengthDisplay, type Mm, settle } from '../units/length'
import type { DrawingMark, LineMark } from './drawing'

/** Each place once, in order, without the datum itself. */
export function sortedOnce(places: readonly Mm[]): Mm[] {
  return [...new Set(places)].filter((place) => place > 0).sort((a, b) => a - b)
}

export function line(layer: LineMark['layer'], from: readonly [Mm, Mm], to: readonly [Mm, Mm]): LineMark[] {
  return [{ kind: 'line', layer, from: { x: from[0], y: from[1] }, to: { x: to[0], y: to[1] } }]
}

/** Running measures under what is drawn; figures that would meet are moved apart, each with a line to its place. */
export function measuresUnder(places: readonly Mm[], low: Mm, size: Mm, display: LengthDisplay): DrawingMark[] {
  return apart(places, size * 1.15).flatMap((at, index): DrawingMark[] => {
    const place = places[index]!
    return [
      ...line('dimension', [place, low], [place, low - size * 0.6]),
      ...line('dimension', [place, low - size * 0.6], [at, low - size * 1.6]),
      {
        kind: 'text',
        layer: 'caption',
        at: { x: at, y: low - size * 3.6 },
        text: formatLength(place, display),
        size,
        isUpright: true,
      },
    ]
  })
}

/**
 * Places in order, each so much from the next: moved up where the one before is too near, but the last no farther than one
 * step, so that those before it make way.
 */
export function apart(places: readonly Mm[], least: Mm): Mm[] {
  let last = -Infinity
  const moved = places.map((place) => {
    last = Math.max(place, last + least)
    return last
  })
  const most = (places.at(-1) ?? 0) + least
  return moved.map((at, index) => settle(Math.min(at, most - (moved.length - 1 - index) * least)))
}
