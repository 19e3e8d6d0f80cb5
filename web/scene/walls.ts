import { type Project, rowsOfWalls, type Vec3, type Wall, type WallId } from '../../engine/index'
import { type Box, boxAround, boxOfBoxes, plus, shifted } from './space'

/** Between walls that stand in a row before the viewer. */
const BETWEEN_WALLS = 1200

/** Where a wall's own frame is in the scene: its left end, and how many quarters it is turned to the right from above. */
export interface WallFrame {
  readonly origin: Vec3
  readonly turns: number
}

/**
 * Every wall in the scene. Walls that meet stand at right angles, the first of them before the viewer; what meets nothing
 * stands in a row with them, in order.
 */
export function wallFrames(project: Project): ReadonlyMap<WallId, WallFrame> {
  const frames = new Map<WallId, WallFrame>()
  let left = 0
  for (const walls of rowsOfWalls(project)) {
    const drawn = inARoom(walls)
    const whole = boxOfBoxes(drawn.map(({ wall, frame }) => wallBox(wall, frame)))
    const by = { x: left - whole.min.x, y: 0, z: 0 }
    for (const { wall, frame } of drawn) frames.set(wall.id, { ...frame, origin: plus(frame.origin, by) })
    left += whole.max.x - whole.min.x + BETWEEN_WALLS
  }
  return frames
}

/** The box of a bare wall in the scene, as thin as a line. */
function wallBox({ length, height }: Wall, { origin, turns }: WallFrame): Box {
  return shifted(turnedBox(boxAround({ x: 0, y: 0, z: 0 }, { x: length, y: height, z: 0 }), turns), origin)
}

/** A way in a wall's frame, as it goes in the scene: of a wall turned once, along it is out into the room. */
export function turned({ x, y, z }: Vec3, turns: number): Vec3 {
  switch (((turns % 4) + 4) % 4) {
    case 1:
      return { x: 0 - z, y, z: x }
    case 2:
      return { x: 0 - x, y, z: 0 - z }
    case 3:
      return { x: z, y, z: 0 - x }
    default:
      return { x, y, z }
  }
}

export function turnedBox({ min, max }: Box, turns: number): Box {
  return boxAround(turned(min, turns), turned(max, turns))
}

/** Each wall begins where the one before it ends, turned a quarter more. */
function inARoom(walls: readonly Wall[]): { readonly wall: Wall; readonly frame: WallFrame }[] {
  let origin: Vec3 = { x: 0, y: 0, z: 0 }
  return walls.map((wall, turns) => {
    const frame = { origin, turns }
    origin = plus(origin, turned({ x: wall.length, y: 0, z: 0 }, turns))
    return { wall, frame }
  })
}
