import { describe, expect, it } from 'vitest'
import type { MaterialId, WallId } from '../../../engine/basics/id'
import { giveInMiddle } from '../../../engine/checks/bareTop'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import { newProject } from '../../../engine/project/defaults'
import type { Cabinet, Project } from '../../../engine/project/document'
import type { NewKind } from '../../../engine/project/readyKinds'
import type { Appliance, ApplianceSpace } from '../../../engine/project/space'
import { newCabinetAt } from '../../../engine/runs/place'
import { dimensionsOf } from '../../../engine/thrift/freedom'
import { aCorner, aRoom, aWall, cabinet, OTHER_WALL, type Said, space, the } from '../../helpers/wall'
import { findingIn, remedied } from './findings'

const CARCASS = 'carcass' as MaterialId
const TOP = { material: CARCASS, overhang: 20, ends: 0, splash: 0, banding: 0 }
const SINK = { of: 'sink', width: 480, depth: 400, fromFront: 70 } as const

function topped(...cabinets: readonly Cabinet[]): Project {
  return applyEdit(aWall(...cabinets), { kind: 'editBetween', change: { countertop: TOP } })
}
const base = (mark: string, left: number, width: number, said: Said = {}) => cabinet(mark, { left, width, ...said })
/** Between bases of 600: from 1200 to 1800. */
const among = (of: Appliance, said: Said = {}, asks: Partial<ApplianceSpace> = {}) =>
  topped(base('B1', 600, 600), space('S1', of, { left: 1200, width: 600, ...said }, asks), base('B2', 1800, 600))

describe('a space for an appliance', () => {
  it('is too narrow by what its maker asks for, and widened in one step where there is room', () => {
    const narrow = topped(base('B1', 600, 500), space('S1', 'dishwasher', { left: 1200, width: 590 }, { width: 605 }))
    const told = findingIn(narrow, /asks for/)!
    expect(told).toMatchObject({ weight: 'stop', measure: '590 mm', limit: '605 mm' })
    expect(told.source).toMatch(/from its maker/)
    const after = remedied(narrow, told)
    expect([the(after, 'S1').left, the(after, 'S1').width]).toEqual([1200, 605])
    expect(findingIn(after, /asks for/)).toBeNull()
    // Between two bases there is none.
    expect(findingIn(among('dishwasher', {}, { width: 605 }), /asks for/)!.remedy).toBeUndefined()
  })
  it('may be wider, higher and deeper: the rest is play', () => {
    expect(findingIn(among('dishwasher', {}, { width: 598, height: 815, depth: 550 }), /asks for/)).toBeNull()
  })
  it('is too low under its top, or so shallow that the appliance stands out', () => {
    // Bases are 868 high and 580 deep.
    expect(findingIn(among('washingMachine', {}, { height: 880 }), /high; the washing machine/)).toMatchObject({
      ...{ weight: 'stop', measure: '868 mm', limit: '880 mm' },
    })
    const deep = findingIn(among('washingMachine', {}, { depth: 620 }), /stand out by/)!
    expect(deep).toMatchObject({ weight: 'mind', measure: '580 mm', limit: '620 mm' })
    expect(deep.message).toContain('out by 40 mm')
  })
  it('is as high as the bases beside it, or the countertop cannot go on', () => {
    const uneven = among('dishwasher', { height: 850 })
    const told = findingIn(uneven, /cannot go on level/)!
    expect(told).toMatchObject({ weight: 'mind', measure: '850 mm', limit: '868 mm' })
    const after = remedied(uneven, told)
    expect(the(after, 'S1').height).toBe(868)
    expect(findingIn(after, /cannot go on level/)).toBeNull()
  })
  it('defers to makers, local codes and licensed trades', () => {
    for (const of of ['dishwasher', 'washingMachine', 'fridge', 'range'] as const) {
      const told = findingIn(among(of), /licensed trades/)!
      expect(told.weight).toBe('know')
      expect(told.message).toMatch(/local codes come first/)
    }
  })
  it('is asked neither to be anchored nor to be carried in', () => {
    const tall = { ...space('S1', 'fridge', { left: 1200 }), kind: 'tall', height: 1900 } as const
    expect(findingIn(aWall(tall), /fix it to the wall/)).toBeNull()
    expect(findingIn(aWall({ ...tall, space: undefined, number: 9 } as never), /fix it to the wall/)).not.toBeNull()
  })
})

describe('a space in a project of inches', () => {
  it('begins at the sizes of inches: as high as a base, a range as high as the top', () => {
    const project = newProject('in')
    const at = (what: NewKind) => {
      const { width, height, depth, space: asked } = newCabinetAt(project, what, 0)!
      return [width, height, depth, asked!.width, asked!.height].map((length) => Math.round(length * 1000) / 25_400)
    }
    const { height, depth } = project.newCabinets.base
    const [low, deep] = [height, depth].map((length) => Math.round(length * 1000) / 25_400) as [number, number]
    expect(at('dishwasherSpace')).toEqual([24, low, deep, 24, 34])
    expect(at('rangeSpace')).toEqual([30, low + 1.5, deep, 30, low + 1.5])
    expect(at('tallFridgeSpace')).toEqual([36, 70, deep, 36, 70])
  })
})

describe('thrift', () => {
  it('leaves the height of a tall fridge as it is', () => {
    const fridge = { ...space('S1', 'fridge', { left: 600, height: 1900 }), kind: 'tall' } as const
    const open = (...cabinets: readonly Cabinet[]) => dimensionsOf(aWall(...cabinets)).map(({ name }) => name)
    expect(open(cabinet('T1'), fridge).filter((name) => name === 'height of the talls')).toHaveLength(1)
    expect(open(fridge)).not.toContain('height of the talls')
  })
})

describe('a countertop over appliances', () => {
  it('wants a panel at the free end of a run, put there in one step as a part', () => {
    const ended = topped(base('B1', 600, 600), space('S1', 'dishwasher', { left: 1200, width: 600 }))
    const told = findingIn(ended, /nothing holds the right end/)!
    expect(told.weight).toBe('mind')
    const after = remedied(ended, told)
    expect(findingIn(after, /nothing holds/)).toBeNull()
    const [panel] = derive(after).cabinets.find(({ mark }) => mark === 'S1')!.parts
    expect(panel).toMatchObject({ role: 'rightEnd', length: 868, width: 580 + 18 })
  })
  it('lies on a cleat where the wall ends there', () => {
    // The wall is 3600 long.
    const atWall = topped(base('B1', 2400, 600), space('S1', 'dishwasher', { left: 3000, width: 600 }))
    expect(findingIn(atWall, /screw a cleat on there/)).toMatchObject({ weight: 'know' })
    expect(findingIn(atWall, /nothing holds/)).toBeNull()
  })
  it('is not held by a range that stands there, and gets its panel of the play', () => {
    const beside = topped(
      base('B1', 600, 600),
      space('S1', 'dishwasher', { left: 1200, width: 620 }),
      space('S2', 'range', { left: 1820, width: 600 }),
      base('B2', 2420, 600),
    )
    const told = findingIn(beside, /nothing holds the right end/)!
    const after = remedied(beside, told)
    // 620 less a panel of 18; 600 are asked for.
    expect(the(after, 'S1')).toMatchObject({ width: 620 - 18, beside: { right: { kind: 'panel', foot: 'floor' } } })
    expect(findingIn(after, /nothing holds|screw a cleat/)).toBeNull()
  })
  it('is held by bases at both sides, and over one appliance stiff enough', () => {
    expect(findingIn(among('dishwasher'), /nothing holds|nothing under it/)).toBeNull()
  })
  it('gives too much over two that stand side by side, until a panel stands between', () => {
    const two = topped(
      base('B1', 0, 500),
      space('S1', 'washingMachine', { left: 500, width: 640 }),
      space('S2', 'washingMachine', { left: 1140, width: 640 }),
      base('B2', 1780, 600),
    )
    const told = findingIn(two, /nothing under it/)!
    // P L^3 / (48 E I), I = b t^3 / 12: 90.72 kg over 1280, of a board 618 by 18 with E 9000 (S02 of general mechanics).
    const inertia = ((580 + 18 + 20) * 18 ** 3) / 12
    const gives = (200 * 0.45359237 * 9.80665 * 1280 ** 3) / (48 * 9000 * inertia)
    expect(told.measure).toBe(`${gives.toFixed(1)} mm`)
    expect(told.limit).toBe(`${(1280 / 144).toFixed(1)} mm`)
    // Each asks for 600 of its 640, so that a panel of 18 takes of its play.
    const after = remedied(two, told)
    expect([the(after, 'S1').width, the(after, 'S2').left]).toEqual([640 - 18, 1140])
    expect(findingIn(after, /nothing under it/)).toBeNull()
    const tight = applyEdit(two, {
      kind: 'setSpace',
      ids: [the(two, 'S1').id],
      space: { ...the(two, 'S1').space!, width: 630 },
    })
    expect(findingIn(tight, /nothing under it/)!.remedy).toBeUndefined()
  })
  it('gives by the third power of its span', () => {
    const board = { depth: 600, thickness: 20, stiffness: 9000 }
    // 1000 N x 600^3 / (48 x 9000 x 600 x 20^3 / 12) = 2.16e11 / 1.728e11.
    expect(giveInMiddle(600, board, 1000)).toBeCloseTo(1.25, 9)
    expect(giveInMiddle(1200, board, 1000)).toBeCloseTo(8 * 1.25, 9)
  })
})

describe('what cooks ask for beside appliances', () => {
  it('is 36 in at most from a dishwasher to the sink at its wall', () => {
    const sinkAt = (left: number) =>
      topped(
        base('B1', left, 600, { cutout: SINK }),
        base('B2', 600 + left, 1500 - left),
        space('S1', 'dishwasher', { left: 2100, width: 600 }),
        base('B3', 2700, 600),
      )
    // The sink is 480 wide in the middle of 600: its right edge is at left + 540.
    expect(findingIn(sinkAt(600), /edge of the sink/)).toMatchObject({
      measure: '960 mm',
      limit: '914.4 mm',
      weight: 'know',
    })
    expect(findingIn(sinkAt(700), /edge of the sink/)).toBeNull()
  })
  it('is measured across the room where the sink is at the facing wall', () => {
    const across = (apart: number) => {
      const washer = space('S1', 'dishwasher', { left: 2000, width: 600, depth: 570, wall: 'w3' as WallId })
      const room = aRoom(base('B1', 1000, 600, { cutout: SINK }), washer)
      const walls = Object.fromEntries(
        Object.entries(room.walls).map(([id, wall]) => [
          id,
          id === 'w2' || id === 'w4' ? { ...wall, length: apart } : wall,
        ]),
      )
      return applyEdit({ ...room, walls }, { kind: 'editBetween', change: { countertop: TOP } })
    }
    // The front edge of the sink is 580 + 20 - 70 = 530 out, the dishwasher 570 deep: 2800 - 530 - 570 between, side by side.
    const finding = findingIn(across(2800), /edge of the sink/)
    expect(finding).toMatchObject({ measure: '1700 mm', limit: '914.4 mm' })
    expect(finding?.message).toContain('across the room')
    expect(findingIn(across(2000), /edge of the sink/)).toBeNull()
  })
  it('is 12 in of countertop at one side of a range and 15 in at the other', () => {
    const beside = (left: number, right: number) =>
      topped(base('B1', 1200 - left, left), space('S1', 'range', { left: 1200, width: 600 }), base('B2', 1800, right))
    // 12 in is 304.8 mm and 15 in is 381 mm.
    expect(findingIn(beside(300, 400), /beside it; cooks/)).toMatchObject({ measure: '300 mm', limit: '304.8 mm' })
    expect(findingIn(beside(310, 370), /beside it; cooks/)).toMatchObject({ measure: '370 mm', limit: '381 mm' })
    expect(findingIn(beside(310, 390), /beside it; cooks/)).toBeNull()
  })
  it('is 15 in of countertop beside a tall fridge', () => {
    const tall = {
      ...space('S1', 'fridge', { left: 1200, width: 600 }, { isTopOver: false }),
      kind: 'tall',
      height: 1900,
    } as const
    expect(findingIn(topped(base('B1', 850, 350), tall), /beside it; cooks/)).toMatchObject({ measure: '350 mm' })
    expect(findingIn(topped(base('B1', 800, 400), tall), /beside it; cooks/)).toBeNull()
  })
})

describe('a range', () => {
  const under = (bottom: number) => {
    const project = among('range', { height: 900 }, { height: 900 })
    return applyEdit(project, { kind: 'addCabinet', cabinet: cabinet('U1', { left: 1200, width: 600, bottom }) })
  }
  it('has 30 in free to what burns over it, like a hob', () => {
    // 762 over 900 is 1662.
    expect(findingIn(under(1600), /over its range/)).toMatchObject({
      weight: 'mind',
      measure: '700 mm',
      limit: '762 mm',
    })
    expect(findingIn(under(1500), /over its range/)).toMatchObject({ weight: 'stop', measure: '600 mm' })
    expect(findingIn(under(1662), /over its range/)).toBeNull()
  })
  it('stands 10 in off a tall beside it, and 15 in off an inside corner', () => {
    const tall = aWall(space('S1', 'range', { left: 1200, width: 600 }), cabinet('T1', { left: 1900, width: 600 }))
    expect(findingIn(tall, /a side that rises/)).toMatchObject({ measure: '100 mm', limit: '254 mm' })
    const corner = aCorner(
      space('S1', 'range', { left: 2300, width: 600 }),
      cabinet('B1', { wall: OTHER_WALL, left: 0, width: 600, front: { kind: 'pair' } }),
    )
    // The face of B1 is 580 + 18 from the corner at 3600.
    expect(findingIn(corner, /inside corner/)).toMatchObject({ measure: `${3600 - 598 - 2900} mm`, limit: '381 mm' })
  })
})
