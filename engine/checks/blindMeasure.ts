import type { Front, Project } from '../project/document'
import { childrenOf, type FrontPath, frontAt, withFrontAt } from '../project/frontTree'
import { markOf } from '../project/mark'
import { find } from '../project/references'
import { sharedBy } from '../runs/lane'
import { type Body, faceFrom, reachingIn } from '../runs/reach'
import type { Standing } from './beside'
import { about, type Finding, PRACTICE } from './finding'
import { sayIn } from './say'

/** Blind corners that were typed for another depth than that of the run that stands before them. */
export function blindMeasureFindings(project: Project, standing: readonly Standing[]): Finding[] {
  return standing.flatMap((one) => {
    const { cabinet, mark } = one
    const path = blindPath(cabinet.front)
    const blind = path && frontAt(cabinet.front, path)
    if (!path || blind?.kind !== 'blind') return []
    const before = runBefore(one, project)
    if (!before || before.cabinet.depth === blind.neighbour) return []
    const say = sayIn(project.display)
    const [measure, limit] = say.apart(blind.neighbour, before.cabinet.depth)
    const other = markOf(before.cabinet)
    const message = `its blind part is made for a run ${measure} deep; ${other}, which stands before it, is ${limit} deep.`
    const front = withFrontAt(cabinet.front, path, { ...blind, neighbour: before.cabinet.depth })
    const remedy = {
      label: `Take the depth of ${other} for the blind part of ${mark}`,
      edit: { kind: 'setFront', ids: [cabinet.id], front },
    } as const
    return [{ ...about(one, { weight: 'mind', message, measure, limit, source: PRACTICE }), remedy }]
  })
}

/** Where in a front the blind part is. */
function blindPath(front: Front): FrontPath | null {
  if (front.kind === 'blind') return []
  for (const [at, child] of childrenOf(front).entries()) {
    const path = blindPath(child.front)
    if (path) return [at, ...path]
  }
  return null
}

/** The nearest of what stands before a cabinet, at its height, from the wall that its own meets. */
function runBefore({ cabinet }: Standing, project: Project): Body | null {
  const wall = find(project.walls, cabinet.wall)
  if (!wall) return null
  const face = faceFrom(cabinet, project)
  const before = reachingIn(project, wall).filter((body) => {
    const { x, y } = sharedBy(cabinet, body)
    return !body.isLeg && body.rear >= face && x > 0 && y > 0
  })
  return before.length === 0 ? null : before.reduce((a, b) => (b.rear < a.rear ? b : a))
}
