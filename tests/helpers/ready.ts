import { withOverrides } from '../../engine/cabinets/build'
import { buildCabinet } from '../../engine/cabinets/buildCabinet'
import { newProject } from '../../engine/project/defaults'
import type { Project } from '../../engine/project/document'
import type { NewKind } from '../../engine/project/readyKinds'
import { newCabinetAt } from '../../engine/runs/place'

/** A ready kind built by the first method of a new project, or by another of its methods. */
export function readyBuild(
  name: NewKind,
  project: Project = newProject('mm'),
  left = 0,
  method = project.methods[project.method]!,
) {
  const cabinet = newCabinetAt(project, name, left)!
  return buildCabinet(cabinet, { method: withOverrides(method, cabinet), materials: project.materials })
}
