import { describe, expect, it } from 'vitest'
import type { MaterialId } from '../../../engine/basics/id'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import type { Between, Project } from '../../../engine/project/document'
import { demonstrationKitchen } from '../../../engine/samples/kitchen'
import { aWall, cabinet } from '../../helpers/wall'
import { findingIn } from './findings'

const BOARD = 'carcass' as MaterialId
const TOP = { material: BOARD, overhang: 20, ends: 0, splash: 0, banding: 0 }
const RAIL = { material: BOARD, height: 40, forward: 0 }
const OVERLAP = /would stand in one another/

function over(bottom: number, change: Partial<Between>): Project {
  const wall = aWall(
    cabinet('B1', { left: 600, width: 600 }),
    cabinet('U1', { left: 600, width: 600, bottom, height: 700, depth: 320 }),
  )
  return applyEdit(wall, { kind: 'editBetween', change })
}

describe('boards over a run', () => {
  it('may not stand in a cabinet: a splash under an upper', () => {
    // A base of 868 under 18 of top: the splash begins at 886.
    const finding = findingIn(over(1432, { countertop: { ...TOP, splash: 600 } }), OVERLAP)!
    expect(finding).toMatchObject({ weight: 'stop', measure: `${868 + 18 + 600} mm`, limit: '1432 mm' })
    expect(finding.message).toBe(
      'The splash BT1 reaches up to 1486 mm from the floor, and U1 begins at 1432 mm: they would stand in one another over 54 mm of the height.',
    )
    expect(findingIn(over(1486, { countertop: { ...TOP, splash: 600 } }), OVERLAP)).toBeNull()
  })
  it('may not stand in a cabinet: an upper hung into the countertop', () => {
    const low = findingIn(over(870, { countertop: TOP }), OVERLAP)!
    expect(low).toMatchObject({ weight: 'stop', measure: `${868 + 18} mm`, limit: '870 mm' })
    expect(low.message).toContain('The countertop BT1')
    expect(findingIn(over(886, { countertop: TOP }), OVERLAP)).toBeNull()
  })
  it('may not stand in one another: a light rail in a countertop', () => {
    const hung = findingIn(over(920, { countertop: TOP, lightRail: RAIL }), OVERLAP)!
    expect(hung).toMatchObject({ weight: 'stop', measure: '886 mm', limit: `${920 - 40} mm` })
    expect(hung.message).toContain('the light rail UL1 begins')
    expect(findingIn(over(926, { countertop: TOP, lightRail: RAIL }), OVERLAP)).toBeNull()
  })
  it('are not told where they only touch: in a whole kitchen with tops, splashes and trims', () => {
    const change = {
      countertop: { ...TOP, splash: 80 },
      lightRail: RAIL,
      crown: { ...RAIL, height: 80 },
      valance: RAIL,
    }
    const { runs, problems } = derive(applyEdit(demonstrationKitchen(), { kind: 'editBetween', change }))
    expect(new Set(runs.map(({ kind }) => kind)).size).toBeGreaterThanOrEqual(3)
    expect(problems.filter(({ message }) => OVERLAP.test(message))).toEqual([])
  })
})
