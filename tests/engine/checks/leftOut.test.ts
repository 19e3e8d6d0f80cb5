import { describe, expect, it } from 'vitest'
import type { PartId, StockId } from '../../../engine/basics/id'
import { hindered, leftOut } from '../../../engine/checks/leftOut'
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

  describe('beside a size that is too short for the sides', () => {
    const short: Edit = { kind: 'putStock', stock: { ...sheet, id: 's9' as StockId, length: 1900 } }
    const withLong = (change: Partial<typeof sheet>) =>
      after(kitchen, short, { kind: 'putStock', stock: { ...sheet, ...change } })
    // 1900 and 1220 less the trim of 10 on each side.
    const larger =
      /^2 boards of A1 \(.*\) are on no sheet: 2052 mm x (\d+) mm is larger than 1880 mm x 1200 mm, what the sheet of 18 mm birch ply \(1900 mm x 1220 mm\) gives less its trim\. 1880 mm x \1 mm would fit\. /
    const LONG = 'The sheet of 18 mm birch ply (2440 mm x 1220 mm) would do, but'

    it('are told by the size, and that there are 0 on hand of the one that would do', () => {
      const [finding, ...others] = left(withLong({ quantity: 0 }))
      expect(others).toEqual([])
      expect(finding?.message).toMatch(larger)
      expect(finding?.message).toContain(
        `${LONG} there are 0 of it on hand. Have more on hand under Shop and boards, on the Cut page.`,
      )
      expect(stops(withLong({ quantity: 0 }))).toEqual([finding])
    })

    it('come back with the one that would do when that is set aside', () => {
      const aside = withLong({ isExcluded: true })
      const [finding] = left(aside)
      expect(finding?.message).toMatch(larger)
      expect(finding?.message).toContain(`${LONG} is set aside. Take it back into use under Shop and boards`)
      expect(finding?.remedy?.label).toBe('Take the sheet of 18 mm birch ply (2440 mm x 1220 mm) back into use')
      expect(left(after(aside, finding!.remedy!.edit))).toEqual([])
    })

    it('are told by the sheets that are large enough when those are used up', () => {
      // Four ends as long as the sides: two of their width lie on a sheet of 1220, so one sheet is too few for four.
      const [side] = derive(kitchen).cutList.rows
      const { sheetJob: job, cutList } = derive(withLong({ quantity: 1 }))
      const more = { ...job, parts: job.parts.map((part) => (part.id === side!.key ? { ...part, quantity: 4 } : part)) }
      const answer = packSheets({ ...more, effort: 'glance' })
      const found = leftOut({ project: withLong({ quantity: 1 }), rows: cutList.rows, job: more }, answer)
      expect(found.map(({ message }) => message)).toEqual([
        expect.stringMatching(
          /^2 boards of A1 .*: the 1 sheet of 18 mm birch ply on hand, of those that are large enough \(2440 mm x 1220 mm\), is used up\. Have more on hand/,
        ),
      ])
    })
  })

  it('are not those that lie on a kept sheet that is set aside', () => {
    const { sheetJob: job, cutList } = derive(kitchen)
    const laid = packSheets({ ...job, effort: 'glance' })
    const stock = job.stock.map((one) => (one.id === sheet.id ? { ...one, excluded: true } : one))
    const kept = { ...job, stock, locked: laid.sheets.filter((one) => one.stock === sheet.id) }
    expect(hindered({ project: kitchen, rows: cutList.rows, job: kept })).toEqual([])
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
