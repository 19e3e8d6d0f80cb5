import type { Rect } from '../geometry/rect'
import { rightOf, topOf } from '../geometry/rect'
import { forward, WAYS } from './apart'
import type { FrontFace } from './board'
import { type Carcass, insideFront } from './carcass'
import { type Cell, pairRects } from './openings'
import { type Piece, room } from './piece'
import type { Report } from './report'

/** A wider door is usually hung as a pair. Common practice; stock widths: one door to 24 in (source: 98905.com). */
const WIDEST_DOOR = 610

/** The doors and drawer fronts as they are seen, from the bottom up and from left to right. */
export function facesOf(cells: readonly Cell[], carcass: Carcass): FrontFace[] {
  return cells.flatMap(({ front, rect }): FrontFace[] => {
    if (front.kind === 'open') return []
    if (front.kind === 'drawer') return [{ kind: 'drawer', hinge: null, rect }]
    if (front.kind === 'door') return [{ kind: 'door', hinge: front.hinge, rect }]
    const [left, right] = pairRects(rect, carcass.method.fronts.gap)
    return [
      { kind: 'door', hinge: 'left', rect: left },
      { kind: 'door', hinge: 'right', rect: right },
    ]
  })
}

/** The boards of the fronts: doors with their length upright, drawer fronts with their length from left to right. */
export function frontsOf(faces: readonly FrontFace[], carcass: Carcass, report: Report): Piece[] {
  const hasDrawers = faces.some(({ kind }) => kind === 'drawer')
  const way = hasDrawers ? drawerWay(carcass) + WAYS.drawerFrontAhead : WAYS.front
  let doors = 0
  let drawers = 0
  return faces.map((face): Piece => {
    const isDoor = face.kind === 'door'
    if (isDoor && face.rect.width > WIDEST_DOOR) {
      report.mind(`a door is ${report.say(face.rect.width)} wide; ${report.say(WIDEST_DOOR)} is the most for one door.`)
    }
    return {
      role: isDoor ? 'door' : 'drawerFront',
      number: isDoor ? ++doors : ++drawers,
      material: carcass.method.frontMaterial,
      box: frontRoom(face.rect, carcass),
      lie: isDoor ? 'uprightLookingIn' : 'onEdgeLookingIn',
      banded: { edges: 'all', thickness: carcass.method.banding.fronts },
      explode: forward(way),
    }
  })
}

/** How far a drawer box comes forward to be clear of the carcass. */
export function drawerWay(carcass: Carcass): number {
  return carcass.depth + WAYS.drawerFrontAhead
}

function frontRoom(rect: Rect, carcass: Carcass) {
  const rear = insideFront(carcass)
  return room([rect.left, rightOf(rect)], [rect.bottom, topOf(rect)], [rear, rear + carcass.frontThickness])
}
