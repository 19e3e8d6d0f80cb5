import { type CabinetId, freeId } from '../basics/id'
import type { Rect } from '../geometry/rect'
import {
  type Cabinet,
  type CabinetKind,
  type Front,
  NOTHING_BESIDE,
  type Project,
  type Wall,
} from '../project/document'
import { freeNumber } from '../project/mark'
import { firstWall } from '../site/wall'
import { inch, type Mm, settle } from '../units/length'
import { freeStretches } from './neighbours'

/** A gap narrower than this is left for a filler (common practice, no source). */
const NARROWEST: Mm = 150

/**
 * A new cabinet of the usual size for its kind with its left side at a place; at null, in the first free place, narrowed
 * to it when it is a little small. Null when there is no free place.
 */
export function newCabinetAt(project: Project, kind: CabinetKind, left: Mm | null, width?: Mm): Cabinet | null {
  const wall = firstWall(project)
  if (!wall) return null
  const usual = project.newCabinets[kind]
  const wanted = width ?? usual.width
  const place = left === null ? firstPlace(project, wall, kind, wanted) : { left, width: wanted }
  if (!place) return null
  return {
    id: freeId<CabinetId>('k', project.cabinets),
    kind,
    number: freeNumber(project, kind),
    wall: wall.id,
    left: settle(place.left),
    bottom: usual.bottom,
    width: settle(place.width),
    height: usual.height,
    depth: usual.depth,
    front: usualFront(place.width),
    interior: { fixedShelves: 0, adjustableShelves: kind === 'tall' ? 4 : kind === 'upper' ? 2 : 1, partition: null },
    method: null,
    overrides: {},
    isGrainRunning: false,
    pins: {},
    beside: NOTHING_BESIDE,
    cutout: null,
  }
}

/** The free places that a cabinet of a kind and width could be put in: both ends of each stretch that is long enough. */
export function placesFor(project: Project, kind: CabinetKind, width: Mm): Rect[] {
  const wall = firstWall(project)
  if (!wall) return []
  const { bottom, height } = project.newCabinets[kind]
  return freeStretches(project, wall, kind).flatMap(({ from, to }): Rect[] => {
    const room = settle(to - from)
    if (room < Math.min(width, NARROWEST)) return []
    if (room < 2 * width) return [{ left: from, bottom, width: Math.min(width, room), height }]
    return [from, settle(to - width)].map((left) => ({ left, bottom, width, height }))
  })
}

function firstPlace(project: Project, wall: Wall, kind: CabinetKind, width: Mm): { left: Mm; width: Mm } | null {
  const stretches = freeStretches(project, wall, kind)
  const roomy = stretches.find(({ from, to }) => to - from >= width)
  if (roomy) return { left: roomy.from, width }
  const narrow = stretches.find(({ from, to }) => to - from >= NARROWEST)
  return narrow ? { left: narrow.from, width: settle(narrow.to - narrow.from) } : null
}

/** One door up to 24 in wide and a pair above. Source: 98905.com, stock widths. */
function usualFront(width: Mm): Front {
  return width > inch(24) ? { kind: 'pair' } : { kind: 'door', hinge: 'left' }
}
