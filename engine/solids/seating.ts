import type { Board } from '../cabinets/board'
import { type EdgeSlot, isSlantedCut, type Recess } from '../cabinets/operation'
import { removedBy } from '../cabinets/removed'
import { type Box, boxAround, boxesOverlap, boxVolume } from '../geometry/box'
import { toCabinet, turned } from '../geometry/placement'
import type { Mm } from '../units/length'
import { boxesInCabinet } from './solid'

/** A recess that what sits in it does not fill, and how much stays empty, in mm3. */
export interface UnseatedJoint {
  readonly board: Board
  readonly recess: Recess | EdgeSlot
  readonly empty: number
}

/** Coordinates are sums of settled lengths: less than this is the dust of adding them. */
const DUST: Mm = 1e-6

/**
 * The recesses that stay partly empty when the boards are together. Grooves are made with play: there a board counts as
 * filling up to `groovePlay` around it. Dados and rabbets must be filled to their depth and their ends; where a groove
 * crosses a tongue in them it is judged as the groove that it is.
 */
export function unseatedJoints(boards: readonly Board[], groovePlay: Mm): UnseatedJoint[] {
  const square = boards.filter(({ placement }) => !placement.turn)
  const slants = new Map<number, Board[]>()
  for (const board of boards) {
    const { turn } = board.placement
    if (turn) slants.set(turn.sin, [...(slants.get(turn.sin) ?? []), board])
  }
  return [
    ...unseatedAmong(square, groovePlay, DUST),
    ...[...slants.values()].flatMap((slanted) => unseatedAmong(slanted.map(turnedBack), groovePlay, SLANT_DUST)),
  ]
}

/** Where boards stand slantwise, the corner of each is on the grid of lengths: half a tick off in two directions. */
const SLANT_DUST: Mm = 0.001

/** Boards that stand slantwise are let into one another alone: as they lie when all of them are square again. */
function turnedBack(board: Board): Board {
  const { turn, ...placement } = board.placement
  if (!turn) return board
  const origin = turned(placement.origin, { cos: turn.cos, sin: 0 - turn.sin })
  return { ...board, placement: { ...placement, origin } }
}

function unseatedAmong(boards: readonly Board[], groovePlay: Mm, dust: Mm): UnseatedJoint[] {
  const fillings = boards.map((board) => [...boxesInCabinet(board), ...groovesIn(board)])
  return boards.flatMap((board, at) => {
    return board.operations.flatMap((operation): UnseatedJoint[] => {
      if (operation.kind === 'holeRow' || operation.kind === 'notch' || isSlantedCut(operation)) return []
      const room = roomOf(operation, board)
      if (!room) return [{ board, recess: operation, empty: Number.POSITIVE_INFINITY }]
      const play = dust + (isMadeWithPlay(operation) ? groovePlay : 0)
      const near = grown(room, play)
      let left = [room]
      for (const [other, boxes] of fillings.entries()) {
        if (other === at) continue
        for (const box of boxes) {
          if (boxesOverlap(box, near)) left = left.flatMap((one) => lessBox(one, grown(box, play)))
        }
      }
      const empty = left.reduce((sum, box) => sum + boxVolume(box), 0)
      return left.length > 0 ? [{ board, recess: operation, empty }] : []
    })
  })
}

function isMadeWithPlay({ kind }: Recess | EdgeSlot): boolean {
  return kind === 'groove' || kind === 'edgeGroove'
}

function groovesIn(board: Board): Box[] {
  return board.operations.flatMap((operation) => {
    const room = operation.kind === 'groove' || operation.kind === 'edgeGroove' ? roomOf(operation, board) : null
    return room ? [room] : []
  })
}

/** The room of a recess in the cabinet's frame. */
export function roomOf(recess: Recess | EdgeSlot, board: Board): Box | null {
  const room = removedBy(recess, board)
  if (!room) return null
  const { min, max } = room
  return boxAround(toCabinet(board.placement, min.x, min.y, min.z), toCabinet(board.placement, max.x, max.y, max.z))
}

function grown({ min, max }: Box, by: Mm): Box {
  return {
    min: { x: min.x - by, y: min.y - by, z: min.z - by },
    max: { x: max.x + by, y: max.y + by, z: max.z + by },
  }
}

/** What is left of a box without another: up to six boxes, two on each side of it. */
function lessBox(box: Box, other: Box): Box[] {
  if (!boxesOverlap(box, other)) return [box]
  const left: Box[] = []
  let { min, max } = box
  for (const axis of ['x', 'y', 'z'] as const) {
    if (other.min[axis] > min[axis]) {
      left.push({ min, max: { ...max, [axis]: other.min[axis] } })
      min = { ...min, [axis]: other.min[axis] }
    }
    if (other.max[axis] < max[axis]) {
      left.push({ min: { ...min, [axis]: other.max[axis] }, max })
      max = { ...max, [axis]: other.max[axis] }
    }
  }
  return left
}
