import { describe, expect, it } from 'vitest'
import { randomFrom } from '../../../engine/basics/random'
import type { Rules } from '../../../engine/cabinets/build'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import { partsOf } from '../../../engine/parts/partsOf'
import type { Cabinet } from '../../../engine/project/document'
import { meshOf } from '../../../engine/solids/mesh'
import { volumeOf } from '../../../engine/solids/volume'
import { aCabinet, PLAIN, rulesWith } from '../../helpers/cabinets'
import { anyCabinet } from '../../helpers/diced'

const messages = (cabinet: Cabinet, rules: Rules = rulesWith()) => {
  return buildCabinet(cabinet, rules).problems.map(({ message }) => message)
}

describe('a cabinet that cannot be built', () => {
  it('says which size is wrong and builds nothing', () => {
    const { boards, problems } = buildCabinet(aCabinet('base', { number: 2, width: -5 }), rulesWith())
    expect(boards).toEqual([])
    expect(problems).toEqual([
      {
        weight: 'stop',
        about: { kind: 'cabinet', cabinet: 'k1' },
        message: 'B2: its width is -5 mm; it must be more than 0 mm.',
        ...{ measure: '-5 mm', limit: 'over 0 mm', source: 'worked out from the boards' },
      },
    ])
  })
  it('says that a size is not a number', () => {
    expect(messages(aCabinet('tall', { height: Number.NaN }))).toEqual([
      'T1: its height is not a number; it must be more than 0 mm.',
    ])
  })
  it('says that a size is more than is built', () => {
    expect(messages(aCabinet('base', { depth: 2500 }))).toEqual([
      'B1: its depth is 2500 mm; 2000 mm is the most that is built.',
    ])
  })
  it('says that a board is too narrow to be cut, and keeps it', () => {
    const cabinet = aCabinet('upper', { depth: 60 })
    const { boards, problems } = buildCabinet(cabinet, rulesWith({ back: { kind: 'applied', margin: 0 } }))
    expect(boards.map(({ role }) => role)).toContain('bottom')
    expect(problems.map(({ message }) => message)).toContain(
      'U1: the bottom would be 54 mm wide; 60 mm is the least that can be cut.',
    )
  })
  it('leaves out a board without a size and keeps the others', () => {
    const { boards, problems } = buildCabinet(aCabinet('base', { width: 30 }), rulesWith())
    expect(boards.map(({ role }) => role)).toEqual(['leftSide', 'rightSide'])
    expect(problems.map(({ message }) => message)).toEqual([
      'B1: two sides of 18 mm leave nothing clear in a width of 30 mm.',
      'B1: the bottom would be 0 mm long; it is left out.',
      'B1: the top would be 0 mm long; it is left out.',
    ])
  })
  it('says that a joint is deeper than the board', () => {
    const cornerJoint = { kind: 'dado', depth: { rule: 'depth', depth: 20 } } as const
    expect(messages(aCabinet('base'), rulesWith({ cornerJoint }))).toEqual([
      'B1: the dado would be 20 mm deep in 18 mm sides; the boards are butted instead.',
    ])
  })
  it('says that a drawer is too low for a box', () => {
    const front = {
      kind: 'rows',
      rows: [
        { size: { kind: 'fixed', height: 70 }, front: { kind: 'drawer' } },
        { size: { kind: 'share', share: 1 }, front: { kind: 'open' } },
      ],
    } as const
    // From half the gap below the front (720 - 3 - 70 - 1.5 = 645.5) to the top (702), less 16 and 14.
    expect(messages(aCabinet('base', { front }))).toEqual([
      `B1: the box of drawer 1 would be ${702 - 645.5 - 16 - 14} mm high; 50 mm is the least.`,
    ])
  })
  it('says that a drawer is too shallow for a box', () => {
    expect(messages(aCabinet('base', { depth: 140, front: { kind: 'drawer' } }))).toEqual([
      'B1: the box of drawer 1 would be 100 mm long; 150 mm is the least.',
    ])
  })
  it('says that a door is too wide', () => {
    expect(messages(aCabinet('base', { width: 700, front: { kind: 'door', hinge: 'left' } }))).toEqual([
      'B1: a door is 697 mm wide; 610 mm is the most for one door.',
    ])
  })
  it('says that the back leaves no room', () => {
    const back = { kind: 'groove', inset: 400, depth: 6, clearance: 2 } as const
    expect(messages(aCabinet('upper'), rulesWith({ back }))).toContain(
      'U1: the front of the back would be 406 mm from the wall; the inside ends at 330 mm.',
    )
  })
  it('says that the back stands in the front stretcher', () => {
    const flat = 75
    const set = (inset: number) =>
      rulesWith({
        back: { kind: 'groove', inset, depth: 6, clearance: 2 },
        baseTop: { kind: 'stretchersFlat', width: flat },
      })
    const said = (inset: number) => messages(aCabinet('base', { depth: 580 }), set(inset))
    const told = said(525).filter((message) => message.includes('front stretcher begins'))
    // The flat stretcher begins at 580 - 75; the back is 6 thick.
    expect(told).toEqual([
      `B1: the front of its back would be ${525 + 6} mm from the wall; its front stretcher begins at ${580 - flat} mm. Set the back in less.`,
    ])
    expect(said(580 - flat - 6).filter((message) => message.includes('front stretcher begins'))).toEqual([])
  })
  it('says that two stretchers do not fit', () => {
    const rules = rulesWith({ baseTop: { kind: 'stretchersFlat', width: 300 } })
    expect(messages(aCabinet('base', { depth: 580 }), rules)).toEqual([
      'B1: two stretchers of 300 mm do not fit in the 580 mm from its back to its front; the back one is left out.',
    ])
  })
  it('says that drawers leave no place for shelves', () => {
    const interior = { fixedShelves: 1, adjustableShelves: 0, partition: null }
    expect(messages(aCabinet('base', { front: { kind: 'drawer' }, interior }))).toEqual([
      'B1: there are drawers from its bottom to its top, so shelves and partition are left out.',
    ])
  })
  it('says how many loose shelves find pin holes, of one as of one', () => {
    const interior = { fixedShelves: 0, adjustableShelves: 2, partition: null }
    const { problems } = buildCabinet(aCabinet('upper', { height: 240, interior }), rulesWith())
    expect(problems.map(({ message, measure, limit }) => [message, measure, limit])).toEqual([
      [`U1: 1 of 2 adjustable shelves find pin holes in ${240 - 2 * 18} mm of height.`, '1 shelf', '2 shelves'],
    ])
  })
  it('says that a material is missing', () => {
    expect(messages(aCabinet('base'), { ...rulesWith(), materials: {} })).toEqual([
      'B1: the material of its carcass is not in the list of materials.',
    ])
  })
  it('says that rows do not add up', () => {
    const front = { kind: 'rows', rows: [{ size: { kind: 'fixed', height: 500 }, front: { kind: 'open' } }] } as const
    expect(messages(aCabinet('base', { front }))).toEqual([
      'B1: its rows with their gaps are 500 mm high in all; the front is 717 mm high.',
    ])
  })
})

describe('a cabinet asked for in nonsense', () => {
  it('never throws, and every board that it keeps has a size and a volume', () => {
    const wild = [Number.NaN, Number.POSITIVE_INFINITY, -700, -1, 0, 0.0001, 5, 36, 80, 1e5, 1e9]
    for (let seed = 0; seed < 1500; seed++) {
      const dice = randomFrom(seed)
      const pick = (usual: number) => (dice() < 0.45 ? wild[Math.floor(dice() * wild.length)]! : usual)
      const { cabinet, rules } = anyCabinet(dice)
      const { method } = rules
      const odd: Rules = {
        ...rules,
        method: {
          ...method,
          shelves: { ...PLAIN.shelves, pitch: pick(32), firstHole: pick(64), setback: pick(0), sideClearance: pick(3) },
          fronts: { gap: pick(3), endReveal: pick(1.5), topReveal: pick(3), bottomReveal: pick(0) },
          drawers: { ...PLAIN.drawers, lengthStep: pick(50), grooveDepth: pick(6), topClearance: pick(14) },
          nailers: { ...method.nailers, width: pick(80) },
          back: { kind: 'groove', inset: pick(12), depth: pick(6), clearance: pick(2) },
          floor: { kind: 'notched', height: pick(100), setback: pick(60) },
        },
      }
      const interior = {
        fixedShelves: pick(1),
        adjustableShelves: pick(1),
        partition: dice() < 0.5 ? null : { at: pick(0.5) },
      }
      const sizes = { width: pick(600), height: pick(720), depth: pick(560) }
      const build = buildCabinet({ ...cabinet, ...sizes, interior }, odd)
      for (const part of partsOf(build, odd)) {
        const good = [part.length, part.width, part.thickness].every((size) => Number.isFinite(size) && size > 0)
        expect(good, `seed ${seed}: ${part.mark} ${part.length} x ${part.width}`).toBe(true)
        expect(Number.isFinite(volumeOf(part)), `seed ${seed}: ${part.mark}`).toBe(true)
        const wood = { ...part, operations: part.operations.filter(({ kind }) => kind !== 'holeRow') }
        const faces = meshOf(wood).positions.length
        expect(faces > 0 || build.problems.length > 0, `seed ${seed}: ${part.mark} is all cut away`).toBe(true)
      }
    }
  })
})

describe('what is wrong with a cabinet', () => {
  it('is told in the unit that is shown', () => {
    const narrow = aCabinet('base', { width: 25.4 })
    expect(messages(narrow).join()).toContain('in a width of 25.4 mm')
    expect(messages(narrow, { ...rulesWith(), display: { unit: 'in', step: 16 } }).join()).toContain(
      'in a width of 1 in',
    )
  })
})
