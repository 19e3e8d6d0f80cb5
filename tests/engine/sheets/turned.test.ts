import { describe, expect, it } from 'vitest'
import type { MaterialId } from '../../../engine/basics/id'
import { derive } from '../../../engine/pipeline'
import type { Project } from '../../../engine/project/document'
import { packSheets } from '../../../engine/sheets/pack'
import { verify } from '../../../engine/sheets/verify'
import { aWall, cabinet } from '../../helpers/wall'

/** A window seat: its back is wider than a sheet of 2440 x 1220 across the grain. */
const seat = (width: number, backMaterial = 'back' as MaterialId) =>
  aWall(cabinet('B1', { left: 600, width, height: 432, overrides: { backMaterial } }))
const told = (project: Project) => derive(project).problems.filter(({ about }) => about.kind === 'material')

describe('a back that is wider than its sheets', () => {
  const project = seat(1500)
  it('is turned, which is told, and lies on a sheet', () => {
    const { sheetJob, cutList } = derive(project)
    const row = cutList.rows.find(({ name }) => name === 'back')!
    expect(row.width).toBeGreaterThan(1220)
    expect(sheetJob.parts.find(({ id }) => id === row.key)?.rotate).toBe(true)
    const [finding, ...others] = told(project)
    expect(others).toEqual([])
    expect(finding).toMatchObject({ weight: 'know' })
    expect(finding!.message).toMatch(/^1 board of \w+ \(back\) is cut with the grain running across the cabinet/)
    const answer = packSheets({ ...sheetJob, effort: 'glance' })
    expect(answer.unplaced).toEqual([])
    expect(verify(sheetJob, answer)).toEqual([])
    const placed = answer.sheets.flatMap(({ placements }) => placements).find(({ part }) => part === row.key)
    expect(placed?.rotated).toBe(true)
  })
  it('stays upright where a sheet gives it so', () => {
    expect(derive(seat(900)).sheetJob.parts.some(({ rotate }) => rotate)).toBe(false)
    expect(told(seat(900))).toEqual([])
  })
  it('stays upright where it is of the material of the fronts, and is then on no sheet', () => {
    const seen = seat(1500, 'front' as MaterialId)
    expect(derive(seen).sheetJob.parts.some(({ rotate }) => rotate)).toBe(false)
    expect(told(seen).map(({ weight }) => weight)).toEqual(['stop'])
  })
})
