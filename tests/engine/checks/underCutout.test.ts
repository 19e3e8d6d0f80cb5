import { describe, expect, it } from 'vitest'
import type { MaterialId } from '../../../engine/basics/id'
import { applyEdit } from '../../../engine/project/apply'
import type { Cutout, Front, Project } from '../../../engine/project/document'
import type { MethodChoices } from '../../../engine/project/method'
import { aWall, cabinet, idOf } from '../../helpers/wall'
import { built, findingIn, remedied } from './findings'

const SINK: Cutout = { of: 'sink', width: 500, depth: 450, fromFront: 60 }
const HOB: Cutout = { ...SINK, of: 'hob' }
const UNDER = /under the cut-out/
const MEETS = /its cut-out for a sink meets its drawers/
const FLAT: MethodChoices['baseTop'] = { kind: 'stretchersFlat', width: 75 }
const DRAWERS: Front = {
  kind: 'rows',
  rows: [1, 1].map((share) => ({ size: { kind: 'share', share }, front: { kind: 'drawer' } })),
}

/** A base 868 high and 580 deep with a front of 18 and a top that overhangs by 20. */
function over(cutout: Cutout, baseTop: MethodChoices['baseTop'], front: Front = { kind: 'pair' }): Project {
  const wall = built(aWall(cabinet('B1', { left: 600, width: 800, front, cutout })), { baseTop })
  const countertop = { material: 'carcass' as MaterialId, overhang: 20, ends: 0, splash: 0, banding: 0 }
  return applyEdit(wall, { kind: 'editBetween', change: { countertop } })
}

describe('what lies under a cut-out', () => {
  // The top is 580 + 18 + 20 = 618 deep: the cut-out goes from 618 - 60 - 450 = 108 to 618 - 60 = 558.
  it('may be a stretcher, and a front rail is a way out', () => {
    const project = over(SINK, FLAT)
    const finding = findingIn(project, UNDER)!
    expect(finding).toMatchObject({ weight: 'mind', measure: '0 mm', limit: '200 mm' })
    expect(finding.message).toBe(
      `B1: under the cut-out for its sink lies the front stretcher; 200 mm below the countertop is usual to keep free. From the wall, the cut-out goes from 108 mm to 558 mm, the front stretcher, 0 mm below the countertop, from ${580 - 75} mm to 580 mm.`,
    )
    expect(findingIn(remedied(project, finding), UNDER)).toBeNull()
  })
  it('may be a drawer box: with the only sink there the top drawer becomes a false front, with a rail where one is wanted', () => {
    for (const top of [{ kind: 'frontRail', width: 75 }, FLAT] as const) {
      const project = over(SINK, top, DRAWERS)
      const finding = findingIn(project, MEETS)!
      expect(finding.message).toContain('lies the ')
      expect(finding.message).toContain('drawer box')
      expect(finding.remedy?.label).toBe('Make the top drawer of B1 a false front')
      const after = remedied(project, finding)
      expect(findingIn(after, MEETS)).toBeNull()
      expect(findingIn(after, UNDER)).toBeNull()
      expect(after.cabinets[idOf('B1')]!.cutout).toEqual(SINK)
    }
  })
  it('loses its cut-out where drawers were put into a copy of a sink base', () => {
    const base = over(SINK, FLAT, DRAWERS)
    const other = cabinet('B2', { left: 1400, width: 800, front: { kind: 'pair' }, cutout: SINK })
    const project = applyEdit(base, { kind: 'addCabinet', cabinet: other })
    const finding = findingIn(project, MEETS)!
    expect(finding.remedy?.label).toBe('Take the cut-out from B1')
    const after = remedied(project, finding)
    expect(findingIn(after, MEETS)).toBeNull()
    expect([after.cabinets[idOf('B1')]!.cutout, after.cabinets[idOf('B2')]!.cutout]).toEqual([null, SINK])
  })
  it('is measured 50 down from a hob: a full top is in its way, a front rail is not', () => {
    const finding = findingIn(over(HOB, { kind: 'full' }), UNDER)!
    expect(finding).toMatchObject({ weight: 'mind', limit: '50 mm' })
    expect(finding.message).toContain('its hob lies the top;')
    expect(finding.remedy).toBeUndefined()
    expect(findingIn(over(HOB, { kind: 'frontRail', width: 75 }), UNDER)).toBeNull()
  })
})
