import type { Board, BoardRole } from '../../engine/cabinets/board'
import type { Rules } from '../../engine/cabinets/build'
import type { Box } from '../../engine/geometry/box'
import type { Vec3 } from '../../engine/geometry/vector'
import type { Cabinet } from '../../engine/project/document'
import { boxAroundConvex, type Convex, convexOfBox, convexVolume, cutBy, type Plane } from '../../engine/solids/convex'
import { bodiesInCabinet, isSlanted } from '../../engine/solids/slant'
import { blankInCabinet } from '../../engine/solids/solid'

/** Sizes settle on a grid of 1/3200 mm: a slant through two points of it is off by less than this. */
const DUST = 0.01

const FRONTS: readonly BoardRole[] = [
  ...(['door', 'doorStile', 'doorRail', 'doorPanel', 'flap', 'falseFront', 'blindPanel', 'cornerFiller'] as const),
  ...(['drawerFront', 'drawerStile', 'drawerRail', 'drawerPanel'] as const),
]

/** What a cabinet of that method may take of the room before it: mm, out of its face. */
interface Out {
  /** Fronts over the face of a carcass or of its frame, or inset ones that are thicker than the frame they stand in. */
  readonly fronts: number
  /** What covers the faces of the fronts: as far as overlay fronts come, nothing where there are none or they are inset. */
  readonly covers: number
}

function outOf({ front }: Cabinet, { method, materials }: Rules): Out {
  const thickness = materials[method.frontMaterial]!.thickness
  const frame = method.faceFrame && materials[method.frameMaterial]!.thickness
  const isInset = method.faceFrame ? method.faceFrame.fronts.kind === 'inset' : method.frontMount === 'inset'
  if (isInset) return { fronts: frame === null ? 0 : Math.max(0, thickness - frame), covers: 0 }
  return { fronts: thickness, covers: front.kind === 'open' ? 0 : thickness }
}

/** The room of a board, in the cabinet's frame: a box, and the planes that it must not be beyond all at once. */
interface Room {
  readonly box: Box
  readonly not: readonly Plane[]
}

/** Its width, its height and its depth; in a corner as far as both legs go, less what lies before them. */
function roomOf(board: Board, cabinet: Cabinet, rules: Rules): Room {
  const { width, height, depth, corner } = cabinet
  const out = outOf(cabinet, rules)
  const within = (min: Partial<Vec3>, max: Partial<Vec3>): Box => {
    return { min: { x: 0, y: 0, z: 0, ...min }, max: { x: width, y: height, z: depth, ...max } }
  }
  const thicknessOf = (material: keyof Rules['materials']) => rules.materials[material]!.thickness
  const besideAt = (isLeft: boolean, by: number, z: number): Room => {
    return { box: isLeft ? within({ x: -by }, { x: 0, z }) : within({ x: width }, { x: width + by, z }), not: [] }
  }
  const { role } = board
  if (role === 'leftEnd' || role === 'rightEnd') {
    const end = cabinet.beside[role === 'leftEnd' ? 'left' : 'right']
    if (end.kind !== 'skin' && end.kind !== 'panel') throw new Error(`${role} beside nothing`)
    return besideAt(role === 'leftEnd', thicknessOf(end.material), depth + (end.kind === 'panel' ? out.covers : 0))
  }
  if (role === 'filler' || role === 'fillerReturn') {
    const isLeft = corner ? corner.hand === 'right' : board.number === 1
    const filler = cabinet.beside[isLeft ? 'left' : 'right']
    if (filler.kind !== 'filler') throw new Error(`${role} beside nothing`)
    // A frame it is flush with, and behind it is screwed to the side.
    const covers = role === 'filler' && !rules.method.faceFrame ? out.covers : 0
    return besideAt(isLeft, role === 'filler' ? filler.width : board.thickness, depth + covers)
  }
  if (role === 'lid' || role === 'lidStrip') {
    if (cabinet.kind !== 'base' || rules.method.baseTop.kind !== 'lid') throw new Error(`${role} on no bench box`)
    const y = height + thicknessOf(rules.method.frontMaterial)
    const over = cabinet.front.kind === 'open' ? 0 : out.fronts
    return { box: within({ y: height }, { y, z: depth + (role === 'lid' ? over : 0) }), not: [] }
  }
  const by = FRONTS.includes(role) ? out.fronts : 0
  return corner ? cornerRoom(cabinet, corner, by) : { box: within({}, { z: depth + by }), not: [] }
}

function cornerRoom({ width, height, depth }: Cabinet, corner: NonNullable<Cabinet['corner']>, by: number): Room {
  const { kind, hand, other, otherDepth } = corner
  const turned = ({ normal, at }: Plane): Plane => {
    return hand === 'left' ? { normal, at } : { normal: { ...normal, x: -normal.x }, at: at - normal.x * width }
  }
  const [along, out] = [width - otherDepth, other - depth]
  const long = Math.hypot(along, out)
  const normal = { x: out / long, y: 0, z: along / long }
  // A door across a slant goes out of its ends as well.
  const past = kind === 'L' ? { x: 0, z: 0 } : { x: by * normal.x, z: by * normal.z }
  const x = hand === 'left' ? { min: 0, max: width + past.x } : { min: -past.x, max: width }
  const box = { min: { x: x.min, y: 0, z: 0 }, max: { x: x.max, y: height, z: other + past.z } }
  // Less room: the side of each plane that its normal looks to is out.
  const face = { normal, at: normal.x * width + normal.z * depth + by }
  const legs = [
    { normal: { x: 1, y: 0, z: 0 }, at: otherDepth + by },
    { normal: { x: 0, y: 0, z: 1 }, at: depth + by },
  ]
  return { box, not: (kind === 'L' ? legs : [face]).map(turned) }
}

/** What of a board is out of the room that its cabinet and its method give it: `door 1: z 580 to 602`. */
export function outside(board: Board, cabinet: Cabinet, rules: Rules): string[] {
  const room = roomOf(board, cabinet, rules)
  const name = `${board.role} ${board.number}`
  const outOfIt = (bodies: readonly Convex[]) => bodies.flatMap((body) => pastRoom(body, room))
  // A blank that is within has nothing out of it, whatever is cut from it.
  if (!isSlanted(board) && outOfIt([convexOfBox(blankInCabinet(board))]).length === 0) return []
  return outOfIt(bodiesInCabinet(board, { x: 0, y: 0, z: 0 })).map((text) => `${name}: ${text}`)
}

function pastRoom(body: Convex, { box, not }: Room): string[] {
  const { min, max } = boxAroundConvex(body)
  const past = (['x', 'y', 'z'] as const).flatMap((axis) => {
    const [low, high] = [min[axis], max[axis]]
    return low < box.min[axis] - DUST || high > box.max[axis] + DUST ? [`${axis} ${low} to ${high}`] : []
  })
  const beyond = not.length > 0 ? volumeBeyond(body, not) : 0
  return beyond > 0 ? [...past, `${beyond} mm3 before its face`] : past
}

function volumeBeyond(body: Convex, planes: readonly Plane[]): number {
  const rest = planes.reduce<Convex>((left, { normal, at }) => {
    const back = { x: -normal.x, y: -normal.y, z: -normal.z }
    return left.length === 0 ? left : cutBy(left, { normal: back, at: -at - DUST })
  }, body)
  return convexVolume(rest)
}
