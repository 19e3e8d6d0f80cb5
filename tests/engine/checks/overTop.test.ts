import { describe, expect, it } from 'vitest'
import type { MaterialId } from '../../../engine/basics/id'
import { applyEdit } from '../../../engine/project/apply'
import { aWall, cabinet, the } from '../../helpers/wall'
import { findingIn, remedied } from './findings'

const OVER = /to work under it/
/** Bases are 868 high and the top is 18 thick. */
const SURFACE = 868 + 18

function over(gap: number, left = 1200) {
  const bottom = SURFACE + gap
  const project = aWall(
    cabinet('B1', { left: 600, width: 600 }),
    cabinet('B2', { left: 1200, width: 600 }),
    cabinet('U1', { left, width: 600, bottom }),
    cabinet('U2', { left: left + 600, width: 400, bottom }),
  )
  const countertop = { material: 'carcass' as MaterialId, overhang: 20, ends: 0, splash: 0, banding: 0 }
  return applyEdit(project, { kind: 'editBetween', change: { countertop } })
}

// Source: LSU AgCenter, Kitchen Design and Space Guidelines: '15 - 18 inches clearance between countertop and bottom of upper cabinets'.
describe('an upper over a countertop', () => {
  it('is told nearer than 15 in, and hung higher with those beside it in one step', () => {
    const project = over(350)
    const told = findingIn(project, OVER)!
    expect(told).toMatchObject({ weight: 'know', measure: '350 mm', limit: '381 mm' })
    expect(told.message).toMatch(/^U1: hangs 350 mm over the countertop BT1/)
    expect(told.source).toContain('LSU AgCenter')
    const after = remedied(project, told)
    expect([the(after, 'U1').bottom, the(after, 'U2').bottom]).toEqual([SURFACE + 381, SURFACE + 381])
    expect(findingIn(after, OVER)).toBeNull()
    expect(findingIn(over(381), OVER)).toBeNull()
  })
  it('is of no concern beside it, where it stands on it, and where none is made', () => {
    expect(findingIn(over(350, 1800), OVER)).toBeNull()
    expect(findingIn(over(0), OVER)).toBeNull()
    expect(findingIn(applyEdit(over(350), { kind: 'editBetween', change: { countertop: null } }), OVER)).toBeNull()
  })
})
