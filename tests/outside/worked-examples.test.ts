import { describe, expect, it } from 'vitest'
import { boxWidth } from '../../engine/cabinets/drawerBox'
import { frontInset } from '../../engine/cabinets/openings'
import { sideWidth } from '../../engine/cabinets/side'
import { plinthDepth } from '../../engine/cabinets/toeKick'
import type { FrontRow } from '../../engine/project/document'
import type { BuildMethod } from '../../engine/project/method'
import { inch } from '../../engine/units/length'
import { aCabinet, boardIn, boardsOf, carcassFrom, PLAIN, rulesWith } from '../helpers/cabinets'

/** Sizes printed in published articles, worked out by the same functions that build every cabinet. */

const dado = (inches: number) => ({ kind: 'dado', depth: { rule: 'depth', depth: inch(inches) } }) as const
const rabbet = (inches: number) => ({ kind: 'rabbet', depth: { rule: 'depth', depth: inch(inches) } }) as const
const residual = (inches: number) => ({ kind: 'dado', depth: { rule: 'residual', residual: inch(inches) } }) as const
const sized = ({ length, width }: { length: number; width: number }) => [length, width]
const fronts = (gap: number, endReveal: number, topReveal: number, bottomReveal: number): BuildMethod['fronts'] => {
  return { gap, endReveal, topReveal, bottomReveal }
}

describe('a base 36 in wide behind a face frame', () => {
  // Source: J. Kroschel, 'Cabinet Basics' and 'Cabinet Basics pt 2', jimkroschel.wordpress.com, 2011. The dado of 1/4 in
  // is the one that closes the printed sums.
  const boards = boardsOf(
    aCabinet('base', { width: inch(36 - 2 * 0.25), height: inch(34.5), depth: inch(23.25) }),
    rulesWith(
      {
        cornerJoint: dado(0.25),
        back: { kind: 'groove', inset: inch(0.5), depth: inch(0.25), clearance: 0 },
        floor: { kind: 'notched', height: inch(4), setback: inch(3) },
      },
      { carcass: inch(0.5), back: inch(0.5) },
    ),
  )
  it('has sides of 34 1/2 by 23 1/4, a floor of 35 by 23 1/4 and a back 35 wide', () => {
    expect(sized(boardIn(boards, 'leftSide'))).toEqual([inch(34.5), inch(23.25)])
    expect(sized(boardIn(boards, 'bottom'))).toEqual([inch(35), inch(23.25)])
    expect(boardIn(boards, 'back').width).toBe(inch(35))
  })
})

describe('a base of 36 by 30 by 18 in', () => {
  // Source: 'Standard Base Cabinet (Building Cases)', an undated US book on bookcases, cabinets and shelves, web copy.
  const boards = boardsOf(
    aCabinet('base', { width: inch(36), height: inch(30 - 0.75), depth: inch(18 - 0.75) }),
    rulesWith(
      {
        cornerJoint: dado(0.25),
        back: { kind: 'rabbet', depth: inch(0.375) },
        floor: { kind: 'notched', height: inch(3.5), setback: inch(3.5) },
        nailers: { where: 'inside', top: true, bottom: false, width: inch(1.5) },
      },
      { carcass: inch(0.75), back: inch(0.25) },
    ),
  )
  it('has sides of 29 1/4 by 17 1/4 with a notch of 3 1/2 each way', () => {
    const side = boardIn(boards, 'leftSide')
    expect(sized(side)).toEqual([inch(29.25), inch(17.25)])
    expect(side.operations[0]).toEqual({
      kind: 'notch',
      x: 0,
      y: inch(17.25 - 3.5),
      length: inch(3.5),
      width: inch(3.5),
    })
  })
  it('has a bottom of 35 by 17 in quarter-inch dados before a quarter-inch back', () => {
    expect(sized(boardIn(boards, 'bottom'))).toEqual([inch(35), inch(17)])
  })
  it('has a nailer of 34 1/2 between the sides', () => {
    expect(boardIn(boards, 'topNailer').length).toBe(inch(34.5))
  })
})

describe('a small case with gains', () => {
  // Source: E. W. Foster, Carpentry and Woodwork, Doubleday, Page, 1911. Gains of 1/4 in are implied by the sizes.
  const boards = boardsOf(
    aCabinet('upper', {
      width: inch(25.125),
      height: inch(14),
      depth: inch(12 + 0.25),
      interior: { fixedShelves: 2, adjustableShelves: 0, partition: null },
    }),
    rulesWith(
      { cornerJoint: rabbet(0.25), back: { kind: 'applied', margin: 0 } },
      { carcass: inch(0.5), back: inch(0.25) },
    ),
  )
  it('has four boards of 24 5/8 by 12, ends of 14 by 12 and a back of 25 1/8 by 14', () => {
    const level = [
      boardIn(boards, 'bottom'),
      boardIn(boards, 'fixedShelf', 1),
      boardIn(boards, 'fixedShelf', 2),
      boardIn(boards, 'top'),
    ]
    for (const board of level) expect(sized(board)).toEqual([inch(24.625), inch(12)])
    expect(sized(boardIn(boards, 'leftSide'))).toEqual([inch(14), inch(12)])
    expect(sized(boardIn(boards, 'back'))).toEqual([inch(14), inch(25.125)])
  })
})

describe('a frameless base 27 in wide', () => {
  // Source: D. Proulx, 'Building base cabinets - part 3', Canadian Woodworking, Aug/Sep 2003.
  const boards = boardsOf(
    aCabinet('base', { width: inch(27), height: inch(34.5), depth: inch(24) }),
    rulesWith(
      {
        back: { kind: 'applied', margin: 0 },
        floor: { kind: 'legs', height: inch(4), setback: inch(3) },
        baseTop: { kind: 'stretchersOnEdge', width: inch(2) },
      },
      { carcass: inch(0.625), back: inch(0.625) },
    ),
  )
  it('has a bottom of 25 3/4 by 23 3/8 and a rail of 25 3/4 by 2', () => {
    expect(sized(boardIn(boards, 'bottom'))).toEqual([inch(25.75), inch(23.375)])
    expect(sized(boardIn(boards, 'frontStretcher'))).toEqual([inch(25.75), inch(2)])
  })
})

describe('a bottom in dados that leave 3/8 in of the side', () => {
  // Source: 'Custom Cabinet Construction #1: Basic Base', woodworking forum blog, June 2010: the frame less 1 3/4 in.
  it('is the face frame less 1 3/4 in, whatever the sheet measures', () => {
    for (const thickness of [0.75, 23 / 32, 0.6875]) {
      const cabinet = aCabinet('base', { width: inch(36 - 2 * 0.5), depth: inch(23.25) })
      const rules = rulesWith({ cornerJoint: residual(0.375) }, { carcass: inch(thickness) })
      expect(boardIn(boardsOf(cabinet, rules), 'bottom').length).toBe(inch(36 - 1.75))
    }
  })
  // Source: 'Kitchen Cabinet Build Part 16', snaservices.com, 25 June 2021: frame, less offsets, less 1 in.
  it('is the face frame less its offset less 1 in where half an inch is left', () => {
    const cabinet = aCabinet('base', { width: inch(30 - 0.25), depth: inch(23.25) })
    const rules = rulesWith({ cornerJoint: residual(0.5) }, { carcass: inch(0.75) })
    expect(boardIn(boardsOf(cabinet, rules), 'bottom').length).toBe(inch(30 - 0.25 - 1))
  })
})

describe('a base 30 in wide on a plinth', () => {
  // Source: Woodworker's Journal vol. 32 no. 2, 2008, p. 49.
  const cabinet = aCabinet('base', { width: inch(30), height: inch(34.5), depth: inch(24 - 0.75) })
  const rules = rulesWith({ floor: { kind: 'plinth', height: inch(4), setback: inch(2.5) } }, { carcass: inch(0.75) })
  it('has a box 30 1/2 high and 23 1/4 deep, and a plinth 20 3/4 deep', () => {
    expect(sized(boardIn(boardsOf(cabinet, rules), 'leftSide'))).toEqual([inch(30.5), inch(23.25)])
    expect(plinthDepth(carcassFrom(cabinet, rules))).toBe(inch(20.75))
  })
})

describe('a frameless upper of 30 by 30 in', () => {
  // Source: Woodworker's Journal, Fall 2010 special, p. 52. The strip of 11 1/4 in is read from damaged print.
  it('has sides of 30, and a top, a bottom and a cleat of 28 1/2', () => {
    const nailers = { where: 'inside', top: true, bottom: false, width: inch(3) } as const
    const cabinet = aCabinet('upper', { width: inch(30), height: inch(30), depth: inch(11.25) })
    const boards = boardsOf(cabinet, rulesWith({ nailers }, { carcass: inch(0.75) }))
    expect(sized(boardIn(boards, 'leftSide'))).toEqual([inch(30), inch(11.25)])
    expect(boardIn(boards, 'top').length).toBe(inch(28.5))
    expect(boardIn(boards, 'bottom').length).toBe(inch(28.5))
    expect(boardIn(boards, 'topNailer').length).toBe(inch(28.5))
  })
})

describe('a cupboard 450 mm wide in 16 mm board', () => {
  // Source: 'Understanding the basic anatomy of a kitchen carcass', trade blog, South African practice.
  it('has 418 mm inside', () => {
    const boards = boardsOf(aCabinet('base', { width: 450 }), rulesWith({}, { carcass: 16 }))
    expect(boardIn(boards, 'bottom').length).toBe(418)
  })
})

describe('the fronts of a carcass 720 mm high', () => {
  // Source: 'Measure kitchen doors', a UK replacement-door trade page: 2.5 at top and bottom, 2 at each side.
  const rules = rulesWith({ fronts: fronts(5, 2, 2.5, 2.5), floor: { kind: 'legs', height: 150, setback: 50 } })
  it('are doors of 715 by 296, 396, 496 and 596', () => {
    const door = (width: number) => {
      const cabinet = aCabinet('base', { width, height: 870, front: { kind: 'door', hinge: 'left' } })
      return sized(boardIn(boardsOf(cabinet, rules), 'door'))
    }
    expect([300, 400, 500, 600].map(door)).toEqual([
      [715, 296],
      [715, 396],
      [715, 496],
      [715, 596],
    ])
  })
  it('are a drawer front of 140 over a door of 570', () => {
    const rows: FrontRow[] = [
      { size: { kind: 'fixed', height: 140 }, front: { kind: 'drawer' } },
      { size: { kind: 'share', share: 1 }, front: { kind: 'door', hinge: 'left' } },
    ]
    const boards = boardsOf(aCabinet('base', { width: 600, height: 870, front: { kind: 'rows', rows } }), rules)
    expect(boardIn(boards, 'drawerFront').width).toBe(140)
    expect(boardIn(boards, 'door').length).toBe(570)
  })
})

describe('a drawer box in an opening of 15 in', () => {
  // Source: a drawer-box maker's public sizing page: the clear width inside is the opening less 1 5/8 in.
  const width = (side: number) => {
    const slide = { kind: 'undermount', insideDeduction: inch(1.625) } as const
    const cabinet = aCabinet('base', { width: inch(15 + 2 * 0.75), front: { kind: 'drawer' } })
    return boxWidth(inch(15), carcassFrom(cabinet, rulesWith({ slide }, { carcass: inch(0.75), drawer: inch(side) })))
  }
  it('is 14 5/8 in wide with sides of 5/8 and 14 3/8 with sides of 1/2', () => {
    expect(width(0.625)).toBe(inch(14.625))
    expect(width(0.5)).toBe(inch(14.375))
  })
})

describe('a pair of inset doors', () => {
  const doors = (width: number, height: number, rules: ReturnType<typeof rulesWith>) => {
    const thickness = 2 * 0.75
    const cabinet = aCabinet('upper', {
      width: inch(width + thickness),
      height: inch(height + thickness),
      front: { kind: 'pair' },
    })
    return [1, 2].map((number) => sized(boardIn(boardsOf(cabinet, rules), 'door', number)))
  }
  // Source: 'Storage chest build completion', raugh.net/woodnerd. Three gaps of 1/4 in in all.
  it('in an opening of 34 by 17 3/4 in are 16 7/8 by 17 5/8', () => {
    const gaps = fronts(inch(0.125), inch(0.0625), inch(0.0625), inch(0.0625))
    const rules = rulesWith({ frontMount: 'inset', fronts: gaps }, { carcass: inch(0.75) })
    expect(doors(34, 17.75, rules)).toEqual([
      [inch(17.625), inch(16.875)],
      [inch(17.625), inch(16.875)],
    ])
  })
  // Source: 'Sizing Cabinet Doors to Tolerances', cabinetmaking forum knowledge base, 20 October 2013.
  it('in an opening of 40 in with three gaps of 5/64 are 19.8828 wide', () => {
    const gap = inch(5 / 64)
    const rules = rulesWith({ frontMount: 'inset', fronts: fronts(gap, gap, gap, gap) }, { carcass: inch(0.75) })
    expect(doors(40, 30, rules).map(([, width]) => width)).toEqual([inch(19.8828125), inch(19.8828125)])
  })
})

describe('a top in rabbets of thin plywood', () => {
  // Source: 'Precise Layout for Plywood Projects', WOOD magazine. 21/32 in is the thickness that the answer implies.
  const top = (thickness: number) => {
    const cabinet = aCabinet('upper', { width: inch(26), height: inch(30) })
    const boards = boardsOf(cabinet, rulesWith({ cornerJoint: rabbet(0.375) }, { carcass: inch(thickness) }))
    return [boardIn(boards, 'top').length, boardIn(boards, 'bottom').length]
  }
  it('is 25 7/16 in long by the measured thickness', () => {
    expect(top(21 / 32)).toEqual([inch(25.4375), inch(25.4375)])
  })
  it('would come out 3/16 in too short by the nominal one', () => {
    expect(top(0.75)).toEqual([inch(25.4375 - 0.1875), inch(25.4375 - 0.1875)])
  })
})

describe('an inch base of common practice (no source)', () => {
  it('has sides of 30 1/4 in over a plinth of 4 1/4 in, and sides of 580 mm are ripped for a metric one', () => {
    const floor = { kind: 'plinth', height: inch(4.25), setback: inch(3) } as const
    const inches = aCabinet('base', { height: inch(34.5), depth: inch(23.25) })
    expect(boardIn(boardsOf(inches, rulesWith({ floor })), 'leftSide').length).toBe(inch(30.25))
    expect(sideWidth(carcassFrom(aCabinet('base', { depth: 580 }), rulesWith()))).toBe(580)
  })
})

describe('two uppers that share a side', () => {
  it('leave the gap of one reveal between their half overlay doors (common practice, no source)', () => {
    const rules = rulesWith({ frontMount: 'halfOverlay', fronts: { ...PLAIN.fronts, gap: 3 } })
    const inset = frontInset(carcassFrom(aCabinet('upper', { front: { kind: 'pair' } }), rules))
    // Two carcasses share one side of 18: from the middle of it each door keeps half of the gap.
    expect(inset - 18 / 2).toBe(3 / 2)
  })
})
