import { describe, expect, it } from 'vitest'
import type { MaterialId } from '../../../engine/basics/id'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import type { Cabinet, Countertop, Project, TopHere } from '../../../engine/project/document'
import { startOf } from '../../../engine/project/ready'
import { readProject, writeProject } from '../../../engine/project/schema'
import { LOWEST_WORKTOP } from '../../../engine/project/underTop'
import { aWall, cabinet, idOf } from '../../helpers/wall'

const TOP: Countertop = { material: 'carcass' as MaterialId, overhang: 20, ends: 15, splash: 0, banding: 2 }

function topped(...cabinets: readonly Cabinet[]): Project {
  return applyEdit(aWall(...cabinets), { kind: 'editBetween', change: { countertop: TOP } })
}
const here = (project: Project, mark: string, top: TopHere) =>
  applyEdit(project, { kind: 'setTop', ids: [idOf(mark)], top })
/** Each top as what it goes over and how long it is. */
const tops = (project: Project) =>
  derive(project).runs.map(({ cabinets, place }) => `${cabinets.join(' ')}: ${place.width}`)

const base = cabinet('B1', { left: 200, width: 600 })
const low = (height: number) => cabinet('B2', { left: 800, width: 900, height })
const { kind: _, ...BENCH } = startOf(aWall(), 'benchBox')
const bench = cabinet('B2', { ...BENCH, left: 800 })

describe('a countertop', () => {
  it('goes over bases that are as high as a worktop, and no lower ones', () => {
    expect(tops(topped(base, low(LOWEST_WORKTOP)))).toEqual([`b1: ${15 + 600 + 15}`, `b2: ${900 + 15}`])
    expect(tops(topped(base, low(LOWEST_WORKTOP - 1)))).toEqual([`b1: ${15 + 600 + 15}`])
    // What hangs is as high as its upper edge.
    expect(tops(topped(cabinet('B1', { width: 800, left: 100, bottom: 500, height: 368 })))).toEqual(['b1: 830'])
  })
  it('goes over a low one where it is asked for, and leaves out a high one that shall have none', () => {
    const seat = here(topped(low(450)), 'B2', { isOver: true })
    expect(tops(seat)).toEqual(['b2: 930'])
    expect(derive(seat).runs[0]!.place.bottom).toBe(450)
    const bare = here(topped(base, cabinet('B2', { left: 800, width: 900 })), 'B2', { isOver: false })
    // It stops where the other begins, over which there may be a top of another kind.
    expect(tops(bare)).toEqual([`b1: ${15 + 600}`])
    expect(readProject(writeProject(bare))).toMatchObject({ ok: true, value: bare })
  })
  it('that leaves a base out leaves its cut-out, which is told and can be taken out', () => {
    const sink = { of: 'sink', width: 480, depth: 400, fromFront: 70 } as const
    const asked = applyEdit(topped(base), { kind: 'setCutout', ids: [idOf('B1')], cutout: sink })
    const lost = (project: Project) =>
      derive(project).problems.filter(({ message }) => message.includes('is sawn in no countertop'))
    expect(lost(asked)).toEqual([])
    const bare = here(asked, 'B1', { isOver: false })
    expect(lost(bare).map(({ message }) => message)).toEqual([
      'B1: its cut-out for a sink is sawn in no countertop, since none goes over it.',
    ])
    expect(lost(applyEdit(bare, lost(bare)[0]!.remedy!.edit))).toEqual([])
  })
  it('never lies on a lid', () => {
    expect(tops(topped(base, bench))).toEqual([`b1: ${15 + 600 + 15}`])
    expect(tops(here(topped(base, bench), 'B2', { isOver: true }))).toEqual([`b1: ${15 + 600 + 15}`])
  })
})
