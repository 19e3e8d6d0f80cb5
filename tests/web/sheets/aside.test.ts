import { describe, expect, it } from 'vitest'
import { applyEdit, demonstrationKitchen, type Project, type Stock } from '../../../engine/index'
import { leavingAside } from '../../../web/sheets/aside'

const kitchen = demonstrationKitchen()
const sheet = Object.values(kitchen.stock).find(({ material }) => material === 'carcass')!
const withStock = (change: Partial<Stock>): Project =>
  applyEdit(kitchen, { kind: 'putStock', stock: { ...sheet, ...change } })
const fold = { stock: { id: sheet.id } }

describe('leaving one sheet aside', () => {
  it('takes one off those on hand, and is named as a step', () => {
    const project = withStock({ quantity: 7 })
    const leaving = leavingAside(fold, project)!
    expect(applyEdit(project, leaving.edit)).toEqual(withStock({ quantity: 7 - 1 }))
    expect(leaving.label).toBe('Leave one sheet of 18 mm birch ply aside')
    expect(leavingAside(fold, withStock({ quantity: 1, isOffcut: true }))!.label).toBe(
      'Leave one offcut of 18 mm birch ply aside',
    )
  })

  it('is nothing where as many can be bought as are needed, or none is left', () => {
    expect(leavingAside(fold, kitchen)).toBeNull()
    expect(leavingAside(fold, withStock({ quantity: 0 }))).toBeNull()
  })
})
