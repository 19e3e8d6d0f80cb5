import { describe, expect, it } from 'vitest'
import type { MaterialId } from '../../../engine/basics/id'
import { applyEdit } from '../../../engine/project/apply'
import type { Cabinet, Countertop, Cutout, Project } from '../../../engine/project/document'
import type { Appliance } from '../../../engine/project/space'
import { usualSpace } from '../../../engine/project/usualSpace'
import { newCabinetAt } from '../../../engine/runs/place'
import { aWall, cabinet, the, withWall } from '../../helpers/wall'
import { findingIn, remedied } from './findings'

const CARCASS = 'carcass' as MaterialId
const TOP: Countertop = { material: CARCASS, overhang: 20, ends: 0, splash: 0, banding: 0 }
/** Bases are 868 high and the top is 18 thick. */
const SURFACE = 868 + 18
const HOB: Cutout = { of: 'hob', width: 560, depth: 490, fromFront: 55 }
const SINK: Cutout = { ...HOB, of: 'sink' }

function topped(project: Project, top: Partial<Countertop> = {}): Project {
  return applyEdit(project, { kind: 'editBetween', change: { countertop: { ...TOP, ...top } } })
}
const base = (mark: string, left: number, width: number, cutout: Cutout | null = null) =>
  cabinet(mark, { left, width, cutout })
const over = (bottom: number, more: Partial<Cabinet> = {}) =>
  cabinet('U1', { left: 1200, width: 600, bottom, height: 600, ...more })

describe('what hangs over a hob', () => {
  const OVER = /over its hob/
  // 30 in is 762 mm, 24 in is 609.6 mm.
  const row = [base('B1', 600, 600), base('B2', 1200, 600, HOB), base('B3', 1800, 600)]
  const hung = (bottom: number) => topped(aWall(...row, over(bottom)))

  it('is told nearer than 30 in, gravely nearer than 24 in, and hung higher in one step', () => {
    const near = findingIn(hung(SURFACE + 700), OVER)!
    expect(near).toMatchObject({ weight: 'mind', measure: '700 mm', limit: '762 mm' })
    expect(near.message).toContain('local codes come first')
    expect(findingIn(hung(SURFACE + 600), OVER)).toMatchObject({ weight: 'stop', measure: '600 mm' })
    const after = remedied(hung(SURFACE + 700), near)
    expect(the(after, 'U1').bottom).toBe(SURFACE + 762)
    expect(findingIn(after, OVER)).toBeNull()
  })
  it('is of no concern at 762, beside the hob, or over a sink', () => {
    expect(findingIn(hung(SURFACE + 762), OVER)).toBeNull()
    expect(findingIn(topped(aWall(...row, over(1400, { left: 1800 }))), OVER)).toBeNull()
    const sink = [base('B1', 600, 600), base('B2', 1200, 600, SINK)]
    expect(findingIn(topped(aWall(...sink, over(1400))), OVER)).toBeNull()
  })
  it('may be a light rail', () => {
    const railed = applyEdit(hung(SURFACE + 770), {
      kind: 'editBetween',
      change: { lightRail: { material: CARCASS, height: 40, forward: 0 } },
    })
    expect(findingIn(railed, OVER)).toMatchObject({ measure: '730 mm' })
    expect(findingIn(railed, OVER)!.message).toContain('the light rail UL1')
  })
})

describe('an upper beside a hob', () => {
  it('is told deeper than 13 in, and nearer than 10 in', () => {
    const beside = (depth: number, left = 1800) =>
      topped(
        aWall(base('B1', 600, 600), base('B2', 1200, 600, HOB), base('B3', 1800, 900), over(1700, { left, depth })),
      )
    // 13 in is 330.2 mm; the hob ends at 1780, and 10 in from there is 2034.
    expect(findingIn(beside(350), /beside its hob is/)).toMatchObject({
      weight: 'know',
      measure: '350 mm',
      limit: '330.2 mm',
    })
    expect(findingIn(beside(330), /beside its hob is/)).toBeNull()
    expect(findingIn(beside(350, 2040), /beside its hob is/)).toBeNull()
  })
})

describe('what rises beside a hob', () => {
  const BESIDE = /a side that rises/
  it('is told nearer than 10 in: a tall, or the end of the wall', () => {
    const tall = cabinet('T1', { left: 1800, width: 600 })
    // The hob is 560 wide in the middle of 600: 20 from the tall.
    const project = topped(aWall(base('B1', 1200, 600, HOB), tall))
    expect(findingIn(project, BESIDE)).toMatchObject({ weight: 'mind', measure: '20 mm', limit: '254 mm' })
    const end = topped(aWall(base('B1', 233, 600, HOB)))
    expect(findingIn(end, BESIDE)).toMatchObject({ measure: '253 mm' })
    expect(findingIn(topped(aWall(base('B1', 234, 600, HOB))), BESIDE)).toBeNull()
  })
})

describe('countertop beside a sink and a hob', () => {
  const LANDING = /of countertop beside it/
  it('is measured to the end of the top, or to what else is let in', () => {
    // A sink asks for 609.6 and 457.2. From 1220: 620 at its left; 20 + 420 to the right end at 2220.
    const row = (last: number) =>
      topped(aWall(base('B1', 600, 600), base('B2', 1200, 600, SINK), base('B3', 1800, last)))
    expect(findingIn(row(420), LANDING)).toMatchObject({ weight: 'know', measure: '440 mm', limit: '457.2 mm' })
    expect(findingIn(row(438), LANDING)).toBeNull()
  })
  it('is short at the wider side too', () => {
    const project = topped(aWall(base('B1', 700, 500), base('B2', 1200, 600, SINK), base('B3', 1800, 500)))
    expect(findingIn(project, LANDING)).toMatchObject({ measure: '520 mm', limit: '609.6 mm' })
  })
})

describe('the basin of a bathroom', () => {
  const KITCHEN = /its sink has .* of countertop beside it|to prepare food on/
  // 480 deep with a front of 18 and an overhang of 20: 518, and 22 in is 558.8.
  const stand = (depth: number) => ({ ...base('B1', 600, 600, { ...SINK, width: 480, depth: 400 }), depth })
  const beside = (of: Appliance) => ({ ...base('B2', 1800, 600), ...usualSpace(aWall(), of, 'base') })

  it('is asked for no countertop to cook on, and gets its cut-out in one step', () => {
    expect(findingIn(topped(aWall(stand(480))), KITCHEN)).toBeNull()
    const vanity = newCabinetAt(topped(aWall()), 'vanityBase', 0, 600)!
    const project = applyEdit(topped(aWall()), { kind: 'addCabinet', cabinet: vanity })
    const uncut = findingIn(project, /open at its top for a sink/)!
    expect(uncut.remedy?.label).toBe('Let a sink into the top over B1')
    expect(findingIn(remedied(project, uncut), KITCHEN)).toBeNull()
  })
  it('is a sink where its top is as deep as that of a kitchen, and beside what cooks or washes dishes', () => {
    expect(findingIn(topped(aWall(stand(580))), KITCHEN)).toMatchObject({ weight: 'know', limit: '457.2 mm' })
    for (const of of ['dishwasher', 'range', 'fridge'] as const) {
      const kitchen = topped(aWall(stand(480), beside(of)))
      expect(findingIn(kitchen, KITCHEN), of).not.toBeNull()
    }
    expect(findingIn(topped(aWall(stand(480), beside('washingMachine'))), KITCHEN)).toBeNull()
    expect(findingIn(topped(aWall(stand(480), { ...base('B2', 1800, 600, HOB), depth: 580 })), KITCHEN)).not.toBeNull()
  })
})

describe('a window behind the countertop', () => {
  const WINDOW = { kind: 'window', left: 800, bottom: 950, width: 500, height: 900 } as const
  const row = aWall(base('B1', 600, 900))
  const behind = (splash: number) => withWall(topped(row, { splash }), {}, WINDOW)

  it('is not covered by the splash, which is lowered in one step', () => {
    const finding = findingIn(behind(80), /its splash reaches/)!
    expect(finding).toMatchObject({ weight: 'mind', measure: `${SURFACE + 80} mm`, limit: '950 mm' })
    const after = remedied(behind(80), finding)
    expect(after.between.countertop!.splash).toBe(950 - SURFACE)
    expect(findingIn(after, /its splash reaches/)).toBeNull()
  })
  it('is of no concern above the splash or beside the top', () => {
    expect(findingIn(behind(64), /its splash reaches/)).toBeNull()
    expect(findingIn(withWall(topped(row, { splash: 80 }), {}, { ...WINDOW, left: 1500 }), /its splash/)).toBeNull()
  })
})
