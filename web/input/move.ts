import {
  type Cabinet,
  type CabinetId,
  type CabinetShape,
  fitOf,
  formatLength,
  type Guide,
  type Mm,
  markOf,
  type Project,
  pushNeighbours,
  settle,
  snapMove,
} from '../../engine/index'
import type { Desk, Hand, Held, Outcome, Spot } from './hand'
import { NO_OUTCOME } from './hand'

/**
 * Cabinets moved together by what the pointer has moved since the press. Bases and talls stay on the floor; uppers go up
 * and down too, unless one of them stands.
 */
export function moved(hand: Extract<Hand, { kind: 'moving' }>, at: Spot, held: Held, desk: Desk): Outcome {
  const { project, reach } = desk
  const grabbed = project.cabinets[hand.grabbed]
  if (!grabbed) return NO_OUTCOME
  const doAllHang = hand.ids.every((id) => project.cabinets[id]?.kind === 'upper')
  const wanted = {
    left: settle(grabbed.left + at.x - hand.from.x),
    bottom: doAllHang ? settle(grabbed.bottom + at.y - hand.from.y) : grabbed.bottom,
  }
  const others = hand.ids.filter((id) => id !== hand.grabbed)
  const place = held.isFree ? { ...wanted, guides: [] } : snapMove(project, grabbed, wanted, reach, others)
  const [dx, dy] = [place.left - grabbed.left, doAllHang ? place.bottom - grabbed.bottom : 0]
  const outcome = movedBy(project, hand.ids, dx, dy, held.isPushing)
  return { ...outcome, guides: doAllHang ? place.guides : place.guides.filter(({ axis }: Guide) => axis === 'x') }
}

/** Cabinets moved by a distance: the edit, and whether it fits. */
export function movedBy(project: Project, ids: readonly CabinetId[], dx: Mm, dy: Mm, isPushing: boolean): Outcome {
  const proposed = ids.flatMap((id): Cabinet[] => {
    const cabinet = project.cabinets[id]
    return cabinet ? [{ ...cabinet, left: settle(cabinet.left + dx), bottom: settle(cabinet.bottom + dy) }] : []
  })
  const first = proposed[0]
  if (!first) return NO_OUTCOME
  const shapes = proposed.map(({ id, left, bottom }): CabinetShape => ({ id, left, bottom }))
  const pushed = isPushing && proposed.length === 1 ? pushNeighbours(project, first) : []
  const isPushed = pushed !== null && pushed.length > 0
  const edit = { kind: 'shapeCabinets', shapes: [...shapes, ...(pushed ?? [])] } as const
  const where = whereWords(project, proposed, dx, dy)
  if (isPushed) {
    return { edit, guides: [], about: ids, words: { fits: true, text: `${where}: ${pushWords(project, pushed)}` } }
  }
  const fit = fitOf(project, proposed)
  const text = fit.fits ? `${where}: ${fit.says}` : fit.why
  return { edit, guides: [], about: ids, words: { fits: fit.fits, text } }
}

/** `B3 to 1420`, or `3 cabinets by 20`. */
function whereWords(project: Project, proposed: readonly Cabinet[], dx: Mm, dy: Mm): string {
  const show = (length: Mm) => formatLength(length, project.display)
  const [first] = proposed
  if (proposed.length > 1) {
    const by = dy === 0 ? show(dx) : `${show(dx)} along and ${show(dy)} up`
    return `${proposed.length} cabinets by ${by}`
  }
  const before = project.cabinets[first!.id]!
  const up = first!.bottom === before.bottom ? '' : `, ${show(first!.bottom)} up`
  return `${markOf(first!)} to ${show(first!.left)}${up}`
}

/** `fits, pushes B4 and B5`. */
export function pushWords(project: Project, pushed: readonly CabinetShape[]): string {
  return `fits, pushes ${pushed.map(({ id }) => markOf(project.cabinets[id]!)).join(' and ')}`
}
