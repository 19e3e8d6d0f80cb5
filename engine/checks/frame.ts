import { counted } from '../basics/counted'
import { boxOf } from '../cabinets/boardBox'
import { LEAST_WOOD } from '../cabinets/hinge'
import { leavesOf } from '../cabinets/leaf'
import { settle } from '../units/length'
import { withRole } from './boards'
import { about, type Checked, type Finding, GEOMETRY, PRACTICE } from './finding'
import { sayIn } from './say'

/** What a face frame and five-part doors ask to be minded. */
export function frameFindings(checked: Checked): Finding[] {
  return [...cupFinding(checked), ...panelFinding(checked), ...packingFinding(checked), ...lipFinding(checked)]
}

/** A cup that reaches the groove of its stile, or leaves too little wood before it. */
function cupFinding(checked: Checked): Finding[] {
  const { hinge, frontBuild } = checked.rules.method
  if (frontBuild.kind === 'slab') return []
  const hung = leavesOf(checked.parts, checked.fronts).filter(({ boards }) => boards.length > 1)
  const reach = settle(hinge.cupFromEdge + hinge.cupDiameter + LEAST_WOOD)
  const narrow = hung.filter(({ hung: { width } }) => settle(width - frontBuild.groove) < reach)
  const [worst] = narrow
  if (!worst) return []
  const say = sayIn(checked.display)
  const room = settle(worst.hung.width - frontBuild.groove)
  const message =
    `the cups of ${counted(narrow.length, 'door')} reach ${say.length(reach - LEAST_WOOD)} into a stile or rail whose groove begins at ${say.length(room)}; ` +
    `${say.length(LEAST_WOOD)} of wood must be between them. Make the stiles wider, or the groove shallower.`
  return [
    about(checked, { weight: 'mind', message, measure: say.length(room), limit: say.length(reach), source: PRACTICE }),
  ]
}

/** A panel that shrinks out of its grooves. */
function panelFinding(checked: Checked): Finding[] {
  const { frontBuild } = checked.rules.method
  if (frontBuild.kind === 'slab') return []
  const loose = leavesOf(checked.parts, checked.fronts).flatMap(({ rect, boards }) => {
    const panel = boards.find(({ role }) => role === 'doorPanel')
    const play = panel ? settle(rect.width - 2 * frontBuild.stile + 2 * frontBuild.groove - panel.width) : 0
    return play >= frontBuild.groove ? [play] : []
  })
  if (loose.length === 0) return []
  const say = sayIn(checked.display)
  const worst = Math.max(...loose)
  const message = `the panels of ${counted(loose.length, 'door')} have ${say.length(worst)} of play in grooves that are ${say.length(frontBuild.groove)} deep, and could slip out at one side. Make the grooves deeper, or the doors narrower.`
  return [
    about(checked, {
      ...{ weight: 'mind', message, measure: say.length(worst), limit: say.length(frontBuild.groove) },
      source: 'Wood Handbook FPL-GTR-190, table 13-5: dW = W x C x dMC',
    }),
  ]
}

/** A slide that stands off the side behind a stile is screwed to a packing piece as thick as that. */
function packingFinding(checked: Checked): Finding[] {
  const { slide, faceFrame } = checked.rules.method
  if (!faceFrame) return []
  const uprights = withRole(checked.parts, 'leftSide', 'rightSide', 'partition').map(boxOf)
  const reach = slide.kind === 'side' ? slide.clearance : slide.insideDeduction / 2
  const packings = withRole(checked.parts, 'drawerSide').flatMap((side) => {
    const { min, max } = boxOf(side)
    const isLeft = side.number % 2 === 1
    const beside = uprights.filter((box) => box.min.y < max.y && min.y < box.max.y)
    const gaps = beside.map((box) => (isLeft ? min.x - box.max.x : box.min.x - max.x)).filter((gap) => gap >= 0)
    const packing = settle(Math.min(...gaps) - reach)
    return packing > 1 ? [packing] : []
  })
  if (packings.length === 0) return []
  const say = sayIn(checked.display)
  const thickest = Math.max(...packings)
  const message = `a packing of up to ${say.length(thickest)} is needed beside ${counted(packings.length, 'slide')}, or rear brackets: the opening of the face frame is narrower than the carcass. Nothing is bored for them in it.`
  return [about(checked, { weight: 'know', message, measure: say.length(thickest), limit: 'none', source: GEOMETRY })]
}

/** A bottom rail that stands higher above the floor of the carcass than is chosen, where it has nothing to reach down to. */
function lipFinding({ parts, rules, display, ...one }: Checked): Finding[] {
  const { faceFrame } = rules.method
  const rail = withRole(parts, 'bottomRail')[0]
  const bottom = withRole(parts, 'bottom')[0]
  if (!faceFrame || !rail || !bottom) return []
  const lip = settle(boxOf(rail).max.y - boxOf(bottom).max.y)
  if (lip <= faceFrame.proud) return []
  const say = sayIn(display)
  const message = `the bottom rail of its face frame stands ${say.length(lip)} above the floor of the carcass: ${say.length(faceFrame.proud)} is chosen, and nothing is under the carcass for it to reach down to. A narrower bottom rail is flush.`
  const told = { message, measure: say.length(lip), limit: say.length(faceFrame.proud), source: GEOMETRY }
  return [about(one, { weight: 'know', ...told })]
}
