import { describe, expect, it } from 'vitest'
import { applyEdit, demonstrationKitchen, type Project, type Stock } from '../../../engine/index'
import { leavingAside } from '../../../web/sheets/aside'
import { areCutAlike, type Fold } from '../../../web/sheets/folds'

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

  it('is offered of as many as there are now: a sheet is drawn anew when they change', () => {
    const stock = { id: 's', material: 'm', length: 2440, width: 1220 }
    const root = { kind: 'waste' as const, x: 0, y: 0, length: 2440, width: 1220 }
    const layout = { stock: 's', copies: 1, placements: [], root }
    const drawn = (quantity?: number) =>
      ({
        layout,
        stock: { ...stock, ...(quantity === undefined ? {} : { quantity }) },
        first: 1,
        kerf: 3,
        kept: null,
      }) as Pick<Fold, 'layout' | 'stock' | 'first' | 'kerf' | 'kept'> as Fold
    expect(areCutAlike(drawn(7), drawn(7))).toBe(true)
    expect(areCutAlike(drawn(7), drawn())).toBe(false)
  })
})
