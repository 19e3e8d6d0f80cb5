import { describe, expect, it } from 'vitest'
import type { CabinetId, KeptId, PartId, StockId } from '../../../engine/basics/id'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import type { Project } from '../../../engine/project/document'
import type { Edit } from '../../../engine/project/edit'
import { begin, make, undo } from '../../../engine/project/history'
import { readProject, writeProject } from '../../../engine/project/schema'
import { demonstrationKitchen } from '../../../engine/samples/kitchen'
import type { SheetAnswer } from '../../../engine/sheets/layout'
import { packSheets } from '../../../engine/sheets/pack'
import { verify } from '../../../engine/sheets/verify'

const kitchen = demonstrationKitchen()
const side = 'k2/left-side' as PartId
const pinned = after(kitchen, { kind: 'pinSheet', parts: [side], sheet: 2 })

function after(project: Project, ...edits: readonly Edit[]): Project {
  return edits.reduce(applyEdit, project)
}

function packed(project: Project): SheetAnswer {
  return packSheets({ ...derive(project).sheetJob, effort: 'glance' })
}

/** The sheets of the carcasses, counted from 1, on which a part of a design lies. */
function sheetsOf(part: PartId, project: Project): number[] {
  const { rowOf, sheetJob } = derive(project)
  const key = rowOf.get(part)
  const own = new Set(sheetJob.stock.filter(({ material }) => material === 'carcass').map(({ id }) => id))
  const all = packed(project).sheets.filter(({ stock }) => own.has(stock))
  return all
    .flatMap((sheet) => Array.from({ length: sheet.copies }, () => sheet))
    .flatMap(({ placements }, at) => (placements.some(({ part: row }) => row === key) ? [at + 1] : []))
}

describe('a board that must come from one sheet', () => {
  it('has a row of its own, and lies on the sheet of that number while the design goes on', () => {
    const { rowOf, cutList, sheetJob } = derive(pinned)
    expect(cutList.rows.find(({ key }) => key === rowOf.get(side))).toMatchObject({ parts: [side], sheet: 2 })
    expect(verify(sheetJob, packed(pinned))).toEqual([])
    expect(sheetsOf(side, pinned)).toEqual([2])
    const wider = after(pinned, { kind: 'shapeCabinets', shapes: [{ id: 'k1' as CabinetId, width: 640 }] })
    expect(sheetsOf(side, wider)).toEqual([2])
  })

  it('is a step that is undone, is saved and read, and may be taken back', () => {
    const history = make(begin(kitchen), { kind: 'pinSheet', parts: [side], sheet: 2 })
    expect(undo(history).present).toBe(kitchen)
    const read = readProject(writeProject(pinned))
    expect(read.ok && read.value.cabinets['k2' as CabinetId]!.sheets).toEqual({ 'left-side': 2 })
    const back = after(pinned, { kind: 'pinSheet', parts: [side], sheet: null })
    expect(back.cabinets['k2' as CabinetId]!.sheets).toEqual({})
    expect(derive(back).sheetJob).toBe(derive(kitchen).sheetJob)
    expect(after(kitchen, { kind: 'pinSheet', parts: [side], sheet: null })).toBe(kitchen)
  })

  it('goes with its cabinet, and may be a board over a run of cabinets', () => {
    const gone = after(pinned, { kind: 'removeCabinets', ids: ['k2' as CabinetId] })
    expect(JSON.stringify(gone)).not.toContain('"sheets"')
    const long = after(kitchen, { kind: 'editBetween', change: { kick: 'inLengths' } })
    const kick = derive(long).runs[0]!.parts.at(-1)!.id
    const wished = after(long, { kind: 'pinSheet', parts: [kick], sheet: 1 })
    expect(derive(wished).partOf.get(kick)!.sheet).toBe(1)
    const read = readProject(writeProject(wished))
    expect(read.ok && read.value.between.sheets).toEqual({ [kick]: 1 })
    expect(after(wished, { kind: 'pinSheet', parts: [kick], sheet: null }).between.sheets).toEqual({})
  })

  it.each([[0], [2.5], [20_000], ['two']])(
    'is refused in a file that has %j for the number, and changes nothing',
    (sheet) => {
      const broken = writeProject(pinned).replace('"left-side": 2', `"left-side": ${JSON.stringify(sheet)}`)
      const read = readProject(broken)
      expect(read.ok ? 'read' : read.message).toContain(
        `cabinets.k2.sheets.left-side is ${JSON.stringify(sheet)}; it must be a whole number between 1 and 10000`,
      )
      expect(after(kitchen, { kind: 'pinSheet', parts: [side], sheet: sheet as number })).toBe(kitchen)
    },
  )

  it('keeps a sheet held that it lies on, and lets it be held again when it may come from any', () => {
    const { sheets } = packed(pinned)
    const key = derive(pinned).rowOf.get(side)!
    const layout = sheets.find(({ placements }) => placements.some(({ part }) => part === key))!
    const { stock, copies, root } = layout
    const sheet = { id: 'q1' as KeptId, order: 1, sheet: 2, stock: stock as StockId, copies, root }
    const kept = after(pinned, { kind: 'keepSheet', sheet })
    const free = after(kept, { kind: 'pinSheet', parts: [side], sheet: null })
    const again = after(free, { kind: 'pinSheet', parts: [side], sheet: 2 })
    for (const design of [kept, free, again]) expect(derive(design).heldSheets).toEqual(['q1'])
    expect(sheetsOf(side, again)).toEqual([2])
    const read = readProject(writeProject(kept))
    expect(read.ok && read.value.kept['q1' as KeptId]).toEqual(sheet)
  })
})
