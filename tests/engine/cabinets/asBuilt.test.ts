import { describe, expect, it } from 'vitest'
import { boxOf } from '../../../engine/cabinets/boardBox'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import { centresOf, type HoleRow } from '../../../engine/cabinets/operation'
import { toCabinet } from '../../../engine/geometry/placement'
import { stillThere } from '../../../engine/project/asBuilt'
import type { Cabinet, Front } from '../../../engine/project/document'
import { USUAL_FIVE_PART } from '../../../engine/project/frames'
import { interferences } from '../../../engine/solids/interference'
import { aCabinet, boardIn, boardsOf, type MethodChanges, rulesWith, sizeOf } from '../../helpers/cabinets'

const GAPS = { gap: 3, endReveal: 2, topReveal: 3, bottomReveal: 1 }
const BANK: Front = {
  kind: 'rows',
  rows: [
    { size: { kind: 'fixed', height: 150 }, front: { kind: 'drawer' } },
    { size: { kind: 'share', share: 1 }, front: { kind: 'pair' } },
  ],
}

function built(cabinet: Partial<Cabinet>, changes: MethodChanges = {}) {
  return buildCabinet(aCabinet('base', cabinet), rulesWith({ fronts: GAPS, ...changes }))
}

describe('an opening as it was built', () => {
  it('is drawn from board to board, and from the middle of a gap', () => {
    const { openings } = built({ front: BANK })
    // 600 less two sides; the whole height is 720 - 2 x 18 = 684, the drawer's ends 150 + 1.5 below the front's top of 717.
    expect(openings.map(({ key, drawn }) => [key, drawn.width, drawn.height])).toEqual([
      ['1', 600 - 36, 717 - 150 - 1.5 - 18],
      ['0', 600 - 36, 720 - 18 - (717 - 150 - 1.5)],
    ])
  })

  it('gives an inset door what was measured less its gaps', () => {
    const asBuilt = { whole: { width: 565.5, height: 683 } }
    const door = boardIn(
      boardsOf(
        aCabinet('base', { front: { kind: 'door', hinge: 'left' }, asBuilt }),
        rulesWith({ fronts: GAPS, frontMount: 'inset' }),
      ),
      'door',
    )
    expect(sizeOf(door)).toBe(`${683 - 3 - 2} x ${565.5 - 2 * 2}`)
    expect(door.isMeasured).toBe(true)
  })

  it('grows an overlay front by the difference, and each door of a pair by half of it', () => {
    const front: Front = { kind: 'pair' }
    const drawn = boardIn(built({ front }).boards, 'door', 1)
    const asBuilt = { whole: { width: 564 + 3, height: 684 - 2 } }
    const { boards } = built({ front, asBuilt })
    for (const number of [1, 2]) {
      expect(sizeOf(boardIn(boards, 'door', number))).toBe(`${drawn.length - 2} x ${drawn.width + 3 / 2}`)
    }
    const [left, right] = [1, 2].map((number) => boxOf(boardIn(boards, 'door', number)))
    expect(right!.min.x - left!.max.x).toBe(3)
  })

  it('gives a box on side slides what was measured less two clearances, and the height it has then', () => {
    const asBuilt = { '0': { width: 561, height: 136.5 + 1 } }
    const { boards } = built({ front: BANK, asBuilt })
    // 561 - 2 x 12.7 = 535.6; its front stands between two sides of 12. High: 137.5 - 16 - 14.
    expect(sizeOf(boardIn(boards, 'drawerBoxFront'))).toBe(`${561 - 2 * 12.7 - 2 * 12} x ${137.5 - 16 - 14}`)
    expect(boardIn(boards, 'drawerSide').isMeasured).toBe(true)
    expect(boards.filter(({ isMeasured }) => isMeasured).map(({ role }) => role)).toEqual([
      'drawerFront',
      ...['drawerSide', 'drawerSide', 'drawerBoxFront', 'drawerBoxBack', 'drawerBottom'],
    ])
  })

  it('gives a box on slides under it what they ask for of the measured width', () => {
    const slide = { kind: 'undermount', insideDeduction: 41.3 } as const
    const asBuilt = { '0': { width: 566, height: null } }
    const { boards } = built({ front: BANK, asBuilt }, { slide })
    // Inside 566 - 41.3, which is the length of the board between its sides.
    expect(sizeOf(boardIn(boards, 'drawerBoxFront'))).toBe(`${566 - 41.3} x ${136.5 - 16 - 14}`)
  })

  it('gives roll-outs behind doors the width of their opening', () => {
    const cabinet = {
      front: { kind: 'door', hinge: 'left' },
      interior: { fixedShelves: 0, adjustableShelves: 0, partition: null, rollOuts: { count: 1, height: 120 } },
    } as const
    const length = (asBuilt: Cabinet['asBuilt'] = {}) =>
      boardIn(built({ ...cabinet, asBuilt }).boards, 'drawerBoxFront').length
    expect(length({ whole: { width: 564 - 2.5, height: 690 } })).toBe(length() - 2.5)
  })

  it('leaves the carcass as it stands, with all that is bored in it', () => {
    const asBuilt = { '0': { width: 567, height: 138 }, '1': { width: 560, height: 520 } }
    const carcass = (cabinet: Partial<Cabinet>) =>
      built(cabinet).boards.filter(({ isMeasured, role }) => !isMeasured && !/^(drawer|door)/.test(role))
    expect(carcass({ front: BANK, asBuilt })).toEqual(carcass({ front: BANK }))
  })

  it('keeps a hinge at its height, and its cup at its distance from the edge that the door hangs by', () => {
    for (const hinge of ['left', 'right'] as const) {
      const cups = (asBuilt: Cabinet['asBuilt'] = {}) => {
        const door = boardIn(built({ front: { kind: 'door', hinge }, asBuilt }).boards, 'door')
        const { min, max } = boxOf(door)
        const rows = door.operations.filter(
          (one): one is HoleRow => one.kind === 'holeRow' && one.purpose === 'hingeCup',
        )
        // The length of a door runs up, its width to the right.
        return rows.map(({ x, y }) => [min.y + x, hinge === 'left' ? y : max.x - min.x - y])
      }
      expect(cups().length).toBeGreaterThan(0)
      expect(cups({ whole: { width: 570, height: 680 } })).toEqual(cups())
    }
  })

  it('makes a five-part door anew: stiles by the height, rails by the width, its panel by both', () => {
    const frontBuild = { ...USUAL_FIVE_PART, stile: 60, rail: 70, groove: 10, play: 3 }
    const front: Front = { kind: 'door', hinge: 'left' }
    // The front is 600 - 2 x 2 wide and 720 - 3 - 1 high; measured 2 narrower and 5 higher than 564 x 684.
    const { boards, problems } = built({ front, asBuilt: { whole: { width: 562, height: 689 } } }, { frontBuild })
    const [width, height] = [596 - 2, 716 + 5]
    expect(problems).toEqual([])
    expect([1, 2].map((at) => sizeOf(boardIn(boards, 'doorStile', at)))).toEqual(new Array(2).fill(`${height} x 60`))
    expect([1, 2].map((at) => sizeOf(boardIn(boards, 'doorRail', at)))).toEqual(
      new Array(2).fill(`${width - 2 * 60 + 2 * 10} x 70`),
    )
    expect(sizeOf(boardIn(boards, 'doorPanel'))).toBe(`${height - 140 + 20 - 3} x ${width - 120 + 20 - 3}`)
    expect(boards.filter(({ isMeasured }) => isMeasured).map(({ role }) => role)).toEqual([
      ...['doorStile', 'doorStile', 'doorRail', 'doorRail', 'doorPanel'],
    ])
    expect(interferences(boards)).toEqual([])
  })

  it('keeps the hinges of a five-part door at their height, and its cups at their distance from its edge', () => {
    const cups = (hinge: 'left' | 'right' | 'top', asBuilt: Cabinet['asBuilt'] = {}) => {
      const { boards } = built({ front: { kind: 'door', hinge }, asBuilt }, { frontBuild: USUAL_FIVE_PART })
      return boards.flatMap((board) => {
        const { min, max } = boxOf(board)
        const own = board.operations.filter(
          (one): one is HoleRow => one.kind === 'holeRow' && one.purpose === 'hingeCup',
        )
        return own.flatMap((row) =>
          centresOf(row).map((centre) => {
            const at = toCabinet(board.placement, centre.x, centre.y, 0)
            // From the edge that it hangs by, and along that from the carcass.
            return hinge === 'top' ? [max.y - at.y, at.x] : [hinge === 'left' ? at.x - min.x : max.x - at.x, at.y]
          }),
        )
      })
    }
    for (const hinge of ['left', 'right', 'top'] as const) {
      expect(cups(hinge).length).toBeGreaterThan(1)
      expect(cups(hinge, { whole: { width: 570, height: 680 } })).toEqual(cups(hinge))
    }
  })

  it('keeps a mid rail that a door is drawn with, though it was measured lower than doors with one', () => {
    // Drawn 720 - 3 - 1 = 716 high.
    const frontBuild = { ...USUAL_FIVE_PART, midRailFrom: 710 }
    const front: Front = { kind: 'door', hinge: 'left' }
    const { boards } = built({ front, asBuilt: { whole: { width: null, height: 684 - 10 } } }, { frontBuild })
    expect(boards.filter(({ role }) => role === 'doorRail').length).toBe(3)
    const panels = boards.filter(({ role }) => role === 'doorPanel')
    expect(panels.map(({ length }) => length)).toEqual(new Array(2).fill((706 - 3 * 57) / 2 + 20 - 3))
  })

  it('can be as it is drawn: what is made to it is the same, and marked as measured', () => {
    const asBuilt = { '0': { width: 564, height: 136.5 }, '1': { width: 564, height: 547.5 } }
    const [drawn, made] = [built({ front: BANK }), built({ front: BANK, asBuilt })]
    expect(made.openings.map(({ isMade, off }) => [isMade, off.width, off.height])).toEqual([
      [true, 0, 0],
      [true, 0, 0],
    ])
    expect(made.boards.map(({ isMeasured: _, ...board }) => board)).toEqual(drawn.boards)
    const marked = made.boards.filter(({ isMeasured }) => isMeasured).map(({ role }) => role)
    expect(new Set(marked)).toEqual(
      new Set(['door', 'drawerFront', 'drawerSide', 'drawerBoxFront', 'drawerBoxBack', 'drawerBottom']),
    )
    expect(made.problems).toEqual(drawn.problems)
  })

  it('is drawn again where it is farther off than 20 mm, and that is told', () => {
    const { boards, problems } = built({
      front: { kind: 'door', hinge: 'left' },
      asBuilt: { whole: { width: 564 + 20.5, height: null } },
    })
    expect(boards.some(({ isMeasured }) => isMeasured)).toBe(false)
    expect(problems.map(({ message }) => message)).toEqual([
      'B1: an opening was measured 584.5 mm wide and is drawn 564 mm; 20 mm is the most between them. It is made as drawn.',
    ])
  })

  it('is forgotten with the opening, and kept while what it is in is divided alike', () => {
    const asBuilt = { '0': { width: 567, height: 138 }, '1': { width: 560, height: null } }
    const three: Front = { kind: 'rows', rows: [...BANK.rows, BANK.rows[1]!] }
    const open: Front = { kind: 'rows', rows: [{ ...BANK.rows[0]!, front: { kind: 'open' } }, BANK.rows[1]!] }
    const drawers: Front = { kind: 'rows', rows: [BANK.rows[0]!, { ...BANK.rows[1]!, front: { kind: 'drawer' } }] }
    expect(stillThere(asBuilt, BANK, three)).toEqual({})
    expect(stillThere(asBuilt, BANK, open)).toEqual({ '1': asBuilt['1'] })
    expect(stillThere(asBuilt, BANK, drawers)).toBe(asBuilt)
    expect(stillThere(asBuilt, BANK, { kind: 'pair' })).toEqual({})
  })
})
