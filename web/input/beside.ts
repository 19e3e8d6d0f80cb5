import {
  type Beside,
  type Cabinet,
  fitOf,
  formatWithUnit,
  gapsBeside,
  labelOf,
  markOf,
  type Project,
  roomMade,
  type Side,
  settle,
} from '../../engine/index'
import type { Outcome } from './hand'

/** What a filler's width and what is scribed of it may be, in mm: a wider gap is filled by a cabinet. */
export const FILLER_WIDTH = { spoken: 'The filler', least: 1, most: 600 } as const
export const SCRIBE = { spoken: 'The scribe', least: 0, most: 100 } as const

/**
 * Puts something beside cabinets, if it finds its width of the wall free. Where a single one lacks room, at the end of a wall
 * too, it moves away and pushes its neighbours along, as the way out of a finding does.
 */
export function besideOutcome(project: Project, cabinets: readonly Cabinet[], side: Side, beside: Beside): Outcome {
  const about = cabinets.map(({ id }) => id)
  const proposed = cabinets.map((cabinet) => ({ ...cabinet, beside: { ...cabinet.beside, [side]: beside } }))
  const fit = fitOf(project, proposed)
  const edit = { kind: 'setBeside', ids: about, side, beside } as const
  const [only] = proposed
  const moved = !fit.fits && only && proposed.length === 1 ? movedAway(project, only, side) : null
  if (moved && only) {
    const words = { fits: true, text: moved.says }
    const edits = [{ kind: 'shapeCabinets', shapes: moved.shapes } as const, edit]
    return { edit: { kind: 'several', edits }, guides: [], about, words, label: labelOf(project, edit) }
  }
  const words = { fits: fit.fits, text: fit.fits ? fit.says : fit.why }
  return { edit, guides: [], about, words }
}

/** A cabinet with what is to stand beside it, moved by what it lacks of room at that side. */
function movedAway(project: Project, proposed: Cabinet, side: Side) {
  const lacking = settle(-gapsBeside(project, proposed)[side].gap)
  const shapes = lacking > 0 ? roomMade(project, proposed, side, lacking) : null
  if (!shapes) return null
  const by = formatWithUnit(lacking, project.display)
  const along = shapes.slice(1).flatMap(({ id }) => (project.cabinets[id] ? [markOf(project.cabinets[id])] : []))
  const way = side === 'left' ? 'right' : 'left'
  const pushed = along.length > 0 ? `, and so ${along.length === 1 ? 'does' : 'do'} ${along.join(', ')}` : ''
  return { shapes, says: `${markOf(proposed)} moved ${by} to the ${way} for it${pushed}` }
}
