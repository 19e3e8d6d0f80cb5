import { describe, expect, it } from 'vitest'
import type { MaterialId } from '../../../engine/basics/id'
import { applyEdit } from '../../../engine/project/apply'
import { isMaterialFree } from '../../../engine/project/boards'
import type { Material, Project, Stock } from '../../../engine/project/document'
import { freshBoard, materialsInOrder, stockOf } from '../../../engine/project/materials'
import { demonstrationKitchen } from '../../../engine/samples/kitchen'

const { materials, stock } = demonstrationKitchen()

/** As after saving and opening, when the keys of an object may stand otherwise. */
function turned<Things extends object>(things: Things): Things {
  return Object.fromEntries(Object.entries(things).reverse()) as Things
}

describe('the boards of a shop', () => {
  it('are listed by their thickness and id, however their keys stand', () => {
    const ids = (all: Project['materials']) => materialsInOrder(all).map(({ id }: Material) => id)
    expect(ids(turned(materials))).toEqual(ids(materials))
    const nominal = materialsInOrder(materials).map((material) => material.nominal)
    expect(nominal).toEqual([...nominal].sort((a, b) => b - a))
  })

  it('have their sheets by id', () => {
    const like = Object.values<Stock>(stock).find(({ material }) => material === 'carcass')!
    const more = Object.fromEntries(['s3', 's2'].map((id) => [id, { ...like, id }])) as Project['stock']
    expect(stockOf(more, like.material).map(({ id }) => id)).toEqual(['s2', 's3'])
  })
})

describe('another board', () => {
  const kitchen = demonstrationKitchen()
  const fresh = freshBoard(kitchen)
  const more = applyEdit(kitchen, { kind: 'addMaterial', ...fresh })

  it('comes with a sheet of it, and goes with it while nothing is made of it', () => {
    expect(more.materials[fresh.material.id]).toEqual(fresh.material)
    expect(stockOf(more.stock, fresh.material.id)).toEqual([fresh.stock])
    const less = applyEdit(more, { kind: 'removeMaterial', id: fresh.material.id })
    expect([less.materials, less.stock]).toEqual([kitchen.materials, kitchen.stock])
  })
  it('stays while a method, a cabinet or a countertop is made of it', () => {
    const { id } = fresh.material
    const countertop = { material: id, overhang: 20, ends: 0, splash: 0, banding: 0 }
    const topped = applyEdit(more, { kind: 'editBetween', change: { countertop } })
    const built = applyEdit(more, { kind: 'editMethod', id: more.method, change: { backMaterial: id } })
    const [first] = Object.values(more.cabinets)
    const own = applyEdit(more, { kind: 'override', ids: [first!.id], choices: { frontMaterial: id } })
    for (const used of [topped, built, own]) {
      expect(isMaterialFree(used, id)).toBe(false)
      expect(applyEdit(used, { kind: 'removeMaterial', id })).toBe(used)
    }
  })
  it('is not added under an id that is taken, nor with a sheet of another', () => {
    expect(applyEdit(more, { kind: 'addMaterial', ...fresh })).toBe(more)
    const other = { ...freshBoard(more).stock, material: 'carcass' as MaterialId }
    expect(applyEdit(more, { kind: 'addMaterial', ...freshBoard(more), stock: other })).toBe(more)
  })
})
