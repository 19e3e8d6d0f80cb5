import { METHOD, PRACTICE } from '../basics/source'
import type { Rect } from '../geometry/rect'
import { rightOf, topOf } from '../geometry/rect'
import { widestDoor } from '../project/doors'
import { forward, WAYS } from './apart'
import { blindFaces } from './blind'
import type { BoardRole, Explode, FrontFace, GrainRun } from './board'
import { type Carcass, frontsRear } from './carcass'
import { fivePartsOf, hasMidRail, whyNotFivePart } from './fivePart'
import { frontsApart } from './membersApart'
import { type Cell, pairRects } from './openings'
import { type Piece, room } from './piece'
import type { Report } from './report'

/** A wider door is usually hung as a pair. */
const WIDEST_SOURCE = `${PRACTICE}; 98905.com, stock widths: one door to 24 in`

/** The doors, drawer fronts and false fronts as they are seen, from the bottom up and from left to right. */
export function facesOf(cells: readonly Cell[], carcass: Carcass): FrontFace[] {
  return cells.flatMap(({ front, rect }): FrontFace[] => {
    if (front.kind === 'open' || front.kind === 'appliance') return []
    if (front.kind === 'drawer') return [{ kind: 'drawer', hinge: null, rect }]
    if (front.kind === 'pullOut') return [{ kind: 'drawer', hinge: null, isPullOut: true, rect }]
    if (front.kind === 'falseFront') return [{ kind: 'falseFront', hinge: null, rect }]
    if (front.kind === 'blind') return blindFaces(rect, front.filler, carcass)
    if (front.kind === 'door') return [{ kind: 'door', hinge: front.hinge, rect }]
    const [left, right] = pairRects(rect, carcass.method.fronts.gap)
    return [
      { kind: 'door', hinge: 'left', rect: left },
      { kind: 'door', hinge: 'right', rect: right },
    ]
  })
}

interface FrontsHow {
  readonly isGrainRunning: boolean
  readonly hasBoxes: boolean
  /** The same faces as they are drawn, which say of what parts they are; themselves where it is left out. */
  readonly drawn?: readonly FrontFace[]
}

/**
 * The boards of the fronts: doors and flaps with their length upright, drawer fronts and false fronts with their length
 * from left to right unless the grain of a door runs on over them.
 */
export function frontsOf(
  faces: readonly FrontFace[],
  { isGrainRunning, hasBoxes, drawn = faces }: FrontsHow,
  carcass: Carcass,
  report: Report,
): Piece[] {
  const explode = forward(hasBoxes ? drawerWay(carcass) + WAYS.drawerFrontAhead : WAYS.front)
  const areFivePart = drawn.map((face) => isFivePart(face, carcass, report))
  const runs = isGrainRunning ? runsOf(faces.map((face, at) => (areFivePart[at] ? null : face))) : []
  const counts = new Map<string, number>()
  const next = (what: string) => {
    const number = (counts.get(what) ?? 0) + 1
    counts.set(what, number)
    return number
  }
  // Boxes are counted alone, so that a drawer front has the number of its box.
  const drawers = faces.filter(({ kind }) => kind === 'drawer').length
  const fivePartDoors = faces.filter(({ kind }, at) => kind === 'door' && areFivePart[at]).length
  const pieces = faces.flatMap((face, at): Piece[] => {
    tellWidth(face, carcass, report)
    if (!areFivePart[at]) return [slab(face, next(roleOf(face)), runs[at] ?? null, explode, carcass)]
    const of = face.kind === 'door' ? 'door' : 'drawer'
    const number =
      face.kind === 'falseFront'
        ? drawers + next('falseFront in five parts')
        : next(of === 'door' ? 'door in five parts' : 'drawerFront')
    const { frontBuild } = carcass.method
    const over =
      frontBuild.kind === 'fivePart' && hasMidRail(of, drawn[at]!.rect, frontBuild) ? next('door with a mid rail') : 0
    const numbers = { number, over: over ? { rail: 2 * fivePartDoors + over, panel: fivePartDoors + over } : null }
    const front = { of, ...numbers, rect: face.rect, rear: frontsRear(carcass) } as const
    return frontBuild.kind === 'fivePart' ? fivePartsOf(front, frontBuild, carcass, { explode }) : []
  })
  return areFivePart.some(Boolean) ? frontsApart(pieces) : pieces
}

/** One of so many doors, of one board or of five parts; mid rails and the panels over them are numbered after all others. */
export function doorOf(
  face: FrontFace,
  [number, doors]: readonly [number: number, doors: number],
  explode: Explode,
  carcass: Carcass,
  report: Report,
): Piece[] {
  tellWidth(face, carcass, report)
  const { frontBuild } = carcass.method
  if (frontBuild.kind === 'slab' || !isFivePart(face, carcass, report)) {
    return [slab(face, number, null, explode, carcass)]
  }
  const over = hasMidRail('door', face.rect, frontBuild) ? { rail: 2 * doors + number, panel: doors + number } : null
  const front = { of: 'door', number, over, rect: face.rect, rear: frontsRear(carcass) } as const
  return fivePartsOf(front, frontBuild, carcass, { explode })
}

/** Whether a front is made of five parts. One that is too small for them is made of one board. */
function isFivePart({ kind, rect }: FrontFace, carcass: Carcass, report: Report): boolean {
  const { frontBuild } = carcass.method
  if (frontBuild.kind === 'slab' || !(rect.width > 0 && rect.height > 0)) return false
  const isAsked = kind === 'door' || (frontBuild.areDrawersToo && (kind === 'drawer' || kind === 'falseFront'))
  if (!isAsked) return false
  const why = whyNotFivePart(kind === 'door' ? 'door' : 'drawer', rect, frontBuild, carcass, report.say)
  if (why)
    report.mind(`a ${FACE_NAMES[kind as keyof typeof FACE_NAMES]} is made of one board, not of five parts: ${why}.`, {
      is: 'one board',
      limit: 'five parts',
      source: METHOD,
    })
  return why === null
}

const FACE_NAMES = { door: 'door', drawer: 'drawer front', falseFront: 'false front' } as const

function tellWidth({ kind, hinge, rect }: FrontFace, { method }: Carcass, report: Report): void {
  const most = widestDoor(method.fronts)
  if (kind !== 'door' || hinge === 'top' || rect.width <= most) return
  report.mind(`a door is ${report.say(rect.width)} wide; ${report.say(most)} is the most for one door.`, {
    is: rect.width,
    limit: most,
    source: WIDEST_SOURCE,
  })
}

function slab(face: FrontFace, number: number, run: GrainRun | null, explode: Explode, carcass: Carcass): Piece {
  const isUpright = face.kind === 'door' || face.kind === 'blindPanel' || face.kind === 'cornerFiller' || face.isPullOut
  return {
    role: roleOf(face),
    number,
    material: carcass.method.frontMaterial,
    box: frontRoom(face.rect, carcass),
    lie: isUpright || run?.along === 'length' ? 'uprightLookingIn' : 'onEdgeLookingIn',
    banded: { edges: 'all', thickness: carcass.method.banding.fronts },
    ...(run ? { run } : {}),
    explode,
  }
}

function roleOf({ kind, hinge }: FrontFace): BoardRole {
  if (kind === 'door') return hinge === 'top' ? 'flap' : 'door'
  return kind === 'drawer' ? 'drawerFront' : kind
}

/**
 * Which fronts follow one another, as their own axes run: drawer fronts edge to edge from the bottom up, doors of a pair
 * edge to edge from the left; a door and the doors and drawer fronts of its width above and below it end to end. A front
 * of five parts, null here, ends a run.
 */
export function runsOf(fronts: readonly (FrontFace | null)[]): (GrainRun | null)[] {
  const faces = fronts.flatMap((face) => face ?? [])
  const runs: { along: GrainRun['along']; at: number[] }[] = []
  for (const [at, face] of fronts.entries()) {
    const before = fronts[at - 1]
    const last = runs.at(-1)
    if (!face) continue
    const along = before && last ? followsAlong(before, face, faces) : null
    if (last && along && (last.at.length === 1 || last.along === along)) {
      last.along = along
      last.at.push(at)
    } else runs.push({ along: 'width', at: [at] })
  }
  const places: (GrainRun | null)[] = fronts.map(() => null)
  let number = 0
  for (const { along, at } of runs) {
    if (at.length === 1) continue
    number++
    for (const [index, face] of at.entries()) places[face] = { number, along, place: index + 1 }
  }
  return places
}

/** How a front follows the one before it; null where the grain of one does not meet that of the other. */
function followsAlong(before: FrontFace, face: FrontFace, faces: readonly FrontFace[]): GrainRun['along'] | null {
  const [a, b] = [before.rect, face.rect]
  if (isInColumn(a, b))
    return faces.some(({ kind, rect }) => kind === 'door' && isInColumn(rect, b)) ? 'length' : 'width'
  const isBeside = a.bottom === b.bottom && a.height === b.height && b.left > a.left
  return isBeside && before.kind === 'door' && face.kind === 'door' ? 'width' : null
}

function isInColumn(a: Rect, b: Rect): boolean {
  return a.left === b.left && a.width === b.width
}

/** How far a drawer box comes forward to be clear of the carcass, and of the face frame before it. */
export function drawerWay({ depth, frame }: Carcass): number {
  return depth + WAYS.drawerFrontAhead + (frame ? WAYS.frame : 0)
}

function frontRoom(rect: Rect, carcass: Carcass) {
  const rear = frontsRear(carcass)
  return room([rect.left, rightOf(rect)], [rect.bottom, topOf(rect)], [rear, rear + carcass.frontThickness])
}
