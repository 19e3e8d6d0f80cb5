import { describe, expect, it } from 'vitest'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import { centresOf, type HoleRow } from '../../../engine/cabinets/operation'
import { partDrawing } from '../../../engine/drawings/part'
import { USUAL_FIXINGS, USUAL_FRAME_FIXINGS } from '../../../engine/project/fixing'
import { aCabinet, boardIn, boardsOf, type MethodChanges, rulesWith } from '../../helpers/cabinets'
import { FRAME } from '../../helpers/frames'
import { bought, told } from './pockets'

describe('a face frame with pocket screws', () => {
  it('has two in the back of each end of its rails, more in a wide one', () => {
    // A rail is 600 - 2 x 40 = 520 long; of 45 they are a quarter, 11.25, from both edges; of 36 it is 9.
    const boards = boardsOf(aCabinet('base'), rulesWith({ faceFrame: FRAME }))
    expect(told(boardIn(boards, 'topRail'))).toEqual([
      '2 in inside to start from 37.32,11.25, 22.50 across',
      `2 in inside to end from ${(520 - 37.32).toFixed(2)},11.25, 22.50 across`,
    ])
    expect(told(boardIn(boards, 'bottomRail'))).toEqual([
      '2 in inside to start from 37.32,9.00, 18.00 across',
      '2 in inside to end from 482.68,9.00, 18.00 across',
    ])
    // 120 - 24 = 96 is more than 80: two steps of 48.
    const wide = boardsOf(aCabinet('base'), rulesWith({ faceFrame: { ...FRAME, topRail: 120 } }))
    expect(told(boardIn(wide, 'topRail'))[0]).toBe('3 in inside to start from 37.32,12.00, 48.00 across')
    expect(bought({ faceFrame: FRAME })).toBe(2 * (2 + 2))
  })

  it('has one in the middle where two find no room', () => {
    // Two of 9.5 with 3 before, between and after them take 28.
    const boards = boardsOf(aCabinet('base'), rulesWith({ faceFrame: { ...FRAME, topRail: 27 } }))
    expect(told(boardIn(boards, 'topRail'))[0]).toBe('1 in inside to start from 37.32,13.50, 0.00 across')
  })

  it('says so where the members are too thin for them', () => {
    // Of 16 under the head 16 x sin 15 = 4.14 are across: in 16 mm that leaves 8 - 4.14 = 3.86 over the middle of the
    // head's seat, less than 4.75 x cos 15 = 4.59. In 18 mm it is 4.86.
    const thin = (frame: number) =>
      buildCabinet(aCabinet('base'), rulesWith({ faceFrame: FRAME }, { frame, front: 10 }))
    expect(thin(18).problems).toEqual([])
    expect(thin(16).problems.map(({ message }) => message)).toEqual([
      'B1: 8 pocket screws of its face frame find no place: the members are too narrow, too short or too thin for them, or other holes are in the way. Nothing is bored for them.',
    ])
  })

  it('has none with tenons', () => {
    const boards = boardsOf(
      aCabinet('base'),
      rulesWith({ faceFrame: { ...FRAME, joint: { kind: 'tenon', length: 15 } } }),
    )
    expect(boards.flatMap(told)).toEqual([])
  })

  it('is drawn with the angle of its holes', () => {
    const rail = boardIn(boardsOf(aCabinet('base'), rulesWith({ faceFrame: FRAME })), 'topRail')
    const texts = partDrawing({ part: rail, display: { unit: 'mm', step: 0.1 } }).marks.flatMap((mark) =>
      mark.kind === 'text' ? [mark.text] : [],
    )
    expect(texts).toContain('4 × hole of 9.5 mm for pocket screws, 15° to the face, 22.6 mm deep')
  })
})

describe('a face frame that is screwed on', () => {
  const changes: MethodChanges = { faceFrame: FRAME, frameFixing: USUAL_FIXINGS.pocketScrews }

  it('is screwed from the outsides of the carcass, towards its front edges', () => {
    const boards = boardsOf(aCabinet('base'), rulesWith(changes))
    // The carcass is 580 - 20 deep; of 18 mm a hole begins 9 / tan 15 = 33.59 behind the front edge. Along 720: 620
    // between the first and the last, four steps of 155.
    expect(told(boardIn(boards, 'leftSide'))).toEqual([
      `5 in outside to high from 50.00,${(560 - 33.59).toFixed(2)}, 155.00 along`,
    ])
    expect(told(boardIn(boards, 'rightSide'))).toEqual(['5 in outside to low from 50.00,33.59, 155.00 along'])
    // 600 - 6 - 8 - 2 x 18 = 550 long: 450 in three steps of 150. The first and the last make way for the pockets of the
    // bottom rail, which reach 37.32 + 36.71 / 2 = 55.67 in from its end at 40 - 6 = 34: with 3 of wood and half the screw
    // that is 34 + 55.67 + 3 + 2 = 94.67, less the 18 of the side. At the other end the stile is at 40 - 8 = 32.
    expect(told(boardIn(boards, 'bottom'))).toEqual(
      [94.67 - 18, 200, 350, 550 - (92.67 - 18)].map(
        (x) => `1 in outside to low from ${x.toFixed(2)},33.59, 0.00 along`,
      ),
    )
    expect(bought(changes)).toBe(8 + 2 * 5 + 2 * 4)
  })
})

describe('the face frames of an L with pocket screws', () => {
  const corner = { kind: 'L', hand: 'left', other: 860, otherDepth: 580 } as const
  const base = aCabinet('base', { width: 920, depth: 600, front: { kind: 'door', hinge: 'left' }, corner })
  const FIXED: MethodChanges = { faceFrame: FRAME, frameFixing: USUAL_FIXINGS.pocketScrews }

  it('have them where a rail meets its stile, and where the rails of one are butted against those of the other', () => {
    const boards = boardsOf(base, rulesWith({ faceFrame: FRAME }))
    // The first runs on behind the second, 580 - 20 from the wall, and is screwed to its own stile alone.
    const first = 920 - 40 - (580 - 20)
    expect(told(boardIn(boards, 'topRail', 1))).toEqual([`2 in inside to start from 37.32,11.25, 22.50 across`])
    expect(boardIn(boards, 'topRail', 1).length).toBe(first)
    // The second is 860 - 40 - 600 = 220 long.
    expect(told(boardIn(boards, 'topRail', 2))).toEqual([
      `2 in inside to end from ${(220 - 37.32).toFixed(2)},11.25, 22.50 across`,
      '2 in inside to start from 37.32,11.25, 22.50 across',
    ])
    expect(bought({ faceFrame: FRAME }, base)).toBe(2 * (2 + 2 + 2))
  })

  it('have none where the rails meet with tenons in their stiles', () => {
    expect(bought({ faceFrame: { ...FRAME, joint: { kind: 'tenon', length: 15 } } }, base)).toBe(0)
  })

  it('are screwed on from the underside of the bottom and the top of the top, along both lines of their inside corner', () => {
    for (const hand of ['left', 'right'] as const) {
      const boards = boardsOf({ ...base, corner: { ...corner, hand } }, rulesWith(FIXED))
      for (const role of ['bottom', 'top'] as const) {
        const board = boardIn(boards, role)
        const [away, ...rows] = board.operations
        // Behind its frame of 20 the other leg is 560 deep and the own one 580; the frame stands 8 past the right side, 6 past the left.
        const [past, pastOther] = hand === 'left' ? [8, 6] : [6, 8]
        const [along, across] = [920 - past - 18 - 560, 860 - pastOther - 18 - 580]
        expect(away).toMatchObject({ kind: 'notch', length: along, width: across })
        const pockets = (rows as HoleRow[]).flatMap((row) => centresOf(row).map((centre) => ({ ...centre, row })))
        const [own, other] = [true, false].map((isOwn) =>
          pockets.filter(({ row }) => ['low', 'high'].includes(row.slant!.towards) === isOwn),
        ) as [typeof pockets, typeof pockets]
        // From the corner that is cut out: 9 / tan 15 = 33.59 behind either line.
        const fromEnd = ({ x }: { readonly x: number }) => (hand === 'left' ? board.length - x : x)
        const fromEdge = ({ y }: { readonly y: number }) => (role === 'bottom' ? y : board.width - y)
        expect(own.map((one) => fromEdge(one).toFixed(2))).toEqual(own.map(() => (across + 33.59).toFixed(2)))
        expect(other.map((one) => fromEnd(one).toFixed(2))).toEqual(other.map(() => (along + 33.59).toFixed(2)))
        expect(pockets.every(({ row }) => row.face === 'outside' && row.slant!.angle === 15)).toBe(true)
        // 334 or 336 less twice 50 are two steps of less than 200, 256 or 254 less twice 50 one.
        expect([own.length, other.length]).toEqual([3, 2])
        // The first makes way for a pocket in its rail.
        const places = own.map(fromEnd).sort((a, b) => a - b)
        expect(places.slice(1)).toEqual([along / 2, along - 50])
      }
    }
  })

  it('are screwed on from the outsides of both sides, towards the front edges', () => {
    for (const hand of ['left', 'right'] as const) {
      const one = { ...base, corner: { ...corner, hand } }
      const boards = boardsOf(one, rulesWith(FIXED))
      // As for a straight cabinet: 9 / tan 15 = 33.59 behind an edge, five along 720. The legs are 580 and 560 deep.
      const [left, right] = hand === 'left' ? [560, 580] : [580, 560]
      expect(told(boardIn(boards, 'leftSide')), hand).toEqual([
        `5 in outside to high from 50.00,${(left - 33.59).toFixed(2)}, 155.00 along`,
      ])
      expect(told(boardIn(boards, 'rightSide')), hand).toEqual([`5 in outside to low from 50.00,33.59, 155.00 along`])
      expect([boardIn(boards, 'leftSide').width, boardIn(boards, 'rightSide').width]).toEqual([left, right])
      expect(bought(FIXED, one)).toBe(2 * (2 + 2 + 2) + 2 * 5 + 2 * (3 + 2))
      expect(buildCabinet(one, rulesWith(FIXED)).problems).toEqual([])
    }
  })
})

describe('the face frame across a diagonal with pocket screws', () => {
  const FIXED: MethodChanges = { faceFrame: FRAME, frameFixing: USUAL_FIXINGS.pocketScrews }
  const inCorner = (hand: 'left' | 'right') =>
    aCabinet('base', {
      ...{ width: 920, depth: 600, front: { kind: 'door', hinge: 'left' } },
      corner: { kind: 'diagonal', hand, other: 900, otherDepth: 580 },
    })

  it('is screwed on from the underside of the bottom and the top of the top, square to the line that they are cut along', () => {
    for (const hand of ['left', 'right'] as const) {
      const boards = boardsOf(inCorner(hand), rulesWith(FIXED))
      for (const role of ['bottom', 'top'] as const) {
        const [clip, ...rows] = boardIn(boards, role).operations
        if (clip?.kind !== 'clip') throw new Error('its corner is cut off first')
        const { length: along, width: across } = clip
        const line = Math.hypot(along, across)
        // 424 less twice 50 in two steps of no more than 200.
        expect(Math.ceil((line - 2 * 50) / 200) + 1).toBe(3)
        expect(rows).toHaveLength(3)
        const board = boardIn(boards, role)
        const places = (rows as HoleRow[]).map(({ x, y, face, slant, depth }) => {
          expect([face, slant!.towards, depth.toFixed(2)]).toEqual([
            'outside',
            clip.end,
            (9 / Math.sin(Math.PI / 12) - 16).toFixed(2),
          ])
          // From the corner that is cut off: along / across of the way to the line.
          const [a, b] = [clip.end === 'end' ? board.length - x : x, clip.edge === 'high' ? board.width - y : y]
          expect((a * across + b * along - along * across) / line).toBeCloseTo(9 / Math.tan(Math.PI / 12), 2)
          expect(Math.tan((Math.abs(slant!.aside!) * Math.PI) / 180)).toBeCloseTo(along / across, 6)
          expect(Math.sign(slant!.aside!)).toBe(clip.edge === 'high' ? 1 : -1)
          return (a * along - b * across) / line
        })
        // One in the middle of the line, the others within it: they make way for the pockets at the ends of the rails.
        const middle = (along ** 2 - across ** 2) / 2 / line
        const [first, second, third] = places.sort((one, other) => one - other)
        expect(second).toBeCloseTo(middle, 2)
        expect(first! > middle - line / 2 + 9.5 && third! < middle + line / 2 - 9.5).toBe(true)
      }
      // Two at each end of both rails.
      expect(bought(FIXED, inCorner(hand))).toBe(2 * (2 + 2) + 2 * 3)
      expect(bought({ ...FIXED, frameFixing: USUAL_FRAME_FIXINGS.glue }, inCorner(hand))).toBe(2 * (2 + 2))
      expect(buildCabinet(inCorner(hand), rulesWith(FIXED)).problems).toEqual([])
    }
  })

  it('has them drawn as they are bored, and said to be square to that line', () => {
    const part = boardIn(boardsOf(inCorner('left'), rulesWith(FIXED)), 'bottom')
    const { marks } = partDrawing({ part, display: { unit: 'mm', step: 0.1 } })
    expect(marks.flatMap((one) => (one.kind === 'text' ? [one.text] : []))).toContain(
      '3 × hole of 9.5 mm for pocket screws, 15° to the face, 18.8 mm deep, square to the line of the corner that is cut off',
    )
    const sides = marks.flatMap((one) => (one.kind === 'line' && one.layer === 'hole' ? [one] : []))
    const lengths = sides.map(({ from, to }) => Math.hypot(to.x - from.x, to.y - from.y).toFixed(2))
    // 9.5 / sin 15 long and 9.5 wide.
    expect(lengths).toEqual([1, 2, 3].flatMap(() => ['36.71', '9.50', '36.71', '9.50']))
  })
})
