import { describe, expect, it } from 'vitest'
import { randomFrom } from '../../../engine/basics/random'
import { centresOf, type HolePurpose } from '../../../engine/cabinets/operation'
import type { Cabinet } from '../../../engine/project/document'
import type { BuildMethod } from '../../../engine/project/method'
import { readMethod, writeMethod } from '../../../engine/project/methodFile'
import { demonstrationKitchen } from '../../../engine/samples/kitchen'
import { settle } from '../../../engine/units/length'
import { aCabinet, boardIn, boardsOf, type MethodChanges, PLAIN, rulesWith } from '../../helpers/cabinets'
import { anyCabinet } from '../../helpers/diced'

const BALANCED = { rows: 'asLeft', arePlatesOn: true } as const
const SHELF = { fixedShelves: 0, adjustableShelves: 1, partition: null }

function method(
  balance: BuildMethod['shelves']['balance'],
  shelves: Partial<BuildMethod['shelves']> = {},
): MethodChanges {
  return { shelves: { ...PLAIN.shelves, firstHole: 128, ...shelves, ...(balance ? { balance } : {}) } }
}

/** Heights from the foot of the left side, and distances from its rear edge. */
function holesOf(changes: MethodChanges, cabinet: Partial<Cabinet>, purpose: HolePurpose = 'shelfPin') {
  const rules = rulesWith(changes)
  const side = boardIn(boardsOf(aCabinet('base', { interior: SHELF, ...cabinet }), rules), 'leftSide')
  const centres = side.operations.flatMap((one) =>
    one.kind === 'holeRow' && one.purpose === purpose ? centresOf(one) : [],
  )
  const sorted = (numbers: readonly number[]) => [...new Set(numbers)].sort((a, b) => a - b)
  return { side, up: sorted(centres.map(({ x }) => x)), rows: sorted(centres.map(({ y }) => y)) }
}

/** A back of 6 in a groove 10 before the rear edge. */
const GROOVE: MethodChanges = { back: { kind: 'groove', inset: 10, depth: 6, clearance: 1 } }

describe('a side of 768 by 580 that is not balanced', () => {
  it('has its rows 146 from below and 174 from above, 37 from the front and 53 from the rear', () => {
    const { side, up, rows } = holesOf({ ...method(undefined), ...GROOVE }, { height: 768 })
    expect([up[0], side.length - up.at(-1)!]).toEqual([18 + 128, 768 - 146 - 14 * 32])
    expect([rows[0], side.width - rows.at(-1)!]).toEqual([10 + 6 + 37, 37])
  })
})

describe('a side whose first hole is chosen', () => {
  // Source: forum threads of 2003 to 2010 on boring in a 32 mm system, 'The first 5mm hole is 46.5mm from the bottom and is
  // 37mm back from the front'; others 44.5, 38 and 37.
  it.each([46.5, 44.5, 38, 37])('has it %f from its foot and 37 from its front edge, and goes on every 32', (first) => {
    const { side, up, rows } = holesOf(method(undefined, { firstHole: first - 18 }), { height: 768 })
    expect([up[0], up[1]]).toEqual([first, first + 32])
    expect(side.width - rows.at(-1)!).toBe(37)
  })
})

// Sources: a forum thread of 2010 on boring in a 32 mm system: a panel is 32 n and twice its first hole high, 9.5 for one of
// 84 in, which is cut at 83.9; the design page of a cabinet shop: sides of 605, 637 and 669, 3 less than a multiple of 32;
// dalrun.com, '32mm Cabinetmaking': 37 from the front edge and from the rear.
describe('a balanced side', () => {
  it('begins as far from its lower end as it stops from its upper one', () => {
    const { side, up } = holesOf(method(BALANCED), { height: 768 })
    // 768 is 24 x 32, so the first hole is at 160 (or 144, too near): 768 = 14 x 32 + 2 x 160.
    expect([up[0], side.length - up.at(-1)!, up.length]).toEqual([160, 160, 15])
  })

  it.each([605, 637, 669, 720, 1056, 2131])('of %i is a multiple of 32 and twice the first hole high', (height) => {
    const { side, up } = holesOf(method(BALANCED), { height })
    expect(side.length - up.at(-1)!).toBe(up[0])
    expect((height - 2 * up[0]!) / 32).toBe(up.length - 1)
    expect(up[0]).toBeGreaterThanOrEqual(18 + 128)
    expect(up[0]).toBeLessThan(18 + 128 + 16)
  })

  it('of 2131 begins 9.5 from its ends where nothing asks for more', () => {
    // 66 x 32 + 2 x 9.5: the panel of 84 in that is cut at 83.9. What is over counts; the bottom is in the way of the first.
    const { up } = holesOf(method(BALANCED, { firstHole: 0 }), { height: 2131 })
    expect((up[0]! - 9.5) % 16).toBe(0)
  })

  // Source: a forum thread on boring in a 32 mm system: 'our side panels at 774', ends of 30 1/2 in; 762 is 30 in.
  it.each([762, 774.7])(
    'of %f, which is no multiple of 32, is the same from both ends, and else it is not',
    (height) => {
      const endsOf = ({ side, up }: ReturnType<typeof holesOf>) => [up[0], settle(side.length - up.at(-1)!)] as const
      const [foot, head] = endsOf(holesOf(method(BALANCED), { height }))
      expect(head).toBe(foot)
      const [low, high] = endsOf(holesOf(method(undefined), { height }))
      expect(high).not.toBe(low)
    },
  )

  // Source: davelers.com, on the 32 mm system: hinges equally far from both ends of a door, at 32 k and 16 less half of the gap.
  it('has the cups of a door as far from its top as from its bottom, at a multiple of 32 and 16 less half of the gap', () => {
    const fronts = { gap: 3, endReveal: 1.5, topReveal: 1.5, bottomReveal: 1.5 }
    const cabinet = { height: 768, front: { kind: 'door', hinge: 'left' }, interior: SHELF } as const
    const door = boardIn(boardsOf(aCabinet('base', cabinet), rulesWith({ ...method(BALANCED), fronts })), 'door')
    const cups = door.operations.flatMap((one) => (one.kind === 'holeRow' && one.purpose === 'hingeCup' ? [one.x] : []))
    expect(cups).toHaveLength(2)
    const [low, high] = [Math.min(...cups), Math.max(...cups)]
    expect(settle(door.length - high)).toBe(low)
    expect((low + 3 / 2) % 32).toBe(16)
  })

  it('has its rear row 37 from the rear edge, or a multiple of 32 behind the front row', () => {
    const left = holesOf({ ...method(BALANCED), ...GROOVE }, { height: 768 })
    expect([left.rows[0], left.side.width - left.rows[1]!]).toEqual([37, 37])
    const multiple = holesOf({ ...method({ ...BALANCED, rows: 'multiple' }), ...GROOVE }, { height: 768 })
    // Of 580 - 2 x 37 = 506 between them 15 x 32 = 480.
    expect([multiple.rows[1]! - multiple.rows[0]!, multiple.side.width - multiple.rows[1]!]).toEqual([480, 37])
  })

  it('keeps its rear row before a back that stands farther in', () => {
    const deep: MethodChanges = { back: { kind: 'groove', inset: 40, depth: 6, clearance: 1 } }
    expect(holesOf({ ...method(BALANCED), ...deep }, { height: 768 }).rows[0]).toBe(40 + 6 + 37)
  })

  it('stops its rear row on a partition below the notch for a nailer, before which it would stand too near', () => {
    const rules = rulesWith({
      ...method({ rows: 'asLeft', arePlatesOn: false }, { firstHole: 64 }),
      back: { kind: 'groove', inset: 12, depth: 7, clearance: 2 },
      nailers: { where: 'inside', top: true, bottom: false, width: 80 },
    })
    const interior = { ...SHELF, partition: { at: 0.37 } }
    const partition = boardIn(boardsOf(aCabinet('base', { height: 560, interior }), rules), 'partition')
    const notch = partition.operations.find(({ kind }) => kind === 'notch')
    expect(notch).toMatchObject({ x: 560 - 2 * 18 - 80, y: 0, width: 18 })
    const rows = partition.operations.flatMap((one) => (one.kind === 'holeRow' && one.face === 'inside' ? [one] : []))
    // 37 from the rear of the sides, 19 from its own: a hole of 5 has its edge 1.5 inside the notch's front, at 18.
    expect(rows.map(({ y, count }) => [y, count])).toEqual([
      [19, 12],
      [partition.width - 37, 13],
    ])
  })

  it('has openings above and below a fixed shelf on the same grid', () => {
    const { up } = holesOf(method(BALANCED), {
      height: 1600,
      interior: { ...SHELF, fixedShelves: 1, adjustableShelves: 2 },
    })
    const whole = holesOf(method(BALANCED), { height: 1600 }).up
    expect(up.length).toBeGreaterThan(10)
    expect(up.length).toBeLessThan(whole.length)
    for (const one of up) expect((one - whole[0]!) % 32).toBe(0)
  })

  it('has the plates of its hinges in the grid, and their cups at the same height', () => {
    const changes = method(BALANCED)
    const cabinet = { height: 768, front: { kind: 'door', hinge: 'left' }, interior: SHELF } as const
    const plates = holesOf(changes, cabinet, 'hingePlate')
    const pins = holesOf(changes, cabinet)
    expect(plates.up).toHaveLength(4)
    for (const one of plates.up) expect(Math.abs(one - 160) % 32).toBe(0)
    // A hole for a plate is no hole for a pin in the same row, which goes on above and below.
    const centres = (purpose: HolePurpose) =>
      pins.side.operations.flatMap((one) => (one.kind === 'holeRow' && one.purpose === purpose ? centresOf(one) : []))
    const shared = centres('hingePlate').filter((a) => centres('shelfPin').some((b) => a.x === b.x && a.y === b.y))
    expect(shared).toEqual([])
    const rules = rulesWith(changes)
    const boards = boardsOf(aCabinet('base', cabinet), rules)
    const door = boardIn(boards, 'door')
    const cups = door.operations.flatMap((one) =>
      one.kind === 'holeRow' && one.purpose === 'hingeCup' ? [settle(door.placement.origin.y + one.x)] : [],
    )
    expect(cups).toEqual([plates.up[0]! + 16, plates.up[2]! + 16])
  })

  it('has its plates where they were without the choice', () => {
    const cabinet = {
      height: 768,
      front: { kind: 'door', hinge: 'left' },
      interior: { ...SHELF, adjustableShelves: 0 },
    } as const
    const off = holesOf(method({ ...BALANCED, arePlatesOn: false }), cabinet, 'hingePlate')
    expect(off.up).toEqual(holesOf(method(undefined), cabinet, 'hingePlate').up)
    expect(off.up.some((one) => (one - 160) % 32 !== 0)).toBe(true)
  })

  it('bores nothing on what is bored, whatever the cabinet', () => {
    let onGrid = 0
    for (let seed = 0; seed < 150; seed++) {
      const { cabinet, rules } = anyCabinet(randomFrom(seed))
      const shelves = { ...rules.method.shelves, balance: BALANCED }
      for (const board of boardsOf(cabinet, { ...rules, method: { ...rules.method, shelves } })) {
        const holes = board.operations.flatMap((row) =>
          row.kind === 'holeRow' && !row.slant ? centresOf(row).map((at) => ({ ...at, row })) : [],
        )
        onGrid += holes.filter(({ row }) => row.purpose === 'hingePlate').length
        const touching = holes.flatMap((one, at) =>
          holes.slice(at + 1).filter(({ row, x, y }) => {
            const least = (row.diameter + one.row.diameter) / 2 - 1e-6
            return row.face === one.row.face && Math.hypot(x - one.x, y - one.y) < least
          }),
        )
        expect(touching, `seed ${seed}, ${board.role} ${board.number}`).toEqual([])
      }
    }
    expect(onGrid).toBeGreaterThan(100)
  })
})

describe('the file of a method with balanced panels', () => {
  it('keeps the choice, and one that never had it stays as it was', () => {
    const kitchen = demonstrationKitchen()
    const own = kitchen.methods[kitchen.method]!
    expect(own.shelves).not.toHaveProperty('balance')
    const balanced = { ...own, shelves: { ...own.shelves, balance: BALANCED } }
    const text = writeMethod({ ...kitchen, methods: { ...kitchen.methods, [own.id]: balanced } }, own.id)!
    const read = readMethod(text)
    expect(read.ok && read.value.method.shelves.balance).toEqual(BALANCED)
  })
})
