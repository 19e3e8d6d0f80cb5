import { describe, expect, it } from 'vitest'
import { applyEdit, demonstrationKitchen, derive, type Edit } from '../../engine/index'
import { impactOf, impactWords } from '../../web/stages/impact'

const kitchen = demonstrationKitchen()
const impact = (edit: Edit) => impactOf(derive(kitchen), derive(applyEdit(kitchen, edit)))
const uppers = Object.values(kitchen.cabinets).filter(({ kind }) => kind === 'upper')

describe('what a change comes to', () => {
  it('counts the boards that change, and names the cabinets that they are of', () => {
    const { nailers } = kitchen.methods[kitchen.method]!
    const all = Object.keys(kitchen.cabinets).length
    const wider = impact({ kind: 'editMethod', id: kitchen.method, change: { nailers: { ...nailers, width: 100 } } })
    expect(wider).toMatchObject({ added: 0, gone: 0 })
    expect(wider.cabinets).toHaveLength(all)
    // The nailer of every cabinet, and what is notched or cut back for it.
    expect(wider.changed).toBeGreaterThanOrEqual(all)
  })

  it('counts boards that are new and boards that go: a nailer for every cabinet, and none', () => {
    const { nailers } = kitchen.methods[kitchen.method]!
    const change = { nailers: { ...nailers, bottom: true } }
    const all = Object.keys(kitchen.cabinets).length
    expect(impact({ kind: 'editMethod', id: kitchen.method, change })).toMatchObject({ added: all, gone: 0 })
    const without = { nailers: { ...nailers, top: false } }
    expect(impact({ kind: 'editMethod', id: kitchen.method, change: without })).toMatchObject({ added: 0, gone: all })
  })

  it('is nothing for a cabinet that is only moved', () => {
    const { id, left } = uppers[0]!
    expect(impact({ kind: 'shapeCabinets', shapes: [{ id, left: left + 5 }] })).toEqual({
      ...{ cabinets: [], changed: 0, added: 0, gone: 0 },
    })
  })

  it('is told in words', () => {
    const some = { cabinets: ['B1', 'B2', 'B3', 'B4', 'B5', 'B6', 'T1'], changed: 1, added: 2, gone: 1 }
    expect(impactWords(some)).toBe('B1, B2, B3, B4, B5, B6 and 1 more: 1 board changes, 2 are new, 1 goes.')
  })
})
