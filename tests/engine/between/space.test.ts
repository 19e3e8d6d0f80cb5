import { describe, expect, it } from 'vitest'
import type { MaterialId } from '../../../engine/basics/id'
import { boxOf } from '../../../engine/cabinets/boardBox'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import { type Beside, type Between, type Cabinet, NOTHING_BESIDE, type Project } from '../../../engine/project/document'
import { readProject, writeProject } from '../../../engine/project/schema'
import type { Appliance, ApplianceSpace } from '../../../engine/project/space'
import { aCorner, aWall, cabinet, OTHER_WALL, type Said, space } from '../../helpers/wall'

const CARCASS = 'carcass' as MaterialId
/** 18 thick; it stands 20 before the fronts, and 15 past a free end. */
const TOP = { material: CARCASS, overhang: 20, ends: 15, splash: 0, banding: 0 }
const PANEL: Beside = { kind: 'panel', material: CARCASS, foot: 'floor' }

function over(project: Project, change: Partial<Between> = {}): Project {
  return applyEdit(project, { kind: 'editBetween', change: { kick: 'inLengths', countertop: TOP, ...change } })
}
/** A base of 500 from 200, a space of 610 and a base of 700: their ends are at 200 and 2010. */
function between(of: Appliance, said: Said = {}, asks: Partial<ApplianceSpace> = {}): Project {
  return aWall(
    cabinet('B1', { left: 200, width: 500 }),
    space('S1', of, { left: 700, width: 610, ...said }, asks),
    cabinet('B2', { left: 1310, width: 700 }),
  )
}
const lengths = (project: Project, kind: string) =>
  derive(project)
    .runs.filter((run) => run.kind === kind)
    .map(({ mark, parts }) => `${mark} ${parts.map(({ length }) => length).join('+')}`)
const partsOf = (project: Project, mark: string) =>
  derive(project)
    .cabinets.find((one) => one.mark === mark)!
    .parts.map(({ name, length, width }) => `${name} ${length} x ${width}`)

describe('a space for an appliance between two bases', () => {
  it('has no boards of its own', () => {
    expect(partsOf(over(between('dishwasher')), 'S1')).toEqual([])
    expect(derive(over(between('dishwasher'))).cabinets.map(({ mark }) => mark)).toEqual(['B1', 'S1', 'B2'])
  })
  it('is bridged by the countertop and, before a dishwasher, by the kick', () => {
    const project = over(between('dishwasher'))
    expect(lengths(project, 'countertop')).toEqual([`BT1 ${15 + 500 + 610 + 700 + 15}`])
    expect(lengths(project, 'kick')).toEqual([`BK1 ${500 + 610 + 700}`])
  })
  it('parts the kick and not the countertop at a washing machine', () => {
    const project = over(between('washingMachine'))
    expect(lengths(project, 'countertop')).toEqual([`BT1 ${15 + 500 + 610 + 700 + 15}`])
    expect(lengths(project, 'kick')).toEqual(['BK1 500', 'BK2 700'])
  })
  it('parts both at a range, up to which the countertop goes and no further', () => {
    const project = over(between('range'))
    expect(lengths(project, 'countertop')).toEqual([`BT1 ${15 + 500}`, `BT2 ${700 + 15}`])
    expect(lengths(project, 'kick')).toEqual(['BK1 500', 'BK2 700'])
    // However low it is said to be.
    const low = over(between('range', { height: 800 }))
    expect(lengths(low, 'countertop')).toEqual([`BT1 ${15 + 500}`, `BT2 ${700 + 15}`])
  })
  it('leaves the ends of the countertop and its splash beside a range seen, which are banded as free ones are', () => {
    const banded = { ...TOP, splash: 80, banding: 2 }
    const bands = (project: Project) =>
      derive(over(project, { countertop: banded }))
        .runs.filter(({ kind }) => kind === 'countertop')
        .map(({ parts }) => parts.map(({ banding: { start, end } }) => `${start} ${end}`).join(', '))
    // The first ends free at its left and beside the range at its right, the second the other way round.
    expect(bands(between('range'))).toEqual(['2 2, 2 2', '2 2, 2 2'])
    // Beside what is as high as a tall it is closed, as by a panel beside a high fridge; by the fridge itself it is not.
    const beside = (cabinetThere: Cabinet) => bands(aWall(cabinet('B1', { left: 200, width: 500 }), cabinetThere))
    expect(beside(cabinet('T1', { left: 700 }))).toEqual(['2 0, 2 0'])
    const fridge = (left: Beside) => ({
      ...space('S1', 'range', { left: 700, width: 700, height: 1800, beside: { left, right: NOTHING_BESIDE.right } }),
      ...{ kind: 'tall' as const, left: left.kind === 'none' ? 700 : 718 },
    })
    expect(beside(fridge(NOTHING_BESIDE.left))).toEqual(['2 2, 2 2'])
    expect(beside(fridge(PANEL))).toEqual(['2 0, 2 0'])
  })
  it('is chosen otherwise one by one', () => {
    const swapped = over(between('dishwasher', {}, { isTopOver: false, isKickBefore: true }))
    expect(lengths(swapped, 'countertop')).toEqual([`BT1 ${15 + 500}`, `BT2 ${700 + 15}`])
    expect(lengths(swapped, 'kick')).toEqual([`BK1 ${500 + 610 + 700}`])
  })
  it('has a kick board of its own where each cabinet has, in line with those beside it', () => {
    const project = over(between('dishwasher'), { kick: 'perCabinet' })
    expect(partsOf(project, 'S1')).toEqual(['kick board 610 x 100'])
    const [kick] = derive(project).cabinets.find(({ mark }) => mark === 'S1')!.parts
    const { floor } = project.methods[project.method]!
    if (floor.kind === 'none') throw new Error('the usual method has a floor')
    expect(boxOf(kick!).max.z).toBe(580 - floor.setback)
    expect(partsOf(over(between('range'), { kick: 'perCabinet' }), 'S1')).toEqual([])
  })
  it('gives the top over it alone the depth of the fronts beside it', () => {
    const alone = over(aWall(space('S1', 'dishwasher', { left: 700, width: 610 })))
    const [top] = derive(alone).runs.filter(({ kind }) => kind === 'countertop')
    // The carcass is 580 deep and its front 18 thick.
    expect(top!.place.depth).toBe(580 + 18 + 20)
    expect(top!.mark).toBe('ST1')
  })
})

describe('the appliance in its space', () => {
  const bodies = (project: Project) => derive(project).cabinets.find(({ mark }) => mark === 'S1')!.bodies
  const asks = { width: 598, height: 820, depth: 550 }
  it('stands in the middle of its play, its door in line with the fronts and its foot behind the kick', () => {
    const [body, foot] = bodies(over(between('dishwasher', {}, asks)))!
    const x = { min: (610 - 598) / 2, max: (610 + 598) / 2 }
    expect(body).toEqual({ min: { x: x.min, y: 100, z: 580 - 550 }, max: { x: x.max, y: 820, z: 580 + 18 } })
    // The kick is 60 behind the front edge and 18 thick, and 10 is left behind it.
    expect(foot).toEqual({ min: { x: x.min, y: 0, z: 30 }, max: { x: x.max, y: 100, z: 580 - 60 - 18 - 10 } })
  })
  it('stands on the floor in one piece where no kick goes on before it, and in no cabinet', () => {
    const project = over(between('range', {}, asks))
    expect(bodies(project)).toEqual([{ min: { x: 6, y: 0, z: 30 }, max: { x: 604, y: 820, z: 598 } }])
    expect(derive(project).cabinets.find(({ mark }) => mark === 'B1')!.bodies).toBeUndefined()
  })
})

describe('a panel beside a space', () => {
  it('is a part as high as the bases and as deep as their fronts, over which the top goes on and at which the kick stops', () => {
    const plain = aWall(
      cabinet('B1', { left: 200, width: 500 }),
      space('S1', 'dishwasher', { left: 700, width: 610, beside: { ...NOTHING_BESIDE, right: PANEL } }),
    )
    const project = over(plain)
    expect(partsOf(project, 'S1')).toEqual([`right end 868 x ${580 + 18}`])
    expect(lengths(project, 'countertop')).toEqual([`BT1 ${15 + 500 + 610 + 18 + 15}`])
    expect(lengths(project, 'kick')).toEqual([`BK1 ${500 + 610}`])
  })
  it('is all that can stand there: a filler has no side to be screwed to', () => {
    const filled = between('dishwasher', {
      beside: { ...NOTHING_BESIDE, left: { kind: 'filler', width: 30, scribe: 0 } },
    })
    const told = derive(filled).problems.filter(({ message }) => /no side to be screwed to/.test(message))
    expect(told.map(({ weight }) => weight)).toEqual(['stop'])
  })
})

describe('a space for an appliance at the second wall', () => {
  it('goes under the top of its own wall', () => {
    const project = over(
      aCorner(
        cabinet('B1', { left: 800, width: 500, wall: OTHER_WALL }),
        space('S1', 'dishwasher', { left: 1300, width: 600, wall: OTHER_WALL }),
        cabinet('B2', { left: 1900, width: 400, wall: OTHER_WALL }),
      ),
    )
    expect(lengths(project, 'countertop')).toEqual([`BT1 ${15 + 500 + 600 + 400 + 15}`])
  })
})

describe('the file of a project with a space for an appliance', () => {
  const project = over(between('dishwasher'))
  it('is read as it was written', () => {
    expect(readProject(writeProject(project))).toEqual({ ok: true, value: project })
  })
  it.each([
    ['of an unknown appliance', (text: string) => text.replace('"dishwasher"', '"mangle"'), /cabinets\.s1\.space\.of/],
    [
      'of an upper',
      (text: string) => text.replace(/("s1": ?\{[\s\S]*?"kind": ?)"base"/, '$1"upper"'),
      /an appliance has its space on the floor/,
    ],
    [
      'without its height',
      (text: string) => text.replace(/("space": ?\{[^}]*?)"height": ?\d+,/, '$1'),
      /cabinets\.s1\.space\.height/,
    ],
  ])('is refused %s', (_, spoil, words) => {
    const outcome = readProject(spoil(writeProject(project)))
    expect(outcome.ok ? 'read' : outcome.message).toMatch(words)
  })
  it('numbers its spaces by themselves: S1 beside B1, and never two of one number', () => {
    const outcome = readProject(writeProject(aWall(space('S1', 'range'), { ...space('S2', 'range'), number: 1 })))
    expect(outcome.ok ? 'read' : outcome.message).toMatch(/number is 1, which another space for an appliance has/)
  })
})
