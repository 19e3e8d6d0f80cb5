import type { MaterialId } from '../basics/id'
import { MATERIALS, METHOD, PRACTICE } from '../basics/source'
import type { Cabinet } from '../project/document'
import { frameFor } from '../project/frames'
import type { BuildMethod, FaceFrame, JointDepth } from '../project/method'
import { type Mm, settle } from '../units/length'
import { hasDrawerBoxes } from './boxes'
import { areFrontsInset, type Rules } from './build'
import { tenonIn } from './frameTenon'
import { areNailersLetIn, hasNailersBehind } from './nailersBehind'
import type { Report } from './report'

/**
 * The measures of a carcass that its boards are worked out from. x from its left, y from the floor line of its box,
 * z from the wall. A face frame stands past it and before it: the cabinet is as wide and as deep as its frame.
 */
export interface Carcass {
  readonly width: Mm
  readonly height: Mm
  readonly depth: Mm
  readonly method: BuildMethod
  readonly thickness: Mm
  readonly backThickness: Mm
  readonly frontThickness: Mm
  /** Of the panels of five-part fronts; 0 where there are none. */
  readonly panelThickness: Mm
  readonly drawerThickness: Mm
  readonly drawerBottomThickness: Mm
  /** How far a bottom, a full top or an end of a side sinks into the board it meets; 0 for a butt joint. */
  readonly jointDepth: Mm
  /** How far the back sinks into the boards around it; 0 where it does not. */
  readonly backDepth: Mm
  /** The underside of the bottom. */
  readonly floorHeight: Mm
  /** Whether the sides run past the bottom to the floor, with a notch for the kick. */
  readonly isNotched: boolean
  /** Whether its kick is a board of the run before it. */
  readonly isKickLong: boolean
  readonly bottom: 'between' | 'under'
  readonly top: 'full' | 'flat' | 'onEdge'
  readonly hasBackStretcher: boolean
  /** Of the board that lies on the carcass; 0 where there is none. */
  readonly lidThickness: Mm
  /** Of a full top. */
  readonly topOver: boolean
  /** Of a stretcher: across a flat one, up one on its edge; 0 with a full top. */
  readonly stretcherWidth: Mm
  readonly isInset: boolean
  /** The face frame before it; null where its own edges are seen. */
  readonly frame: Frame | null
}

/** A face frame as far as it is the same whatever it stands before. */
export interface Frame {
  readonly rules: FaceFrame
  readonly thickness: Mm
  /** How far its rails and mullions sink into what they meet; 0 where they are butted. */
  readonly tenon: Mm
}

const KINDS_THAT_STAND = ['base', 'tall']

/** The carcass of a cabinet, or null when there is nothing to work from; what is wrong is told to the report. */
export function carcassOf(cabinet: Cabinet, { method, materials, kick }: Rules, report: Report): Carcass | null {
  const thicknessOf = (material: MaterialId, what: string) => thicknessIn(materials, material, what, report)
  const thickness = thicknessOf(method.carcassMaterial, 'carcass')
  const backThickness = method.back.kind === 'none' ? 0 : thicknessOf(method.backMaterial, 'back')
  const frontThickness = cabinet.front.kind === 'open' ? 0 : thicknessOf(method.frontMaterial, 'fronts')
  const hasPanels = method.frontBuild.kind === 'fivePart' && cabinet.front.kind !== 'open'
  const panelThickness = hasPanels ? thicknessOf(method.panelMaterial, 'panels') : 0
  const hasDrawers = hasDrawerBoxes(cabinet)
  const drawerThickness = hasDrawers ? thicknessOf(method.drawerMaterial, 'drawer boxes') : 0
  const drawerBottomThickness = hasDrawers ? thicknessOf(method.drawerBottomMaterial, 'drawer bottoms') : 0
  const baseTop = cabinet.kind === 'base' ? method.baseTop : ({ kind: 'full' } as const)
  const lidThickness = baseTop.kind === 'lid' ? thicknessOf(method.frontMaterial, 'lid') : 0
  const frameThickness = method.faceFrame ? thicknessOf(method.frameMaterial, 'face frame') : 0
  const areSizesGood = sizesAreGood(cabinet, report)
  if (thickness === null || backThickness === null || frontThickness === null) return null
  if (drawerThickness === null || drawerBottomThickness === null || lidThickness === null) return null
  if (!areSizesGood || frameThickness === null || panelThickness === null) return null
  const faceFrame = frameFor(cabinet, method)
  const width = settle(cabinet.width - (faceFrame ? faceFrame.pastLeft + faceFrame.pastRight : 0))
  const depth = settle(cabinet.depth - frameThickness)
  if (faceFrame && !areStilesOnSides(faceFrame, report)) return null
  if (!isLeftBehindFrame({ width, depth }, report)) return null
  const stands = KINDS_THAT_STAND.includes(cabinet.kind)
  const isNotched = stands && method.floor.kind === 'notched'
  return {
    width,
    height: settle(cabinet.height),
    depth,
    method,
    thickness,
    backThickness,
    frontThickness,
    panelThickness,
    drawerThickness,
    drawerBottomThickness,
    jointDepth: cornerJointDepth(method, thickness, report),
    backDepth: backJointDepth(method, thickness, report),
    floorHeight: stands && method.floor.kind !== 'none' ? Math.max(0, settle(method.floor.height)) : 0,
    isNotched,
    isKickLong: kick === 'inLengths',
    // Sides that stand on the floor cannot stand on the bottom, so a notched carcass has its bottom between them.
    bottom: isNotched ? 'between' : method.bottom,
    top: baseTop.kind === 'full' ? 'full' : baseTop.kind === 'stretchersFlat' ? 'flat' : 'onEdge',
    hasBackStretcher: baseTop.kind !== 'full' && baseTop.kind !== 'frontRail',
    lidThickness,
    topOver: baseTop.kind === 'full' && method.top === 'over',
    stretcherWidth: baseTop.kind === 'full' ? 0 : settle(baseTop.width),
    isInset: areFrontsInset(method),
    frame: faceFrame && {
      rules: faceFrame,
      thickness: frameThickness,
      tenon: tenonIn(faceFrame, report),
    },
  }
}

function thicknessIn(materials: Rules['materials'], id: MaterialId, what: string, report: Report): Mm | null {
  const material = materials[id]
  if (!material) {
    report.stop(`the material of its ${what} is not in the list of materials.`, {
      is: 'no material',
      limit: 'one of the list',
      source: MATERIALS,
    })
    return null
  }
  if (Number.isFinite(material.thickness) && material.thickness > 0) return settle(material.thickness)
  report.stop(
    `${material.name} is ${report.say(material.thickness)} thick; a board must be more than ${report.say(0)}.`,
    { is: material.thickness, limit: `over ${report.say(0)}`, source: MATERIALS },
  )
  return null
}

function sizesAreGood(cabinet: Cabinet, report: Report): boolean {
  const measures = ['width', 'height', 'depth'] as const
  const wrong = measures.filter((measure) => !(Number.isFinite(cabinet[measure]) && settle(cabinet[measure]) > 0))
  for (const measure of wrong) {
    report.stop(`its ${measure} is ${report.say(cabinet[measure])}; it must be more than ${report.say(0)}.`, {
      is: cabinet[measure],
      limit: `over ${report.say(0)}`,
    })
  }
  for (const measure of measures) {
    if (cabinet[measure] > MOST[measure] && Number.isFinite(cabinet[measure])) {
      report.stop(
        `its ${measure} is ${report.say(cabinet[measure])}; ${report.say(MOST[measure])} is the most that is built.`,
        { is: cabinet[measure], limit: MOST[measure], source: PRACTICE },
      )
    }
  }
  return wrong.length === 0
}

/** A stile that stands past its side by its whole width has nothing left to be fixed to. */
function areStilesOnSides({ pastLeft, pastRight, stile }: FaceFrame, report: Report): boolean {
  const sides = [
    { name: 'left', past: pastLeft },
    { name: 'right', past: pastRight },
  ]
  const loose = sides.filter(({ past }) => !(past < stile))
  for (const { name, past } of loose) {
    report.stop(
      `its face frame would stand ${report.say(past)} past the ${name} side; its stile is ${report.say(stile)} wide and must lie on the side, so it must be less.`,
      { is: past, limit: stile, source: METHOD },
    )
  }
  return loose.length === 0
}

function isLeftBehindFrame(left: { readonly width: Mm; readonly depth: Mm }, report: Report): boolean {
  for (const measure of ['width', 'depth'] as const) {
    if (left[measure] > 0) continue
    report.stop(
      `behind its face frame the ${measure} of the carcass would be ${report.left(left[measure])}; it must be more than ${report.say(0)}.`,
      report.room(left[measure]),
    )
    return false
  }
  return true
}

/** Nobody carries more in one box through a door. Common practice, no source. */
const MOST = { width: 6000, height: 4000, depth: 2000 } as const

/**
 * How far a horizontal sinks into a side. With a depth it is that; with a residual it is what the residual leaves of
 * the measured thickness.
 */
export function jointDepth(depth: JointDepth, sideThickness: Mm): Mm {
  return settle(depth.rule === 'depth' ? depth.depth : sideThickness - depth.residual)
}

function cornerJointDepth({ cornerJoint }: BuildMethod, thickness: Mm, report: Report): Mm {
  if (cornerJoint.kind === 'butt') return 0
  const depth = jointDepth(cornerJoint.depth, thickness)
  if (depth > 0 && depth < thickness) return depth
  report.stop(
    `the ${cornerJoint.kind} would be ${report.say(depth)} deep in ${report.say(thickness)} sides; the boards are butted instead.`,
    { is: depth, limit: thickness, source: METHOD },
  )
  return 0
}

function backJointDepth({ back }: BuildMethod, thickness: Mm, report: Report): Mm {
  if (back.kind === 'applied' || back.kind === 'none') return 0
  const depth = settle(back.depth)
  if (depth > 0 && depth < thickness) return depth
  report.stop(`the ${back.kind} for the back would be ${report.say(depth)} deep in ${report.say(thickness)} sides.`, {
    is: depth,
    limit: thickness,
    source: METHOD,
  })
  return 0
}

/**
 * The rear edge of the sides, from the wall. What lies behind the sides takes its thickness: an applied back, and
 * nailers behind the back. A back in a groove leaves its inset free, so nailers there take only what they need more.
 */
export function sideRear(carcass: Carcass): Mm {
  const { back } = carcass.method
  if (areNailersLetIn(carcass)) return 0
  const nailer = hasNailersBehind(carcass) ? carcass.thickness : 0
  if (back.kind === 'groove') return settle(Math.max(0, nailer - back.inset))
  return settle(nailer + (back.kind === 'applied' ? carcass.backThickness : 0))
}

/** The rear face of the back, from the wall. */
export function backRear(carcass: Carcass): Mm {
  const { back } = carcass.method
  if (back.kind === 'groove') {
    const inset = areNailersLetIn(carcass) ? Math.max(back.inset, carcass.thickness) : back.inset
    return settle(sideRear(carcass) + inset)
  }
  return settle(sideRear(carcass) - (back.kind === 'applied' ? carcass.backThickness : 0))
}

/** The front face of the back, from the wall: what lies inside the carcass starts here. */
export function backFront(carcass: Carcass): Mm {
  return settle(backRear(carcass) + carcass.backThickness)
}

/** What is seen from the room of a carcass without its fronts: its front edge, or the face of its face frame. */
export function outerFront({ depth, frame }: Carcass): Mm {
  return settle(depth + (frame?.thickness ?? 0))
}

/**
 * The rear of the fronts, from the wall: on the face, or so far behind it that inset fronts are flush with it. In a face
 * frame they do not reach behind the frame, so that thicker ones stand out from it.
 */
export function frontsRear(carcass: Carcass): Mm {
  const flush = settle(outerFront(carcass) - (carcass.isInset ? carcass.frontThickness : 0))
  return carcass.frame ? Math.max(carcass.depth, flush) : flush
}

/** What lies inside the carcass ends here: at its front edge, or behind inset fronts. */
export function insideFront(carcass: Carcass): Mm {
  return Math.min(carcass.depth, frontsRear(carcass))
}

/** The rear of the kick recess, from the wall: the setback, and before it the board of a run where that closes it. */
export function kickRear(carcass: Carcass): Mm {
  const { floor } = carcass.method
  const setback = floor.kind === 'none' ? 0 : floor.setback
  return settle(carcass.depth - setback - (carcass.isKickLong ? carcass.thickness : 0))
}

/** Between the sides. */
export function clearWidth(carcass: Carcass): Mm {
  return settle(carcass.width - 2 * carcass.thickness)
}

/** The upper face of the bottom. */
export function clearBottom(carcass: Carcass): Mm {
  return settle(carcass.floorHeight + carcass.thickness)
}

/** The underside of the top or of the stretchers: the upper end of every opening. */
export function clearTop(carcass: Carcass): Mm {
  return settle(carcass.height - (carcass.top === 'onEdge' ? carcass.stretcherWidth : carcass.thickness))
}

/** The underside of what lies flat on top, or the very top where the stretchers stand on edge. */
export function levelTop(carcass: Carcass): Mm {
  return carcass.top === 'onEdge' ? carcass.height : settle(carcass.height - carcass.thickness)
}
