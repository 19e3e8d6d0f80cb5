import { describe, expect, it } from 'vitest'
import type { MaterialId } from '../../../engine/basics/id'
import { edgeGives, greatestOverhang } from '../../../engine/checks/overhang'
import { applyEdit } from '../../../engine/project/apply'
import type { Countertop, Project } from '../../../engine/project/document'
import { startOf } from '../../../engine/project/ready'
import { aWall, cabinet, the } from '../../helpers/wall'
import { figureOf, findingIn, remedied } from './findings'

const TOP: Countertop = { material: 'carcass' as MaterialId, overhang: 20, ends: 15, splash: 0, banding: 0 }
const { overrides } = startOf(aWall(), 'islandBase')

/** Two islands of 900 beside one another, 868 high under a top of so many mm that stands out behind. */
function island(rear: number, thickness: number, top: Partial<Countertop> = {}): Project {
  const one = { width: 900, overrides, front: { kind: 'pair' }, top: { rear } } as const
  const wall = aWall(cabinet('B1', { ...one, left: 500 }), cabinet('B2', { ...one, left: 1400 }))
  const thick = applyEdit(wall, { kind: 'editMaterial', id: TOP.material, change: { thickness } })
  return applyEdit(thick, { kind: 'editBetween', change: { countertop: { ...TOP, ...top } } })
}
const OUT = /stands out .* with nothing under it/
/** 200 lb on the edge, and 15 lb per square foot all over, in newtons and mm. */
const FORCE = 200 * 0.45359237 * 9.80665
const PRESSURE = (15 * 0.45359237 * 9.80665) / 304.8 ** 2

describe('a board that stands out', () => {
  const board = { width: 600, thickness: 20, stiffness: 10_000 }
  // E I is 10 000 x 600 x 20^3 / 12 = 4e9.
  it('gives P L^3 / (3 E I) under a force on its edge, and w L^4 / (8 E I) under an even load', () => {
    expect(edgeGives(300, board, 400, 0)).toBeCloseTo((400 * 300 ** 3) / (3 * 4e9), 12)
    expect(edgeGives(300, board, 0, 0.001)).toBeCloseTo((0.001 * 600 * 300 ** 4) / (8 * 4e9), 12)
    expect(edgeGives(300, board, 400, 0.001)).toBeCloseTo(0.9 + 0.151875, 12)
  })
  it('gives by the third power under a force, by the fourth under an even load, and an eighth at twice the thickness', () => {
    expect(edgeGives(600, board, 400, 0) / edgeGives(300, board, 400, 0)).toBeCloseTo(8, 9)
    expect(edgeGives(600, board, 0, 0.001) / edgeGives(300, board, 0, 0.001)).toBeCloseTo(16, 9)
    const thick = { ...board, thickness: 40 }
    expect(edgeGives(300, board, 400, 0.001) / edgeGives(300, thick, 400, 0.001)).toBeCloseTo(8, 9)
  })
  it('holds as far as its edge gives 1/144 of that', () => {
    const holds = greatestOverhang(board, 400, 0.001)
    expect(edgeGives(holds, board, 400, 0.001)).toBeCloseTo(holds / 144, 6)
  })
})

describe('a countertop that stands out behind an island', () => {
  it('is told where it gives too much, and let out less in one step', () => {
    const project = island(350, 18)
    const told = findingIn(project, OUT)!
    // 24 in of it carry: E is 9000 and I is 609.6 x 18^3 / 12.
    const bending = 9000 * ((609.6 * 18 ** 3) / 12)
    const gives = (FORCE * 350 ** 3) / (3 * bending) + (PRESSURE * 609.6 * 350 ** 4) / (8 * bending)
    expect(figureOf(told.measure)).toBeCloseTo(gives, 1)
    expect(figureOf(told.limit)).toBeCloseTo(350 / 144, 1)
    const after = remedied(project, told)
    const rear = the(after, 'B1').top!.rear!
    expect(rear).toBeLessThan(350)
    expect(the(after, 'B2').top).toEqual({ rear })
    expect(findingIn(after, OUT)).toBeNull()
  })
  it('holds 350 of a board of 38, and any as far as the usual 20 before the fronts', () => {
    expect(findingIn(island(350, 38), OUT)).toBeNull()
    expect(findingIn(island(0, 18), OUT)).toBeNull()
  })
  it('is told before the fronts and past the ends of the run as well', () => {
    expect(findingIn(island(0, 18, { overhang: 290 }), OUT)!.message).toMatch(/290 mm before its fronts/)
    const ends = island(0, 18, { ends: 290 })
    expect(findingIn(ends, OUT)!.message).toMatch(/290 mm past its free end/)
    expect(findingIn(remedied(ends, findingIn(ends, OUT)!), OUT)).toBeNull()
  })
  it('has seats and knees counted at its height', () => {
    // 868 + 38 is 906 high, nearest to 36 in: 15 in for the knees; 1830 long is three times 24 in.
    const told = findingIn(island(350, 38), /for the knees/)!
    expect(told).toMatchObject({ weight: 'know', measure: '350 mm', limit: '381 mm' })
    expect(told.message).toContain('3 seats')
    expect(findingIn(island(100, 38), /for the knees/)).toBeNull()
  })
})
