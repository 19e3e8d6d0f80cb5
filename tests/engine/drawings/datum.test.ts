import { describe, expect, it } from 'vitest'
import type { Board } from '../../../engine/cabinets/board'
import { boxOf } from '../../../engine/cabinets/boardBox'
import { datumOf } from '../../../engine/drawings/datum'
import { partDrawing } from '../../../engine/drawings/part'
import { toCabinet } from '../../../engine/geometry/placement'
import { derive } from '../../../engine/pipeline'
import { fortyCabinets } from '../../../engine/samples/workshop'
import { aCabinet, boardIn, boardsOf, rulesWith } from '../../helpers/cabinets'

/** Where each name is found by who stands before the cabinet: the least or the greatest of its box along an axis. */
const WHERE = {
  left: ['x', 'min'],
  right: ['x', 'max'],
  lower: ['y', 'min'],
  upper: ['y', 'max'],
  rear: ['z', 'min'],
  front: ['z', 'max'],
} as const

/** Whether a corner of a board, given in its own frame, lies where the name says. */
function isAt(name: string, board: Board, x: number, y: number): boolean {
  const [axis, end] = WHERE[name.split(' ')[0] as keyof typeof WHERE]
  return Math.abs(toCabinet(board.placement, x, y, 0)[axis] - boxOf(board)[end][axis]) < 0.001
}

describe('the datum of every board of forty cabinets', () => {
  it('is an edge and an end that are found by their names on the board as it stands', () => {
    const { cabinets, runs } = derive(fortyCabinets())
    const all = [...cabinets, ...runs].flatMap(({ parts }) => parts).filter(({ placement }) => !placement.turn)
    const flat = all.filter(({ role, placement }) => !(/Side$/.test(role) && placement.width.endsWith('x')))
    expect(flat.length).toBeGreaterThan(500)
    const lost = flat.filter((board) => {
      const { edge, isEdgeAtZero, end } = datumOf(board)
      const across = isEdgeAtZero ? 0 : board.width
      return !isAt(end, board, 0, 0) || !(edge === 'hinge edge' || isAt(edge, board, 0, across))
    })
    expect(lost.map(({ role }) => role)).toEqual([])
  })
})

describe('the sides of a corner cabinet', () => {
  it.each(['left', 'right'] as const)('are both measured from their front edges, in a %s corner', (hand) => {
    const corner = { kind: 'L', hand, other: 900, otherDepth: 580 } as const
    const interior = { fixedShelves: 0, adjustableShelves: 1, partition: null }
    const boards = boardsOf(aCabinet('base', { width: 900, depth: 580, corner, interior }), rulesWith())
    const own = boardIn(boards, hand === 'left' ? 'rightSide' : 'leftSide')
    const other = boardIn(boards, hand === 'left' ? 'leftSide' : 'rightSide')
    expect(other.placement.width).toMatch(/x$/)
    for (const side of [own, other]) {
      expect(datumOf(side).edge).toBe('front edge')
      const { marks } = partDrawing({ part: side, display: { unit: 'mm', step: 0.1 } })
      const texts = marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []))
      // Rows of pins 37 behind the front edge.
      expect(texts).toContain('37')
    }
    // The front of the other leg is away from the wall that it stands at: greatest x in a left corner, least in a right one.
    const { isEdgeAtZero } = datumOf(other)
    const at = toCabinet(other.placement, 0, isEdgeAtZero ? 0 : other.width, 0).x
    expect(at).toBe(hand === 'left' ? boxOf(other).max.x : boxOf(other).min.x)
  })
})

describe('the sides of a drawer box', () => {
  it('are measured from the end that is named, in front at the left one and at the rear of the right one', () => {
    const boards = boardsOf(aCabinet('base', { front: { kind: 'drawer' } }), rulesWith())
    expect(datumOf(boardIn(boards, 'drawerSide', 1))).toMatchObject({ edge: 'lower edge', end: 'front end' })
    expect(datumOf(boardIn(boards, 'drawerSide', 2))).toMatchObject({ edge: 'lower edge', end: 'rear end' })
  })
})
