import { derive } from '../../../engine/pipeline'
import type { Project } from '../../../engine/project/document'
import { aWall, cabinet } from '../../helpers/wall'

export const SAG = /would sag/
export const LOOSE = { fixedShelves: 0, adjustableShelves: 2, partition: null }
export const FIXED = { fixedShelves: 2, adjustableShelves: 0, partition: null }

/** Uppers, 18 mm boards of 9000 N/mm2: a loose shelf is 2 x 18 + 3 shorter than the box is wide. */
export const shelves = (width: number, interior: typeof LOOSE | typeof FIXED = LOOSE) =>
  aWall(cabinet('U1', { width, interior }))

/** N/mm2 of one lb per sq ft. */
export const PSF = 47.880259e-6

export const boardsIn = (project: Project) => derive(project).cabinets.flatMap(({ parts }) => parts)
