import { describe, expect, it } from 'vitest'
import type { MaterialId, WallId } from '../../../engine/basics/id'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import type { Project } from '../../../engine/project/document'
import { misfits } from '../../../engine/runs/fit'
import { aWall, cabinet, withWall } from '../../helpers/wall'
import { remedied } from './findings'

/** The words of the way out of what a cabinet stands in, and whether everything fits once it is taken. */
function wayOut(project: Project, mark: string): { readonly label: string | null; readonly isAllGood: boolean } {
  const finding = derive(project).problems.find(({ message }) => message.startsWith(`${mark} would`))
  if (!finding) throw new Error(`${mark} fits`)
  if (!finding.remedy) return { label: null, isAllGood: false }
  return { label: finding.remedy.label, isAllGood: misfits(remedied(project, finding)).length === 0 }
}

describe('a cabinet that stands in another', () => {
  it('is moved to the nearest place that is free', () => {
    // B1 to 600, B3 from 1800: between them 600 to 1200 is free for 600.
    const project = aWall(cabinet('B1'), cabinet('B2', { left: 550 }), cabinet('B3', { left: 1800 }))
    expect(wayOut(project, 'B2')).toEqual({ label: 'Move B2 to 600 mm from the left', isAllGood: true })
  })

  it('keeps its filler in the room that it takes', () => {
    const filler = { kind: 'filler', width: 40, scribe: 0 } as const
    const beside = { left: filler, right: { kind: 'none' } } as const
    const project = aWall(cabinet('B1'), cabinet('B2', { left: 590, beside }))
    expect(wayOut(project, 'B2')).toEqual({ label: 'Move B2 to 640 mm from the left', isAllGood: true })
  })

  it('is narrowed where it stands when it would have to go farther than it is wide', () => {
    // 550 are free between B1 and B3, and next 600 behind B3, 1750 on.
    const project = aWall(cabinet('B1'), cabinet('B2', { left: 580 }), cabinet('B3', { left: 1150, width: 1200 }))
    expect(wayOut(project, 'B2')).toEqual({ label: 'Narrow B2 to 550 mm', isAllGood: true })
  })

  it('goes as far as it must where no room in its place is worth a cabinet', () => {
    const project = aWall(
      cabinet('B1', { width: 1000 }),
      cabinet('B2', { left: 900 }),
      cabinet('B3', { left: 1100, width: 1200 }),
    )
    expect(wayOut(project, 'B2')).toEqual({ label: 'Move B2 to 2300 mm from the left', isAllGood: true })
  })

  it('has no way out where there is no room on its wall', () => {
    const project = withWall(
      aWall(cabinet('B1', { width: 900 }), cabinet('B2', { left: 800 }), cabinet('B3', { left: 1000, width: 800 })),
      { length: 1800 },
    )
    expect(wayOut(project, 'B2')).toEqual({ label: null, isAllGood: false })
  })

  it('goes clear of a door and of the end of the wall', () => {
    const door = { kind: 'door', left: 1000, bottom: 0, width: 800, height: 2000 } as const
    const before = withWall(aWall(cabinet('B1', { left: 500 })), { length: 3000 }, door)
    expect(wayOut(before, 'B1')).toEqual({ label: 'Move B1 to 400 mm from the left', isAllGood: true })
    const past = withWall(aWall(cabinet('B1', { left: 2700 })), { length: 3000 })
    expect(wayOut(past, 'B1')).toEqual({ label: 'Move B1 to 2400 mm from the left', isAllGood: true })
  })

  it('goes clear of what reaches in from the wall that meets its own', () => {
    const second = { ...aWall().walls['w1' as WallId]!, id: 'w2' as WallId, name: 'Second', order: 2, meets: true }
    const project = applyEdit(aWall(cabinet('B1', { left: 3000, depth: 580 })), { kind: 'addWall', wall: second })
    const both = applyEdit(project, {
      kind: 'addCabinet',
      cabinet: cabinet('B2', { left: 300, wall: 'w2' as WallId }),
    })
    // B1 stands 580 out from the first wall; open, it has no fronts.
    expect(wayOut(both, 'B2')).toEqual({ label: 'Move B2 to 580 mm from the left', isAllGood: true })
  })
})

describe('boards of a run in a cabinet', () => {
  const BOARD = 'carcass' as MaterialId
  const TOP = { material: BOARD, overhang: 20, ends: 0, splash: 600, banding: 0 }
  const over = (height: number, others = [cabinet('U2', { left: 1200, bottom: 1432, height: 700 })]) =>
    applyEdit(
      withWall(
        aWall(cabinet('B1', { left: 600 }), cabinet('U1', { left: 600, bottom: 1432, height: 700 }), ...others),
        { height },
      ),
      { kind: 'editBetween', change: { countertop: TOP } },
    )
  const found = (project: Project) =>
    derive(project).problems.filter(({ message }) => /would stand in one another/.test(message))

  it('are cleared by hanging all uppers of one height higher', () => {
    // The splash ends at 868 + 18 + 600 = 1486, 54 above the uppers.
    const [finding] = found(over(2400))
    expect(finding!.remedy!.label).toBe('Hang U1, U2 54 mm higher')
    const after = remedied(over(2400), finding!)
    expect(Object.values(after.cabinets).map(({ bottom }) => bottom)).toEqual([0, 1486, 1486])
    expect(found(after)).toEqual([])
  })

  it('are cleared by a lower splash under a low ceiling', () => {
    const [finding] = found(over(2150))
    expect(finding!.remedy!.label).toBe('Make the splash 546 mm high')
    expect(found(remedied(over(2150), finding!))).toEqual([])
  })
})
