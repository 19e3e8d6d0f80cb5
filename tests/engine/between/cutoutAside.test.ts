import { describe, expect, it } from 'vitest'
import type { MaterialId } from '../../../engine/basics/id'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import { fromLeftOf, movedFromLeft } from '../../../engine/project/cutout'
import type { Cutout, Project } from '../../../engine/project/document'
import { readProject, writeProject } from '../../../engine/project/schema'
import { aCorner, aWall, cabinet, OTHER_WALL } from '../../helpers/wall'
import { built, findingIn } from '../checks/findings'

const SINK: Cutout = { of: 'sink', width: 500, depth: 400, fromFront: 60 }
const TOP = { material: 'carcass' as MaterialId, overhang: 20, ends: 15, splash: 0, banding: 0 }

/** A base of 600 at 200 and one of 900 beside it, with a cut-out over the second. */
function over(cutout: Cutout): Project {
  const wall = aWall(cabinet('B1', { left: 200, width: 600 }), cabinet('B2', { left: 800, width: 900, cutout }))
  return applyEdit(wall, { kind: 'editBetween', change: { countertop: TOP } })
}
const notchIn = (project: Project) => derive(project).runs[0]!.parts[0]!.operations

describe('a cut-out that is not in the middle of its cabinet', () => {
  it('is cut as far from there as is said, to the right or to the left', () => {
    const x = 15 + 600 + 900 / 2 - 500 / 2
    // The top is 580 + 20 deep.
    const at = (shift: number) => [{ kind: 'notch', x: x + shift, y: 600 - 60 - 400, length: 500, width: 400 }]
    expect(notchIn(over({ ...SINK, aside: 130 }))).toEqual(at(130))
    expect(notchIn(over({ ...SINK, aside: -75 }))).toEqual(at(-75))
  })
  it('may be said from the left side of its cabinet', () => {
    const place = { left: 800, width: 900 }
    const moved = movedFromLeft(place, SINK, 60)
    // Its middle is at 60 + 250 of 900, so 140 before the middle.
    expect(moved.aside).toBe(60 + 250 - 450)
    expect(fromLeftOf(place, moved)).toBe(60)
    expect(movedFromLeft(place, moved, 200)).toEqual(SINK)
  })
  it('is told where it goes over a side, by how far', () => {
    expect(findingIn(over({ ...SINK, aside: 180 }), /over its right side/)).toBeNull()
    // 900 / 2 - 190 - 250 is 10 from the right, where the side is 18 thick.
    expect(findingIn(over({ ...SINK, aside: 190 }), /over its right side/)).toMatchObject({
      ...{ weight: 'mind', measure: '10 mm', limit: '18 mm' },
    })
    expect(findingIn(over({ ...SINK, aside: -230 }), /over its left side/)!.message).toContain(
      '30 mm past its cabinet at the left',
    )
  })
  it('is left out where it does not lie in the top', () => {
    expect(notchIn(over({ ...SINK, aside: 400 }))).toEqual([])
    expect(findingIn(over({ ...SINK, aside: 400 }), /left out/)!.weight).toBe('stop')
  })
  it('has less of its cabinet under it: a drawer at the other side stays free', () => {
    const columns = {
      kind: 'columns',
      columns: [
        { size: { kind: 'share', share: 1 }, front: { kind: 'drawer' }, shelves: null },
        { size: { kind: 'share', share: 2 }, front: { kind: 'pair' }, shelves: null },
      ],
    } as const
    const under = (aside: number) => {
      const wall = aWall(cabinet('B1', { left: 600, width: 1200, front: columns, cutout: { ...SINK, aside } }))
      const open = built(wall, { baseTop: { kind: 'frontRail', width: 30 } })
      return findingIn(
        applyEdit(open, { kind: 'editBetween', change: { countertop: TOP } }),
        /cut-out for a (sink|hob) meets its drawers[\s\S]*drawer box/,
      )
    }
    // The drawer is in the left 400 of 1200, and the sink from 350 to 850, or 200 further to the right.
    expect(under(0)).not.toBeNull()
    expect(under(200)).toBeNull()
  })
  it('is as far from what rises beside it, and from an inside corner, as it lies', () => {
    const hob: Cutout = { ...SINK, of: 'hob' }
    const corner = (aside: number) =>
      applyEdit(
        aCorner(
          cabinet('B1', { left: 2000, width: 900, cutout: { ...hob, aside } }),
          cabinet('B2', { wall: OTHER_WALL, left: 0, width: 600, front: { kind: 'pair' } }),
        ),
        { kind: 'editBetween', change: { countertop: TOP } },
      )
    // Its right edge is at 2000 + 450 + 250 + 100; the face of B2 is 598 from the corner at 3600.
    expect(findingIn(corner(100), /inside corner/)).toMatchObject({ measure: `${3600 - 598 - 2800} mm` })
    expect(findingIn(corner(-100), /inside corner/)).toBeNull()
  })
  it('is kept in a file, and refused out of its range', () => {
    const project = over({ ...SINK, aside: -75 })
    expect(readProject(writeProject(project))).toEqual({ ok: true, value: project })
    const far = readProject(writeProject(project).replace('"aside": -75', '"aside": -7000'))
    expect(far.ok ? 'read' : far.message).toMatch(/cabinets\.b2\.cutout\.aside.*-6000/)
  })
})
