import type { Rect } from '../geometry/rect'
import { rightOf, topOf } from '../geometry/rect'
import { forward, WAYS } from './apart'
import { blindFaces } from './blind'
import type { BoardRole, FrontFace, GrainRun } from './board'
import { type Carcass, frontsRear } from './carcass'
import { type Cell, pairRects } from './openings'
import { type Piece, room } from './piece'
import type { Report } from './report'

/** A wider door is usually hung as a pair. Common practice; stock widths: one door to 24 in (source: 98905.com). */
const WIDEST_DOOR = 610

/** The doors, drawer fronts and false fronts as they are seen, from the bottom up and from left to right. */
export function facesOf(cells: readonly Cell[], carcass: Carcass): FrontFace[] {
  return cells.flatMap(({ front, rect }): FrontFace[] => {
    if (front.kind === 'open' || front.kind === 'appliance') return []
    if (front.kind === 'drawer' || front.kind === 'pullOut') return [{ kind: 'drawer', hinge: null, rect }]
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

/**
 * The boards of the fronts: doors and flaps with their length upright, drawer fronts and false fronts with their length
 * from left to right unless the grain of a door runs on over them.
 */
export function frontsOf(
  faces: readonly FrontFace[],
  { isGrainRunning, hasBoxes }: { readonly isGrainRunning: boolean; readonly hasBoxes: boolean },
  carcass: Carcass,
  report: Report,
): Piece[] {
  const way = hasBoxes ? drawerWay(carcass) + WAYS.drawerFrontAhead : WAYS.front
  const runs = isGrainRunning ? runsOf(faces) : []
  const counts = new Map<BoardRole, number>()
  return faces.map((face, at): Piece => {
    const isUpright = face.kind === 'door' || face.kind === 'blindPanel' || face.kind === 'cornerFiller'
    const role = roleOf(face)
    const number = (counts.get(role) ?? 0) + 1
    counts.set(role, number)
    if (role === 'door' && face.rect.width > WIDEST_DOOR) {
      report.mind(`a door is ${report.say(face.rect.width)} wide; ${report.say(WIDEST_DOOR)} is the most for one door.`)
    }
    return {
      role,
      number,
      material: carcass.method.frontMaterial,
      box: frontRoom(face.rect, carcass),
      lie: isUpright || runs[at]?.along === 'length' ? 'uprightLookingIn' : 'onEdgeLookingIn',
      banded: { edges: 'all', thickness: carcass.method.banding.fronts },
      ...(runs[at] ? { run: runs[at] } : {}),
      explode: forward(way),
    }
  })
}

function roleOf({ kind, hinge }: FrontFace): BoardRole {
  if (kind === 'door') return hinge === 'top' ? 'flap' : 'door'
  return kind === 'drawer' ? 'drawerFront' : kind
}

/**
 * Which fronts follow one another, as their own axes run: drawer fronts edge to edge from the bottom up, doors of a pair
 * edge to edge from the left; a door and the doors and drawer fronts of its width above and below it end to end.
 */
export function runsOf(faces: readonly FrontFace[]): (GrainRun | null)[] {
  const runs: { along: GrainRun['along']; at: number[] }[] = []
  for (const [at, face] of faces.entries()) {
    const last = runs.at(-1)
    const along = at > 0 ? followsAlong(faces[at - 1]!, face, faces) : null
    if (last && along && (last.at.length === 1 || last.along === along)) {
      last.along = along
      last.at.push(at)
    } else runs.push({ along: 'width', at: [at] })
  }
  const places: (GrainRun | null)[] = faces.map(() => null)
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
