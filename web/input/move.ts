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
  const fit = isPushed ? null : fitOf(project, proposed)
  if (fit?.fits === false) return { edit, guides: [], about: ids, words: { fits: false, text: fit.why } }
  const show = (length: Mm) => formatLength(length, project.display)
  const text = isPushed
    ? `${markOf(first)} at ${show(first.left)}: ${pushWords(project, pushed)}`
    : proposed.length === 1 && fit
      ? fit.says
      : `${proposed.length} cabinets by ${show(dx)}${dy === 0 ? '' : ` along and ${show(dy)} up`}: all fit`
  return { edit, guides: [], about: ids, words: { fits: true, text } }
}

/** `fits, pushes B4 and B5`. */
export function pushWords(project: Project, pushed: readonly CabinetShape[]): string {
  return `fits, pushes ${pushed.map(({ id }) => markOf(project.cabinets[id]!)).join(' and ')}`
}
