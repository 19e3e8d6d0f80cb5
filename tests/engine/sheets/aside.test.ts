import { describe, expect, it } from 'vitest'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import type { Project, Stock } from '../../../engine/project/document'
import { demonstrationKitchen } from '../../../engine/samples/kitchen'
import { packSheets } from '../../../engine/sheets/pack'

function stockOf(project: Project): Stock {
  return Object.values(project.stock).find(({ material }) => material === 'carcass')!
}

function withStock(project: Project, stock: Stock): Project {
  return applyEdit(project, { kind: 'putStock', stock })
}

describe('sheets that are set aside', () => {
  const kitchen = demonstrationKitchen()
  const like = stockOf(kitchen)

  it('are not cut, and the others of their material are', () => {
    const larger = withStock(kitchen, { ...like, id: 's9' as Stock['id'], length: 3050, width: 1525, isExcluded: true })
    const job = derive(larger).sheetJob
    expect(job.stock.find(({ id }) => id === 's9')?.excluded).toBe(true)
    const answer = packSheets({ ...job, effort: 'glance' })
    expect(answer.sheets.some(({ stock }) => stock === 's9')).toBe(false)
    expect(answer.sheets.some(({ stock }) => stock === like.id)).toBe(true)
    const used = packSheets({ ...derive(withStock(larger, { ...like, isExcluded: true })).sheetJob, effort: 'glance' })
    expect(used.sheets.some(({ stock }) => stock === like.id)).toBe(false)
  })

  it('leave a finding where nothing else is left of their material', () => {
    const none = withStock(kitchen, { ...like, isExcluded: true })
    const { problems, sheetJob } = derive(none)
    const stops = problems.filter(({ about }) => about.kind === 'material')
    const count = sheetJob.parts.reduce(
      (sum, { material, quantity }) => sum + (material === 'carcass' ? quantity : 0),
      0,
    )
    expect(stops).toHaveLength(1)
    expect(stops[0]?.message).toMatch(
      new RegExp(
        `^${count} boards are on no sheet \\(A1, A2, A3, A4, A5, A6 and \\d+ other rows\\): every sheet of 18 mm birch ply is set aside\\. ` +
          'Take one back into use under Shop and boards, on the Cut page\\.$',
      ),
    )
    const { label, edit } = stops[0]!.remedy!
    expect(label).toBe('Take the sheets of 18 mm birch ply back into use')
    expect(derive(applyEdit(none, edit)).problems.filter(({ about }) => about.kind === 'material')).toEqual([])
    const answer = packSheets({ ...sheetJob, effort: 'glance' })
    expect(answer.unplaced.length).toBeGreaterThan(0)
    expect(answer.sheets.some(({ stock }) => stock === like.id)).toBe(false)
  })
})
