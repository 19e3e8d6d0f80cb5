import { describe, expect, it } from 'vitest'
import type { MaterialId } from '../../engine/basics/id'
import { derive } from '../../engine/pipeline'
import { newProject } from '../../engine/project/defaults'
import type { Cabinet, CabinetKind, Cutout, Project } from '../../engine/project/document'
import { startOf } from '../../engine/project/ready'
import { newCabinetAt } from '../../engine/runs/place'
import { inch, settle } from '../../engine/units/length'
import { findingIn } from '../engine/checks/findings'
import { aCorner, aWall, cabinet, OTHER_WALL, type Said, space } from '../helpers/wall'
import { base, HOB, SINK, topped } from './kitchens'

/** The first cabinet of a kind that is put into a new project, in inches unless said. */
function first(kind: CabinetKind, unit: 'mm' | 'in' = 'in'): { project: Project; made: Cabinet } {
  const plain = newProject(unit)
  const made = newCabinetAt(plain, kind, 0)!
  return { project: { ...plain, cabinets: { [made.id]: made } as Project['cabinets'] }, made }
}

describe('the cabinets of a new inch project', () => {
  // Source: kitchen plan pages, 98905.com: 'The overall height is 34 1/2 inches, which includes ... the toe-kick'; a top of 1 1/2.
  it('are bases of 34 1/2 in, 36 under a top of 1 1/2', () => {
    const { made } = first('base')
    expect(settle(made.bottom + made.height)).toBe(inch(34.5))
    expect(settle(made.height + inch(1.5))).toBe(inch(36))
  })
  // Source: the same pages: 'The standard depth for base cabinets is 24 inches'.
  it('are 24 in deep with their fronts, but for what ply lacks of its name', () => {
    const { project, made } = first('base')
    const front = project.materials['front' as MaterialId]!
    expect(settle(made.depth + front.nominal)).toBe(inch(24))
    expect(settle(made.depth + front.thickness)).toBeGreaterThan(inch(24 - 1 / 16))
  })
  // Source: the same pages: 'these units get wider in 3-inch increments', one door to 21 or 24 in and a pair above.
  it('come in steps of 3 in, with one door as wide as 24 in and none wider without a word', () => {
    const { project, made } = first('base')
    expect(project.grid).toBe(inch(3))
    const wide = (width: number) =>
      findingIn(
        { ...project, cabinets: { [made.id]: { ...made, width, front: { kind: 'door', hinge: 'left' } } } },
        /is the most for one door/,
      )
    expect(wide(inch(24))).toBeNull()
    expect(wide(inch(27))?.source).toContain('98905.com')
    expect(settle(made.width / project.grid)).toBe(8)
  })
  // Source: a page of dimensions, limitedfilco.com: 'Upper/Wall cabinets - mostly 12" deep', 30 high typically.
  it('are uppers of 12 by 30 in', () => {
    const { made } = first('upper')
    expect([made.depth, made.height]).toEqual([inch(12), inch(30)])
  })
  // Source: a dealer's glossary: '54 from the floor'; and 18 in over the counter by the university extension LSU AgCenter.
  it('hang 54 in over the floor: a base of 34 1/2, a top of 1 1/2 and 18 between', () => {
    const { made } = first('upper')
    expect(made.bottom).toBe(inch(54))
    expect(made.bottom).toBe(settle(first('base').made.height + inch(1.5) + inch(18)))
  })
  // Source: a forum page on custom cabinets, 'TK notch 3" in depth by 4" in height'; 4 1/2 in is stocked too.
  it('have kicks of 4 to 4 1/2 in, about 3 in deep where the sides are notched', () => {
    const floors = Object.values(newProject('in').methods).map(({ floor }) => floor)
    const notched = floors.filter((floor) => floor.kind === 'notched')
    expect(notched.length).toBeGreaterThan(0)
    for (const { height, setback } of notched) {
      expect(height).toBeGreaterThanOrEqual(inch(4))
      expect(height).toBeLessThanOrEqual(inch(4.5))
      expect(Math.abs(setback - inch(3))).toBeLessThan(inch(1 / 16))
    }
  })
  // Source: a counter maker's page, 25 to 26 in (635 to 660 mm). The overhang, 1 to 1 1/2 in: common practice, no source.
  it.each([1, 1.5])('have tops of 25 to 26 in where these stand out %f in', (overhang) => {
    const { project } = first('base')
    const [top] = derive(topped(project, { overhang: inch(overhang) })).runs[0]!.parts
    expect(top!.width).toBeGreaterThan(inch(25 - 1 / 16))
    expect(top!.width).toBeLessThanOrEqual(inch(26))
  })
})

describe('the cabinets of a new metric project', () => {
  // Source: published site lines: 900 less a top of 32 is 868.
  it('have their bases end at 868 for a worktop at 900', () => {
    expect(first('base', 'mm').made.height).toBe(900 - 32)
  })
  // Source: a UK page of unit sizes: height 720, depth 560 to 600; plinths vary. Uppers of 720 are usual too.
  it('are between 560 and 600 deep, and uppers 720 high', () => {
    const { made } = first('base', 'mm')
    expect(made.depth).toBeGreaterThanOrEqual(560)
    expect(made.depth).toBeLessThanOrEqual(600)
    expect(first('upper', 'mm').made.height).toBe(720)
  })
  // Source: a trade blog of South Africa, 550 from worktop to wall unit; 450 to 600 elsewhere.
  it('hang between 450 and 600 over a worktop at 900', () => {
    const over = first('upper', 'mm').made.bottom - 900
    expect(over).toBeGreaterThanOrEqual(450)
    expect(over).toBeLessThanOrEqual(600)
  })
})

describe('what is cooked on', () => {
  const row = [base('B1', 600, 600), base('B2', 1200, 600, { cutout: HOB }), base('B3', 1800, 900)]
  const upper = (said: Said) => cabinet('U1', { left: 1200, width: 600, height: 600, ...said })
  const found = (words: RegExp, ...more: readonly Cabinet[]) => findingIn(topped(aWall(...row, ...more)), words)!

  // Source: IRC M1901.1 as inspectors quote it, 'not less than 30 inches'; 24 in (600 mm) under protection: an appliance manual.
  it('has 30 in over it to what burns, 24 under protection, and its maker before all', () => {
    const above = found(/hangs/, upper({ bottom: 868 + 18 + 700 }))
    expect(above.limit).toBe(`${inch(30)} mm`)
    expect(above.source).toMatch(/IRC M1901\.1.*appliance manual/)
    expect(above.message).toMatch(/609\.6 mm under protection.*own paper and local codes come first/)
  })
  // Source: an older US federal minimum property text, '10" min. when vertical side surface extends above countertops'.
  it('has 10 in beside it to what rises', () => {
    const beside = findingIn(topped(aWall(base('B2', 200, 600, { cutout: HOB }))), /a side that rises/)!
    expect(beside.limit).toBe(`${inch(10)} mm`)
    expect(beside.source).toContain('minimum property text')
  })
  // Source: a building-code forum: 'wall cabinets adjacent to a cooktop says they cannot exceed 13" deep'.
  it('has no upper deeper than 13 in beside it', () => {
    const deep = found(/is the most for a wall cabinet/, upper({ left: 1800, bottom: 1700, depth: 350 }))
    expect(deep.limit).toBe('330.2 mm')
    expect(deep.source).toContain('building-code forum')
  })
  // Source: a list after NKBA guidelines, '12 inches on one side - 15 inches on the other side'.
  it('has 12 and 15 in of countertop beside it, a range as a hob', () => {
    const hob = findingIn(topped(aWall(base('B2', 1200, 600, { cutout: HOB }))), /of countertop beside it/)!
    expect(hob.source).toContain('NKBA')
    expect(hob.limit).toBe(`${inch(12)} mm`)
    const range = topped(
      aWall(base('B1', 900, 310), space('S1', 'range', { left: 1210, width: 600 }), base('B2', 1810, 370)),
    )
    expect(findingIn(range, /of countertop beside it/)).toMatchObject({ limit: `${inch(15)} mm` })
    expect(findingIn(range, /of countertop beside it/)!.source).toContain('NKBA')
  })
})

describe('sinks, dishwashers and fridges', () => {
  // Source: LSU AgCenter, Kitchen Design and Space Guidelines: 'Minimum 24 inches ... to one side of primary sink; 18 inches on other side'.
  it('have 24 and 18 in of countertop beside a sink', () => {
    const at = (left: number, right: number) =>
      findingIn(
        topped(
          aWall(
            base('B1', 1200 - left, left),
            base('B2', 1200, 480 + 2 * 60, { cutout: SINK }),
            base('B3', 1800, right),
          ),
        ),
        /of countertop beside it/,
      )
    // Beside the sink are 60 of its own base.
    const [wide, narrow] = [24 * 25.4 - 60, 18 * 25.4 - 60]
    expect(at(wide, narrow)).toBeNull()
    expect(at(wide - 1, narrow)).toMatchObject({ limit: '609.6 mm' })
    expect(at(wide, narrow - 1)).toMatchObject({ limit: '457.2 mm' })
    expect(at(wide, narrow - 1)!.source).toContain('LSU AgCenter')
  })
  // Source: NKBA guideline 12: 'continuous countertop at least 36" wide x 24" deep immediately next to a sink'.
  describe('have 36 by 24 in of countertop to work on next to a sink', () => {
    const WORK = /to prepare food on/
    const sink = (left: number, said: Said = {}) => base('B2', left, 600, { cutout: SINK, ...said })
    /** A metric top of 600 is 24 in deep; beside the sink are 60 of its own base. */
    const at = (left: number, right: number, depth = 580) =>
      aWall(base('B1', 1500 - left, left, { depth }), sink(1500, { depth }), base('B3', 2100, right, { depth }))
    const wide = settle(inch(36) - 60)

    it('at either side of it, one of them for one sink', () => {
      expect(findingIn(topped(at(500, wide)), WORK)).toBeNull()
      expect(findingIn(topped(at(wide, 500)), WORK)).toBeNull()
      const told = findingIn(topped(at(700, wide - 10)), WORK)!
      expect(told).toMatchObject({ weight: 'know', about: { cabinet: 'b2' }, source: 'NKBA planning guideline 12' })
      expect([told.measure, told.limit]).toEqual([`${inch(36) - 10} mm`, `${inch(36)} mm`])
      expect(findingIn(topped(at(500, wide)), /of countertop beside it/)).toBeNull()
      const second = cabinet('B4', { wall: OTHER_WALL, left: 1200, width: 600, cutout: SINK })
      const more = cabinet('B5', { wall: OTHER_WALL, left: 1800, width: 1000 })
      const less = cabinet('B6', { wall: OTHER_WALL, left: 700, width: 500 })
      const both = aCorner(...Object.values(at(700, wide - 10).cabinets), second, more, less)
      expect(findingIn(topped(both), WORK)).toBeNull()
    })

    it('as deep', () => {
      const told = findingIn(topped(at(500, wide, 560)), WORK)!
      expect([told.measure, told.limit]).toEqual(['580 mm', `${inch(24)} mm`])
    })

    it('into a corner too, where the top of the other wall is level and nothing is let into it', () => {
      const round = (cutout: Cutout | null, height = 868) =>
        topped(
          aCorner(
            ...[
              base('B1', 3000, 600, { depth: 580, height, cutout }),
              cabinet('B3', { wall: OTHER_WALL, left: 1600, width: 600 }),
            ],
            cabinet('B2', { wall: OTHER_WALL, left: 600 + 400, width: 600, cutout: SINK }),
            cabinet('B4', { wall: OTHER_WALL, left: 600, width: 400 }),
          ),
        )
      // 600 in the corner, 400 and 60 beside the sink.
      expect(600 + 400 + 60).toBeGreaterThan(inch(36))
      expect(400 + 60).toBeGreaterThan(inch(18))
      expect(findingIn(round(null), WORK)).toBeNull()
      expect(findingIn(round(null), /of countertop beside it/)).toBeNull()
      expect(findingIn(round(HOB), /of countertop beside it/)!.message).toMatch(/^B1/)
      expect(findingIn(round(HOB), WORK)).not.toBeNull()
      expect(findingIn(round(null, 878), WORK)).not.toBeNull()
    })

    it('but not into one where something stands in the corner', () => {
      const said = { wall: OTHER_WALL, depth: 580 }
      const round = (...more: readonly Cabinet[]) =>
        topped(
          aCorner(
            base('B1', 2700, 600, { depth: 580 }),
            cabinet('B4', { ...said, left: 598, width: 402 }),
            cabinet('B2', { ...said, left: 1000, width: 600, cutout: SINK }),
            cabinet('B3', { ...said, left: 1600, width: 600 }),
            ...more,
          ),
        )
      expect(findingIn(round(), WORK)).toBeNull()
      const tall = cabinet('T1', { left: 3300, width: 300, depth: 580 })
      expect(findingIn(round(tall), WORK)!.measure).toBe(`${60 + 600} mm`)
    })
  })
  // Source: LSU AgCenter again, 'Edge of dishwasher within 36 inches of edge of sink'.
  it('have a dishwasher 36 in from the sink at most', () => {
    const far = topped(
      aWall(
        base('B1', 600, 600, { cutout: SINK }),
        base('B2', 1200, 900),
        space('S1', 'dishwasher', { left: 2100, width: 600 }),
      ),
    )
    const told = findingIn(far, /edge of the sink/)!
    expect([told.limit, told.source]).toEqual([`${inch(36)} mm`, expect.stringContaining('LSU AgCenter')])
  })
  // Source: the same, 'Minimum 15 inches counter space on latch side of a refrigerator', or within 48 in across.
  it('have 15 in of countertop beside a fridge', () => {
    const fridge = {
      ...space('S1', 'fridge', { left: 1200, width: 600 }, { isTopOver: false }),
      kind: 'tall',
      height: 1900,
    } as const
    const told = findingIn(topped(aWall(base('B1', 850, 350), fridge)), /of countertop beside it/)!
    expect([told.limit, told.source]).toEqual([`${inch(15)} mm`, expect.stringContaining('LSU AgCenter')])
    expect(told.message).toContain(`within ${inch(48)} mm`)
  })
  // Source: the same, 'Appliances located minimum 15 inches from cabinet corners'.
  it('stand 15 in from an inside corner', () => {
    const project = aCorner(
      space('S1', 'dishwasher', { left: 2300, width: 600 }),
      base('B1', 0, 600, { wall: OTHER_WALL, front: { kind: 'pair' } }),
    )
    const told = findingIn(project, /inside corner/)!
    expect([told.limit, told.source]).toEqual([`${inch(15)} mm`, expect.stringContaining('LSU AgCenter')])
  })
})

describe('what opens in an inside corner', () => {
  // Source: a dealer's glossary: 'at least 3" from the corner ... range or dishwasher, the pull will have to be at least 6"'.
  it.each([
    [{ kind: 'pair' }, 3],
    [{ kind: 'appliance', width: 500, height: 500, air: 0 }, 6],
  ] as const)('is as far from the face round it as the glossary asks for: beside %o %i in', (front, inches) => {
    const project = aCorner(
      base('B1', 3600 - 598 - 600 - 40, 600, { front: { kind: 'pair' } }),
      base('B2', 0, 600, { wall: OTHER_WALL, front }),
    )
    const told = derive(project).problems.find(({ message }) => /^B1: .*what opens is/.test(message))!
    expect([told.limit, told.source]).toEqual([`${inch(inches)} mm`, expect.stringContaining('a dealer glossary')])
  })
})

describe('the knees of who sits at an island', () => {
  // Source: NKBA guideline 9: 24 in each; 30 in high 18 deep, 36 high 15 deep, 42 high 12 deep.
  it.each([
    [30, 18],
    [36, 15],
    [42, 12],
  ])('at a top of %i in have %i in', (high, deep) => {
    const { overrides } = startOf(aWall(), 'islandBase')
    const island = cabinet('B1', {
      left: 500,
      width: 24 * 25.4 * 2,
      height: high * 25.4 - 18,
      overrides,
      top: { rear: 200 },
    })
    const told = findingIn(topped(aWall(island)), /for the knees/)!
    expect(told).toMatchObject({
      limit: `${settle(inch(deep))} mm`,
      source: 'NKBA planning guideline 9; behind seats: NKBA planning guideline 8',
    })
    // Source: NKBA guideline 8: from the edge 32 in behind a seat where nobody passes, 36 to edge past, 44 to walk past.
    const asked = [...told.message.matchAll(/([\d.]+) mm (?=from its edge|where)/g)].map(([, mm]) => Number(mm))
    expect(asked.map((mm) => mm / 25.4)).toEqual([32, 36, 44].map((inches) => expect.closeTo(inches, 1)))
    expect(told.message).toContain('over 2 seats of 609.6 mm')
  })
})
