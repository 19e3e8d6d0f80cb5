import { describe, expect, it } from 'vitest'
import type { Board } from '../../../engine/cabinets/board'
import { boxOf } from '../../../engine/cabinets/boardBox'
import { isEdgeSlot, type Operation } from '../../../engine/cabinets/operation'
import { toCabinet } from '../../../engine/geometry/placement'
import { aCabinet, boardIn, boardsOf, PLAIN, rulesWith } from '../../helpers/cabinets'

const DADO_6 = { kind: 'dado', depth: { rule: 'depth', depth: 6 } } as const

/** `dado inside 102,0 18x580 6 deep`. */
function told(operation: Operation): string {
  if (operation.kind === 'bevel') return `${operation.edge} ${operation.face} ${operation.by}`
  if (operation.kind === 'clip') return `${operation.end} ${operation.edge} ${operation.length}x${operation.width}`
  const { kind, x } = operation
  if (isEdgeSlot(operation)) {
    const { edge, length, up, width, depth } = operation
    return `${kind} ${edge} from ${x}, ${length} long, ${width} wide at ${up}, ${depth} deep`
  }
  const { y } = operation
  if (operation.kind === 'holeRow') {
    const { face, count, step, diameter, depth } = operation
    return `${count} holes ${diameter} ${face} from ${x},${y} every ${step}, ${depth} deep`
  }
  const size = `${operation.length}x${operation.width}`
  if (operation.kind === 'notch') return `notch ${x},${y} ${size}`
  return `${kind} ${operation.face} ${x},${y} ${size} ${operation.depth} deep`
}

const work = (board: Board) => board.operations.map(told)

describe('what is worked on a side', () => {
  it('is a dado for the bottom of a notched base, as deep as its tongue', () => {
    const boards = boardsOf(
      aCabinet('base', { depth: 580 }),
      rulesWith({ cornerJoint: DADO_6, floor: { kind: 'notched', height: 102, setback: 75 } }),
    )
    expect(work(boardIn(boards, 'leftSide'))).toEqual([
      `notch 0,${580 - 75} 102x75`,
      'dado inside 102,0 18x580 6 deep',
      `rabbet inside ${720 - 18},0 18x580 6 deep`,
    ])
    expect(work(boardIn(boards, 'rightSide'))).toEqual([
      'notch 0,0 102x75',
      'dado inside 102,0 18x580 6 deep',
      `rabbet inside ${720 - 18},0 18x580 6 deep`,
    ])
  })
  it('is a rabbet for a bottom at its very end, by either joint', () => {
    const rabbet = { kind: 'rabbet', depth: { rule: 'residual', residual: 11 } } as const
    const boards = boardsOf(aCabinet('upper', { depth: 330 }), rulesWith({ cornerJoint: rabbet }))
    expect(work(boardIn(boards, 'leftSide'))[0]).toBe(`rabbet inside 0,0 18x330 ${18 - 11} deep`)
  })
  it('is a groove for the back, from the groove of the bottom to the groove of the top', () => {
    const back = { kind: 'groove', inset: 12, depth: 7, clearance: 2 } as const
    const boards = boardsOf(aCabinet('upper', { height: 720, depth: 330 }), rulesWith({ back }))
    const length = 720 - 2 * 18 + 2 * 7
    expect(work(boardIn(boards, 'leftSide'))).toEqual([`groove inside ${18 - 7},12 ${length}x6 7 deep`])
    expect(work(boardIn(boards, 'rightSide'))).toEqual([`groove inside ${18 - 7},${330 - 12 - 6} ${length}x6 7 deep`])
    expect(work(boardIn(boards, 'bottom'))).toEqual([`groove inside 0,${330 - 12 - 6} ${600 - 2 * 18}x6 7 deep`])
  })
  it('is a rabbet along the rear edge for a back in rabbets', () => {
    const boards = boardsOf(aCabinet('upper', { height: 720 }), rulesWith({ back: { kind: 'rabbet', depth: 9 } }))
    expect(work(boardIn(boards, 'leftSide'))).toEqual(['rabbet inside 0,0 720x6 9 deep'])
  })
  it('is two rows of pin holes for adjustable shelves, 32 apart, 37 from the front edge and from the back', () => {
    const cabinet = aCabinet('upper', {
      height: 720,
      depth: 330,
      interior: { fixedShelves: 0, adjustableShelves: 1, partition: null },
    })
    const boards = boardsOf(cabinet, rulesWith({ back: { kind: 'applied', margin: 0 } }))
    // The side is 324 deep; the clear height is 720 - 2 x 18 = 684, and (684 - 2 x 96) / 32 = 15.4: 16 holes.
    expect(work(boardIn(boards, 'leftSide'))).toEqual([
      `16 holes 5 inside from ${18 + 96},37 every 32, 11 deep`,
      `16 holes 5 inside from ${18 + 96},${324 - 37} every 32, 11 deep`,
    ])
  })
  it('is no deeper than half of a partition less a millimetre where it is bored from both faces', () => {
    const interior = { fixedShelves: 0, adjustableShelves: 1, partition: { at: 0.5 } }
    const partition = boardIn(boardsOf(aCabinet('upper', { interior }), rulesWith()), 'partition')
    const holes = partition.operations.filter((operation) => operation.kind === 'holeRow')
    expect(holes.map(({ face, depth }) => `${face} ${depth}`)).toEqual([
      'outside 8',
      'outside 8',
      'inside 8',
      'inside 8',
    ])
  })
})

describe('a partition', () => {
  const interior = { fixedShelves: 1, adjustableShelves: 0, partition: { at: 0.5 } }
  // Source: a joiners' forum thread on dadoes: 3/16 in from each face of a 3/4 in divider, which is a quarter.
  it('is housed for shelves by no more than a quarter from each face', () => {
    const boards = boardsOf(aCabinet('upper', { interior }), rulesWith({ cornerJoint: DADO_6 }))
    const dados = boardIn(boards, 'partition').operations.map((operation) =>
      operation.kind === 'dado' ? operation : null,
    )
    expect(dados.map((dado) => `${dado?.face} ${dado?.depth}`)).toEqual(['outside 4.5', 'inside 4.5'])
  })
  it('is notched round stretchers on edge', () => {
    const rules = rulesWith({ baseTop: { kind: 'stretchersOnEdge', width: 90 } })
    const boards = boardsOf(aCabinet('base', { height: 720, depth: 580, interior }), rules)
    const partition = boardIn(boards, 'partition')
    expect(partition.length).toBe(720 - 18)
    expect(work(partition).filter((text) => text.startsWith('notch'))).toEqual([
      `notch ${720 - 18 - 90},${580 - 18} 90x18`,
      `notch ${720 - 18 - 90},0 90x18`,
    ])
  })
  it('stands under a drawer line when there is a drawer above', () => {
    const front = {
      kind: 'rows',
      rows: [
        { size: { kind: 'fixed', height: 140 }, front: { kind: 'drawer' } },
        { size: { kind: 'share', share: 1 }, front: { kind: 'pair' } },
      ],
    } as const
    const boards = boardsOf(aCabinet('base', { height: 720, front, interior }), rulesWith())
    // The gap of 3 is below a front of 140 and a reveal of 3; the line, 18 thick, has its middle there.
    const line = boardIn(boards, 'fixedShelf', 3)
    expect(line.placement.origin.y).toBe(720 - 3 - 140 - 1.5 - 9)
    expect(boardIn(boards, 'partition').length).toBe(720 - 3 - 140 - 1.5 - 9 - 18)
  })
})

describe('left and right', () => {
  it('both look into the cabinet with their inside faces', () => {
    const boards = boardsOf(aCabinet('base'), rulesWith({ nailers: { ...PLAIN.nailers, top: true } }))
    expect(boardIn(boards, 'leftSide').placement.thickness).toBe('+x')
    expect(boardIn(boards, 'rightSide').placement.thickness).toBe('-x')
    expect(boardIn(boards, 'bottom').placement.thickness).toBe('+y')
    expect(boardIn(boards, 'top').placement.thickness).toBe('-y')
    expect(boardIn(boards, 'topNailer').placement.thickness).toBe('+z')
  })
})

describe('the banding of a carcass', () => {
  it('lies on the edge that looks into the room', () => {
    const nailers = { ...PLAIN.nailers, top: true }
    const interior = { fixedShelves: 1, adjustableShelves: 1, partition: { at: 0.5 } }
    const banding = { carcass: 1, fronts: 2, isInFinishedSize: true }
    const boards = boardsOf(aCabinet('base', { interior }), rulesWith({ banding, nailers }))
    const banded = boards.filter((board) => board.banding.low + board.banding.high > 0)
    expect(new Set(banded.map(({ role }) => role))).toEqual(
      new Set(['leftSide', 'rightSide', 'bottom', 'top', 'partition', 'fixedShelf', 'adjustableShelf']),
    )
    for (const { role, banding: bands, placement, width } of banded) {
      const edge = toCabinet(placement, 0, bands.high > 0 ? width : 0, 0)
      expect(`${role} ${edge.z}`).toBe(`${role} 580`)
    }
  })
})

describe('nailers that are let into the sides', () => {
  // Source: baileylineroad.com: 3/4 x 4 in strips in notches of the sides behind a back of 1/4 in, two for uppers.
  const nailers = { where: 'behind', top: true, bottom: true, areLetIn: true, width: 101.6 } as const
  const groove = { kind: 'groove', inset: 10, depth: 6, clearance: 1 } as const
  const boards = boardsOf(
    aCabinet('upper', { width: 600, height: 720, depth: 330 }),
    rulesWith({ nailers, back: groove }),
  )
  const notchesIn = (role: 'leftSide' | 'rightSide') =>
    boardIn(boards, role).operations.filter((one) => one.kind === 'notch')

  it('run across both, flush with their rear edges, with the back before them', () => {
    for (const role of ['topNailer', 'bottomNailer'] as const) {
      const { min, max } = boxOf(boardIn(boards, role))
      expect([min.x, max.x, min.z, max.z]).toEqual([0, 600, 0, 18])
    }
    // The groove is where the notches end, though the method has it 10 from the rear.
    expect(boxOf(boardIn(boards, 'back')).min.z).toBe(18)
    expect(boardIn(boards, 'leftSide').width).toBe(330)
  })

  it('are in notches of either side, as high as they are and as deep as they are thick', () => {
    for (const role of ['leftSide', 'rightSide'] as const) {
      expect(notchesIn(role).map(({ length, width }) => [length, width])).toEqual([
        [101.6, 18],
        [101.6, 18],
      ])
    }
  })

  it('stand between the sides behind a back that is in no groove', () => {
    const applied = boardsOf(
      aCabinet('upper', { width: 600 }),
      rulesWith({ nailers, back: { kind: 'rabbet', depth: 9 } }),
    )
    expect(boardIn(applied, 'leftSide').operations.some(({ kind }) => kind === 'notch')).toBe(false)
  })
})
