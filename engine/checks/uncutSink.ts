import { valuesOf } from '../basics/id'
import { methodOf } from '../project/builtBy'
import { usualCutout } from '../project/cutout'
import type { Cabinet, Project } from '../project/document'
import { markOf } from '../project/mark'
import { isUnderTop } from '../project/underTop'
import { about, type Finding, GEOMETRY, withRemedy } from './finding'

/**
 * Bases that are open at their top behind a rail, as those for a sink are, under a countertop that is cut out for nothing.
 * What is not cut out is no sink for the checks of landings and of the way to a dishwasher either.
 */
export function uncutSinkFindings(project: Project): Finding[] {
  return valuesOf<Cabinet>(project.cabinets).flatMap((cabinet) => {
    const { cutout, space } = cabinet
    if (cutout || space || methodOf(cabinet, project).baseTop.kind !== 'frontRail') return []
    if (!Object.hasOwn(cabinet.overrides, 'baseTop') || !isUnderTop(cabinet, project)) return []
    const message =
      'it is open at its top for a sink, and the countertop over it is cut out for none. Let a sink in at its card, under Beside it; ' +
      'how large the cut-out is says the paper of the sink.'
    const mark = markOf(cabinet)
    const told = {
      weight: 'know',
      message,
      measure: 'no cut-out',
      limit: 'one for the sink',
      source: GEOMETRY,
    } as const
    const edit = { kind: 'setCutout', ids: [cabinet.id], cutout: usualCutout('sink', cabinet) } as const
    return [withRemedy(about({ cabinet, mark }, told), () => ({ label: `Let a sink into the top over ${mark}`, edit }))]
  })
}
