import { describe, expect, it } from 'vitest'
import type { KeptId, PartId, StockId } from '../../../engine/basics/id'
import { onOtherSheets } from '../../../engine/checks/askedSheet'
import { leftOut } from '../../../engine/checks/leftOut'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import type { Project } from '../../../engine/project/document'
import type { Edit } from '../../../engine/project/edit'
import { demonstrationKitchen } from '../../../engine/samples/kitchen'
import { packSheets } from '../../../engine/sheets/pack'

const kitchen = demonstrationKitchen()
const side = 'k2/left-side' as PartId

function after(project: Project, ...edits: readonly Edit[]): Project {
  return edits.reduce(applyEdit, project)
}

function told(project: Project) {
  const { sheetJob: job, cutList, rowOf } = derive(project)
  const answer = packSheets({ ...job, effort: 'glance' })
  const asked = { project, rows: cutList.rows, job }
  const mark = cutList.rows.find(({ key }) => key === rowOf.get(side))!.mark
  return { mark, answer, job, left: leftOut(asked, answer), other: onOtherSheets(asked, answer.sheets) }
}

describe('boards that must come from one sheet', () => {
  it('say nothing where they lie on it', () => {
    const { left, other } = told(after(kitchen, { kind: 'pinSheet', parts: [side], sheet: 3 }))
    expect([...left, ...other]).toEqual([])
  })

  it('are told with their sheet where there are not as many, and come from any when that is taken up', () => {
    const pinned = after(kitchen, { kind: 'pinSheet', parts: [side], sheet: 40 })
    const { mark, left, other } = told(pinned)
    expect(left).toEqual([])
    const [, last] = /on sheet (\d+), since/.exec(other[0]!.message)!
    expect(other.map(({ message }) => message)).toEqual([
      `${mark} (side): to come from sheet 40 of 18 mm birch ply, and on sheet ${last}, since the last of 18 mm birch ply is sheet ${last}. Choose the sheet anew.`,
    ])
    expect(after(pinned, other[0]!.remedy!.edit).cabinets).toEqual(
      after(pinned, { kind: 'pinSheet', parts: [side], sheet: null }).cabinets,
    )
  })

  it('are told where there is no room for all of them, with a way out', () => {
    const sides = derive(kitchen).cutList.rows.filter(({ material }) => material === 'carcass')
    const many = sides.flatMap((row) => row.parts)
    const pinned = after(kitchen, { kind: 'pinSheet', parts: many, sheet: 1 })
    const { left } = told(pinned)
    expect(left[0]).toMatchObject({ weight: 'stop', remedy: { label: 'Take these boards from any sheet' } })
    expect(left[0]!.message).toMatch(
      /on no sheet.*: sheet 1 of 18 mm birch ply, which they must come from, has no room for them beside what else/,
    )
    expect(told(after(pinned, { kind: 'pinSheet', parts: many, sheet: null })).left).toEqual([])
  })

  it('are told where a kept sheet has that number, or is that sheet without them', () => {
    const pinned = after(kitchen, { kind: 'pinSheet', parts: [side], sheet: 2 })
    const key = derive(kitchen).rowOf.get(side)
    const { stock, copies, root } = told(kitchen).answer.sheets.find(
      ({ placements }) => !placements.some(({ part }) => part === key),
    )!
    const keep = (layout: { stock: string; copies: number; root: typeof root }, id: string): Edit => ({
      kind: 'keepSheet',
      sheet: { id: id as KeptId, order: 1, sheet: 2, ...layout, stock: layout.stock as StockId },
    })
    const without = after(pinned, keep({ stock, copies, root }, 'q1'))
    const [one] = told(without).other
    expect(one!.message).toContain('to come from sheet 2 of 18 mm birch ply, and on sheet 3, since a kept sheet has')
    const own = told(pinned).answer.sheets[1]!
    const kept = after(pinned, keep(own, 'q2'), { kind: 'pinSheet', parts: ['k2/bottom' as PartId], sheet: 2 })
    expect(told(kept).left.map(({ message }) => message.split(': ')[1])).toEqual([
      'sheet 2 of 18 mm birch ply, which they must come from, is kept as it is, without them. Let it go, or choose another sheet.',
    ])
  })
})
