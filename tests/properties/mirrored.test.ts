import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Board, BoardRole } from '../../engine/cabinets/board'
import { boxOf } from '../../engine/cabinets/boardBox'
import { buildCabinet } from '../../engine/cabinets/buildCabinet'
import { type HoleRow, isSlantedCut, type Operation } from '../../engine/cabinets/operation'
import { boredBy, removedBy } from '../../engine/cabinets/removed'
import { type Box, boxAround } from '../../engine/geometry/box'
import { toCabinet } from '../../engine/geometry/placement'
import type { Cabinet } from '../../engine/project/document'
import { mirroredFront } from '../../engine/project/mirror'
import { ANY_KIND, type Made, SEED } from '../helpers/anyMade'
import { mirroredFrame } from '../helpers/frames'

/** Every width settles by itself on the grid of 1/3200 mm, so that a few ticks may lie at the other end. */
const TICKS = 0.002
/** The corner of a board that stands slantwise is settled in two directions. */
const SLANTED = 0.01

const OTHER_HAND: Partial<Record<BoardRole, BoardRole>> = {
  leftSide: 'rightSide',
  rightSide: 'leftSide',
  leftEnd: 'rightEnd',
  rightEnd: 'leftEnd',
}

function inMirror({ cabinet, rules }: Made) {
  const { corner, beside, front, interior } = cabinet
  const { partition } = interior
  const seen: Cabinet = {
    ...cabinet,
    front: mirroredFront(front),
    interior: { ...interior, partition: partition && { at: 1 - partition.at } },
    beside: { left: beside.right, right: beside.left },
    corner: corner && { ...corner, hand: corner.hand === 'left' ? 'right' : 'left' },
  }
  return { cabinet: seen, rules: { ...rules, method: mirroredFrame(rules.method) } }
}

function flipped({ min, max }: Box, width: number): Box {
  return { min: { ...min, x: width - max.x }, max: { ...max, x: width - min.x } }
}

function areAlike(a: Box, b: Box, by: number): boolean {
  const axes = ['x', 'y', 'z'] as const
  return axes.every((axis) => Math.abs(a.min[axis] - b.min[axis]) < by && Math.abs(a.max[axis] - b.max[axis]) < by)
}

/** How far a screw of a drawer front makes way, and one of its steps more. */
const MAKES_WAY = 40 + 4

/**
 * What is bored where there is no hand: a screw in the middle of a drawer front. Where its place is taken and another is as
 * near either way, it is the one at the left.
 */
function hasNoHand({ purpose, x, y }: HoleRow, { length, placement, width }: Board): boolean {
  const [at, across] = placement.length.endsWith('x') ? [x, length] : [y, width]
  const isInMiddle = Math.abs(at - across / 2) <= MAKES_WAY
  return ['frontScrew', 'frontPilot'].includes(purpose) && isInMiddle
}

/** The rooms of all that is worked on a board, by what it is, in the frame of its cabinet. */
function workOn(board: Board): { readonly what: string; readonly room: Box }[] {
  const rooms = (one: Operation): Box[] => {
    if (isSlantedCut(one)) return []
    if (one.kind === 'holeRow') return hasNoHand(one, board) ? [] : boredBy(one, board)
    const room = removedBy(one, board)
    return room ? [room] : []
  }
  return board.operations.flatMap((one) =>
    rooms(one).map(({ min, max }) => ({
      what: one.kind === 'holeRow' ? one.purpose : one.kind,
      room: boxAround(toCabinet(board.placement, min.x, min.y, min.z), toCabinet(board.placement, max.x, max.y, max.z)),
    })),
  )
}

/** What of a board is not where a mirror shows it. */
function apart(board: Board, there: readonly Board[], width: number): string[] {
  const name = `${board.role} ${board.number}`
  const by = board.placement.turn ? SLANTED : TICKS
  const own = flipped(boxOf(board), width)
  const role = OTHER_HAND[board.role] ?? board.role
  const other = there.find((one) => one.role === role && areAlike(boxOf(one), own, by))
  if (!other) return [`${name} is not there`]
  const sizes = (['length', 'width', 'thickness'] as const).filter((side) => Math.abs(other[side] - board[side]) > by)
  const { low, high, start, end } = board.banding
  const bands = ({ banding }: Board) => [banding.low + banding.high, banding.start + banding.end].join()
  const isBanded = bands(other) === [low + high, start + end].join()
  const isAway = Math.abs(other.explode.by.x + board.explode.by.x) > by
  const slanted = (one: Board) => one.operations.filter(isSlantedCut).length
  const [here, seen] = [workOn(board), workOn(other)]
  const lost = board.placement.turn
    ? []
    : here.filter(
        ({ what, room }) => !seen.some((one) => one.what === what && areAlike(one.room, flipped(room, width), by)),
      )
  return [
    ...sizes.map((side) => `${side} of ${name}`),
    ...(isBanded ? [] : [`banding of ${name}`]),
    ...(isAway ? [`way out of ${name}`] : []),
    ...(here.length === seen.length && slanted(board) === slanted(other)
      ? []
      : [`${here.length} works on ${name}, ${seen.length} seen`]),
    ...lost.map(({ what, room }) => `${what} on ${name} at ${room.min.x}, ${room.min.y}, ${room.min.z}`),
  ]
}

describe('a cabinet seen in a mirror', () => {
  it.each(ANY_KIND)(
    'is built of the boards of the other hand in the mirrored places, with the mirrored work on each: %s, 1000 in all',
    (_, any, numRuns) => {
      const property = fc.property(any, (made) => {
        const { width } = made.cabinet
        const here = buildCabinet(made.cabinet, made.rules)
        const mirror = inMirror(made)
        const there = buildCabinet(mirror.cabinet, mirror.rules)
        expect(here.boards.flatMap((board) => apart(board, there.boards, width))).toEqual([])
        expect(there.boards.length).toBe(here.boards.length)
      })
      fc.assert(property, { numRuns: numRuns / 5, seed: SEED })
    },
    120_000,
  )
})
