import {
  type Cabinet,
  type CabinetShape,
  checkLength,
  fitOf,
  formatLength,
  type Mm,
  markOf,
  type Project,
  pushNeighbours,
  settle,
  snapEdge,
} from '../../engine/index'
import { type Desk, type Edge, type Hand, type Held, NO_OUTCOME, type Outcome, type Spot, unfit } from './hand'
import { pushWords } from './move'

/** A cabinet stretched by one of its edges. Neighbours in the way are pushed along where there is room for them. */
export function stretched(hand: Extract<Hand, { kind: 'stretching' }>, at: Spot, held: Held, desk: Desk): Outcome {
  const { project, reach } = desk
  const cabinet = project.cabinets[hand.id]
  if (!cabinet) return NO_OUTCOME
  const isAcross = hand.edge === 'left' || hand.edge === 'right'
  const wanted = settle(edgeOf(cabinet, hand.edge) + (isAcross ? at.x - hand.from.x : at.y - hand.from.y))
  const rest = held.isFree ? { at: wanted, guides: [] } : snapEdge(project, cabinet, hand.edge, wanted, reach)
  return { ...reshaped(project, cabinet, withEdge(cabinet, hand.edge, rest.at)), guides: rest.guides }
}

/** A cabinet with another place or size: the edit, what it pushes, and whether it fits. */
export function reshaped(project: Project, before: Cabinet, proposed: Cabinet): Outcome {
  const about = [before.id]
  const own = shapeFrom(before, proposed)
  for (const field of ['width', 'height', 'depth'] as const) {
    const checked = checkLength(field, proposed[field], project.display)
    if (!checked.ok) return { ...NO_OUTCOME, about, words: unfit(markOf(before), checked.message) }
  }
  const fit = fitOf(project, proposed)
  const edit = { kind: 'shapeCabinets', shapes: [own] } as const
  if (fit.fits) return { edit, guides: [], about, words: { fits: true, text: fit.says } }
  const pushed = before.width === proposed.width ? null : pushNeighbours(project, proposed)
  if (!pushed || pushed.length === 0) return { edit, guides: [], about, words: { fits: false, text: fit.why } }
  return {
    edit: { kind: 'shapeCabinets', shapes: [own, ...pushed] },
    guides: [],
    about,
    words: {
      fits: true,
      text: `${markOf(proposed)} to ${formatLength(proposed.width, project.display)}: ${pushWords(project, pushed)}`,
    },
  }
}

function edgeOf({ left, bottom, width, height }: Cabinet, edge: Edge): Mm {
  switch (edge) {
    case 'left':
      return left
    case 'right':
      return left + width
    case 'top':
      return bottom + height
    case 'bottom':
      return bottom
  }
}

/** The cabinet with one edge somewhere else and the opposite one where it was. */
function withEdge(cabinet: Cabinet, edge: Edge, at: Mm): Cabinet {
  const { left, bottom, width, height } = cabinet
  switch (edge) {
    case 'left':
      return { ...cabinet, left: at, width: settle(left + width - at) }
    case 'right':
      return { ...cabinet, width: settle(at - left) }
    case 'top':
      return { ...cabinet, height: settle(at - bottom) }
    case 'bottom':
      return { ...cabinet, bottom: at, height: settle(bottom + height - at) }
  }
}

/** Only what is different, so that an undo step is named after what was done. */
function shapeFrom(before: Cabinet, after: Cabinet): CabinetShape {
  const fields = (['left', 'bottom', 'width', 'height', 'depth'] as const).filter(
    (field) => before[field] !== after[field],
  )
  return { id: before.id, ...Object.fromEntries(fields.map((field) => [field, after[field]])) }
}
