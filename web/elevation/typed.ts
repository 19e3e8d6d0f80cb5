import {
  type Cabinet,
  fitOf,
  footprintOf,
  type Mm,
  type Project,
  rightEdge,
  type Side,
  settle,
  type Wall,
} from '../../engine/index'
import { besideOutcome, FILLER_WIDTH } from '../input/beside'
import { NO_OUTCOME, type Outcome } from '../input/hand'
import { movedBy } from '../input/move'
import { reshaped } from '../input/stretch'
import type { LimitedField } from '../ui/LengthField'
import type { Dimension } from './chains'

/** Which limits a measured length has. */
export function fieldOf({ measures }: Dimension): LimitedField {
  switch (measures.kind) {
    case 'width':
      return 'width'
    case 'height':
      return 'height'
    case 'wallLength':
    case 'wallHeight':
      return measures.kind
    case 'filler':
      return FILLER_WIDTH
    case 'gap':
      return 'left'
    case 'bottom':
    case 'nothing':
      return 'bottom'
  }
}

/** What a length typed over a dimension comes to. */
export function typedOver(project: Project, wall: Wall, dimension: Dimension, length: Mm): Outcome {
  const { measures, from } = dimension
  switch (measures.kind) {
    case 'nothing':
      return NO_OUTCOME
    case 'width': {
      const cabinet = project.cabinets[measures.id]
      return cabinet ? reshaped(project, cabinet, { ...cabinet, width: length }) : NO_OUTCOME
    }
    case 'filler':
      return fillerOutcome(project, project.cabinets[measures.id], measures.side, length)
    case 'gap': {
      const { before, after } = measures
      if (after)
        return movedBy(
          project,
          [after],
          settle(from + length - footprintOf(project.cabinets[after]!, project).left),
          0,
          true,
        )
      const last = before && project.cabinets[before]
      if (!last) return NO_OUTCOME
      return movedBy(project, [last.id], settle(wall.length - length - rightEdge(footprintOf(last, project))), 0, true)
    }
    case 'height':
      return shapedAlike(project, measures.ids, (cabinet) => ({ ...cabinet, height: length }))
    case 'bottom':
      return shapedAlike(project, measures.ids, (cabinet) => ({ ...cabinet, bottom: settle(from + length) }))
    case 'wallLength':
    case 'wallHeight': {
      const field = measures.kind === 'wallLength' ? 'length' : 'height'
      const edit = { kind: 'editWall', id: wall.id, change: { [field]: length } } as const
      return { edit, guides: [], about: [], words: { fits: true, text: `${wall.name} changed` } }
    }
  }
}

function fillerOutcome(project: Project, cabinet: Cabinet | undefined, side: Side, width: Mm): Outcome {
  const beside = cabinet?.beside[side]
  if (!cabinet || beside?.kind !== 'filler') return NO_OUTCOME
  return besideOutcome(project, [cabinet], side, { ...beside, width })
}

function shapedAlike(project: Project, ids: readonly Cabinet['id'][], change: (cabinet: Cabinet) => Cabinet): Outcome {
  const proposed = ids.flatMap((id) => (project.cabinets[id] ? [change(project.cabinets[id])] : []))
  const fit = fitOf(project, proposed)
  const shapes = proposed.map(({ id, bottom, height }) => ({ id, bottom, height }))
  const words = { fits: fit.fits, text: fit.fits ? fit.says : fit.why }
  return { edit: { kind: 'shapeCabinets', shapes }, guides: [], about: ids, words }
}
