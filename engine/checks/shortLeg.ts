import { rulesOf } from '../cabinets/build'
import { lackingOfLegs } from '../cabinets/cornerCarcass'
import type { Cabinet, Project } from '../project/document'
import type { CabinetShape, Edit } from '../project/edit'
import { markOf } from '../project/mark'
import { find } from '../project/references'
import { fitOf } from '../runs/fit'
import { pushNeighbours } from '../runs/push'
import { settle } from '../units/length'
import { type Finding, type Remedy, withRemedy } from './finding'
import { sayIn } from './say'

/** Behind a slanting face frame a leg gets deeper as the other is made longer, so what is lacking is asked again. */
const ROUNDS = 4

/** The findings of a cabinet, a corner's leg that is too short among them with its way out: as long as it must be, where there is room. */
export function withLongerLegs(findings: readonly Finding[], cabinet: Cabinet, project: Project): readonly Finding[] {
  if (!cabinet.corner) return findings
  return findings.map((finding) =>
    finding.way === 'ownLeg' || finding.way === 'otherLeg'
      ? withRemedy(finding, () => longerLegs(cabinet, project))
      : finding,
  )
}

/** Both legs as long as they must be: the own one pushes what stands beside it along, the other has only what is free. */
function longerLegs(cabinet: Cabinet, project: Project): Remedy | null {
  const longer = grown(cabinet, project)
  if (!longer?.corner) return null
  const pushed = pushNeighbours(project, longer)
  if (pushed === null) return null
  const others = pushed.flatMap(({ id, left }) => {
    const other = find(project.cabinets, id)
    return other && left !== undefined ? [{ ...other, left }] : []
  })
  if (!fitOf(project, [longer, ...others]).fits) return null
  const { id, left, width, corner } = longer
  const isWider = width !== cabinet.width
  const isLonger = corner.other !== cabinet.corner?.other
  const shapes: CabinetShape[] = [...(isWider ? [{ id, left, width }] : []), ...pushed]
  const edits: Edit[] = [
    ...(isLonger ? [{ kind: 'setCorner', ids: [id], corner } as const] : []),
    ...(shapes.length > 0 ? [{ kind: 'shapeCabinets', shapes } as const] : []),
  ]
  const say = sayIn(project.display)
  const label = isWider
    ? `Widen ${markOf(cabinet)} to ${say.length(width)}${isLonger ? ` and its other leg to ${say.length(corner.other)}` : ''}`
    : `Make the other leg of ${markOf(cabinet)} ${say.length(corner.other)} long`
  return edits.length === 1 ? { label, edit: edits[0]! } : { label, edit: { kind: 'several', edits } }
}

/** The cabinet with both legs long enough, still in its corner; null where no length is. */
function grown(cabinet: Cabinet, project: Project): Cabinet | null {
  const rules = rulesOf(cabinet, project)
  let longer = cabinet
  for (let round = 0; round < ROUNDS; round++) {
    const lacking = lackingOfLegs(longer, rules)
    if (!lacking || !longer.corner) return null
    if (lacking.own === 0 && lacking.other === 0) return longer
    const { left, width, corner } = longer
    longer = {
      ...longer,
      left: corner.hand === 'left' ? left : settle(left - lacking.own),
      width: settle(width + lacking.own),
      corner: { ...corner, other: settle(corner.other + lacking.other) },
    }
  }
  return null
}
