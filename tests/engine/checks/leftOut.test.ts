import { describe, expect, it } from 'vitest'
import type { PartId, StockId } from '../../../engine/basics/id'
import { leftOut } from '../../../engine/checks/leftOut'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import type { Project } from '../../../engine/project/document'
import type { Edit } from '../../../engine/project/edit'
import { demonstrationKitchen } from '../../../engine/samples/kitchen'
import { stockFor } from '../../../engine/sheets/hindrance'
import { packSheets } from '../../../engine/sheets/pack'
import { inch } from '../../../engine/units/length'

const kitchen = demonstrationKitchen()
const sheet = Object.values(kitchen.stock).find(({ material }) => material === 'carcass')!
const after = (project: Project, ...edits: readonly Edit[]) => edits.reduce(applyEdit, project)
const stops = (project: Project) => derive(project).problems.filter(({ about }) => about.kind === 'material')

function left(project: Project) {
  const { sheetJob: job, cutList } = derive(project)
  return leftOut({ project, rows: cutList.rows, job }, packSheets({ ...job, effort: 'glance' }))
}

describe('boards on no sheet', () => {
  it('are told once for a material of which there is no sheet, by the name that the maker gave it', () => {
    const none = after(kitchen, { kind: 'removeStock', id: sheet.id })
    const { rows } = derive(none).cutList
    const own = rows.filter(({ material }) => material === 'carcass')
    const count = own.reduce((sum, { quantity }) => sum + quantity, 0)
    const message = `${count} boards are on no sheet (A1, A2, A3, A4, A5, A6 and ${own.length - 6} other rows): there is no sheet of 18 mm birch ply. Add a sheet size under Shop and boards, on the Cut page.`
    expect(left(none).map((finding) => finding.message)).toEqual([message])
    expect(stops(none).map((finding) => finding.message)).toEqual([message])
  })

  it('are told in inches where the project is, with the nearest size that would fit', () => {
    const inches: Edit = { kind: 'setDisplay', display: { unit: 'in', step: 16 } }
    const small: Edit = {
      ...{ kind: 'putStock', stock: { ...sheet, length: inch(60), width: inch(48) } },
    }
    const trim: Edit = { kind: 'editShop', change: { trim: inch(0.5) } }
    const found = left(after(kitchen, inches, small, trim))
    // 60 less half an inch on each side is 59; 48 is 47. The tall's side is 2052 by 560 mm.
    expect(found.length).toBe(1)
    expect(found[0]?.message).toMatch(
      /^2 boards of A1 \(.*\) are on no sheet: 80 13\/16 in x 22 13\/16 in is larger than 59 in x 47 in, what the sheet of 18 mm birch ply \(60 in x 48 in\) gives less its trim\. 59 in x 22 13\/16 in would fit\.$/,
    )
  })

  it('are told once for all rows that are too large for a sheet, each with the size that would fit', () => {
    const { rows } = derive(kitchen).cutList
    const long = rows.filter(({ material, length }) => material === 'carcass' && length > 700)
    const count = long.reduce((sum, { quantity }) => sum + quantity, 0)
    const found = left(after(kitchen, { kind: 'putStock', stock: { ...sheet, length: 720, width: 1220 } }))
    // 720 less the trim of 10 on each side is 700.
    expect(found.length).toBe(1)
    expect(found[0]?.message).toContain(`${count} boards are on no sheet (${long[0]!.mark}, ${long[1]!.mark}`)
    expect(found[0]?.message).toContain('): each is larger than 700 mm x 1200 mm, what the sheet of 18 mm birch ply')
    expect(found[0]?.message).toContain(`gives less its trim. ${long[0]!.mark} at 700 mm x ${long[0]!.width} mm, `)
  })

  it('say how many sheets there were when they are used up', () => {
    const [few] = left(after(kitchen, { kind: 'putStock', stock: { ...sheet, quantity: 2 } }))
    expect(few?.message).toMatch(
      /^\d+ boards .*: the 2 sheets of 18 mm birch ply on hand are used up\. Have more on hand under Shop and boards, on the Cut page\.$/,
    )
    const [none] = left(after(kitchen, { kind: 'putStock', stock: { ...sheet, quantity: 0 } }))
    expect(none?.message).toContain('there are 0 sheets of 18 mm birch ply on hand')
  })
})

describe('a board that was chosen to be cut from one sheet', () => {
  const offcut = { ...sheet, id: 's9' as StockId, length: 500, width: 300, quantity: 1, isOffcut: true }
  const [part] = derive(kitchen).cutList.rows[0]!.parts as [PartId]
  const pinned = after(kitchen, { kind: 'putStock', stock: offcut }, { kind: 'pin', parts: [part], stock: offcut.id })

  it('is a finding when that sheet cannot hold it, with the way out', () => {
    const [finding, ...others] = stops(pinned)
    expect(others).toEqual([])
    expect(finding?.message).toMatch(
      /^1 board of A\d+ \(.*\) is on no sheet: 2052 mm x \d+ mm is larger than 500 mm x 300 mm, what the offcut of 18 mm birch ply \(500 mm x 300 mm\), which was chosen to cut from, gives less its trim\. 500 mm x 300 mm would fit\.$/,
    )
    expect(finding?.remedy?.label).toBe('Take these boards from any sheet')
    expect(stops(after(pinned, finding!.remedy!.edit))).toEqual([])
  })

  it('is a finding when that sheet is set aside', () => {
    const aside = { ...sheet, id: 's9' as StockId, isExcluded: true }
    const [finding] = stops(after(pinned, { kind: 'putStock', stock: aside }))
    expect(finding?.message).toContain(
      ': the sheet of 18 mm birch ply (2440 mm x 1220 mm), which was chosen to cut from, is set aside.',
    )
  })

  it('may come from sheets that are large enough, and from no other', () => {
    const { sheetJob, cutList } = derive(after(kitchen, { kind: 'putStock', stock: offcut }))
    const row = cutList.rows.find(({ parts }) => parts.includes(part))!
    expect(stockFor(sheetJob, row.key).map(({ id }) => id)).toEqual([sheet.id])
    const small = cutList.rows.find(
      ({ material, length, width }) => material === 'carcass' && length <= 500 && width <= 300,
    )!
    expect(
      stockFor(sheetJob, small.key)
        .map(({ id }) => id)
        .sort(),
    ).toEqual([sheet.id, 's9'].sort())
  })
})
