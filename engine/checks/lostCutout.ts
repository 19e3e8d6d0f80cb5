import { valuesOf } from '../basics/id'
import type { Cabinet, Project } from '../project/document'
import { markOf } from '../project/mark'
import { countertopOver } from '../project/topOver'
import { isUnderTop } from '../project/underTop'
import { about, type Finding, GEOMETRY, withRemedy } from './finding'

/** Cut-outs of cabinets that no countertop goes over any more: nothing is sawn for them. */
export function lostCutoutFindings(project: Project): Finding[] {
  return valuesOf<Cabinet>(project.cabinets).flatMap((cabinet) => {
    const { cutout, id, space } = cabinet
    if (!cutout || space || !countertopOver(cabinet, project) || isUnderTop(cabinet, project)) return []
    const mark = markOf(cabinet)
    const told = about(
      { cabinet, mark },
      {
        weight: 'mind',
        message: `its cut-out for a ${cutout.of} is sawn in no countertop, since none goes over it.`,
        measure: 'no countertop',
        limit: `one for the ${cutout.of}`,
        source: GEOMETRY,
      },
    )
    const edit = { kind: 'setCutout', ids: [id], cutout: null } as const
    return [withRemedy(told, () => ({ label: `Take the cut-out from ${mark}`, edit }))]
  })
}
