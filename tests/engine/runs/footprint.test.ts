import { describe, expect, it } from 'vitest'
import type { CabinetId, MaterialId } from '../../../engine/basics/id'
import { applyEdit } from '../../../engine/project/apply'
import { type Beside, NOTHING_BESIDE, type Project } from '../../../engine/project/document'
import { labelOf } from '../../../engine/project/label'
import { gapFilled } from '../../../engine/runs/fill'
import { fitOf, misfits } from '../../../engine/runs/fit'
import { footprintOf } from '../../../engine/runs/footprint'
import { freeStretches, gapsBeside, runsOf } from '../../../engine/runs/neighbours'
import { pushNeighbours } from '../../../engine/runs/push'
import { snapEdge, snapMove } from '../../../engine/runs/snap'
import { aWall, cabinet } from '../../helpers/wall'

const PANEL: Beside = { kind: 'panel', material: 'front' as MaterialId, foot: 'floor' }
const filler = (width: number): Beside => ({ kind: 'filler', width, scribe: 10 })
const right = (beside: Beside) => ({ ...NOTHING_BESIDE, right: beside })
const left = (beside: Beside) => ({ ...NOTHING_BESIDE, left: beside })
const the = (project: Project, id: string) => project.cabinets[id as CabinetId]!

/** B1 with a filler of 40 at its right, up to B2 with a panel at its right. */
const project = aWall(
  cabinet('B1', { left: 100, width: 600, beside: right(filler(40)) }),
  cabinet('B2', { left: 740, width: 500, beside: right(PANEL) }),
)
const T = project.materials[PANEL.kind === 'panel' ? PANEL.material : ('' as MaterialId)]!.thickness

describe('what stands beside a cabinet', () => {
  it('takes its width of the wall', () => {
    expect(footprintOf(the(project, 'b1'), project)).toMatchObject({ left: 100, width: 600 + 40 })
    expect(footprintOf(the(project, 'b2'), project)).toMatchObject({ left: 740, width: 500 + T })
  })
  it('ends the gap beside it, and touches the neighbour as a carcass does', () => {
    expect(gapsBeside(project, the(project, 'b1')).right).toEqual({ gap: 0, to: 'B2' })
    expect(gapsBeside(project, the(project, 'b2')).right).toEqual({ gap: 3600 - 740 - 500 - T, to: 'the wall end' })
    const wall = Object.values(project.walls)[0]!
    expect(runsOf(project, wall).map(({ cabinets }) => cabinets.length)).toEqual([2])
    expect(freeStretches(project, wall, 'base').map(({ from }) => from)).toEqual([0, 740 + 500 + T])
  })
  it('keeps neighbours out', () => {
    const fit = fitOf(project, { ...the(project, 'b2'), left: 725 })
    expect(fit).toEqual({ fits: false, why: 'B2 would overlap B1 by 15 mm' })
    expect(
      misfits(applyEdit(project, { kind: 'setBeside', ids: ['b1' as CabinetId], side: 'right', beside: filler(55) })),
    ).toHaveLength(2)
  })
  it('does not stand past the end of the wall', () => {
    const fit = fitOf(project, { ...the(project, 'b1'), left: 10, beside: left(filler(40)) })
    expect(fit).toEqual({ fits: false, why: 'B1 would stand 30 mm past the left end of the wall' })
  })
  it('pushes and is pushed', () => {
    expect(pushNeighbours(project, { ...the(project, 'b1'), width: 650 })).toEqual([{ id: 'b2', left: 100 + 650 + 40 }])
    const towards = { ...the(project, 'b2'), left: 720, width: 520 }
    const moved = aWall(the(project, 'b1'), { ...the(project, 'b2'), left: 740 })
    expect(pushNeighbours(moved, towards)).toEqual([{ id: 'b1', left: 720 - 40 - 600 }])
  })
  it('comes to rest at lines before the carcass does', () => {
    const b2 = { ...the(project, 'b2'), beside: left(filler(25)) }
    expect(snapMove(project, b2, { left: 768, bottom: 0 }, 12).left).toBe(740 + 25)
    expect(snapEdge(project, b2, 'left', 768, 12).at).toBe(740 + 25)
    expect(snapMove(project, the(project, 'b2'), { left: 3600 - 500 - T - 6, bottom: 0 }, 12).left).toBe(3600 - 500 - T)
  })
})

describe('filling the gap', () => {
  it('puts a filler as wide as the gap, scribed at the wall and not at a cabinet', () => {
    expect(gapFilled(project, the(project, 'b1'), 'left')).toMatchObject({ beside: filler(100) })
    const apart = aWall(cabinet('B1', { left: 0, width: 600 }), cabinet('B2', { left: 632, width: 500 }))
    expect(gapFilled(apart, the(apart, 'b2'), 'left')).toMatchObject({
      beside: { kind: 'filler', width: 32, scribe: 0 },
    })
  })
  it('widens the filler that stands there', () => {
    const apart = aWall({ ...the(project, 'b1') }, { ...the(project, 'b2'), left: 755 })
    expect(gapFilled(apart, the(apart, 'b1'), 'right')).toMatchObject({ beside: filler(40 + 15) })
  })
  it('does nothing where there is no gap, a panel, or room for a cabinet', () => {
    expect(gapFilled(project, the(project, 'b2'), 'left')).toBeNull()
    expect(gapFilled(project, the(project, 'b2'), 'right')).toBeNull()
    const wide = aWall(cabinet('B1', { left: 0, width: 600 }))
    expect(gapFilled(wide, the(wide, 'b1'), 'right')).toBeNull()
  })
  it('is one undo step with a name, and nothing for a width that no file keeps', () => {
    const edit = gapFilled(project, the(project, 'b1'), 'left')!
    expect(labelOf(project, edit)).toBe('Put a filler at the left of B1')
    expect(the(applyEdit(project, edit), 'b1').beside.left).toEqual(filler(100))
    const ids = ['b1' as CabinetId]
    expect(applyEdit(project, { kind: 'setBeside', ids, side: 'left', beside: filler(601) })).toBe(project)
    const lost: Beside = { kind: 'skin', material: 'nowhere' as MaterialId }
    expect(applyEdit(project, { kind: 'setBeside', ids, side: 'left', beside: lost })).toBe(project)
  })
})
