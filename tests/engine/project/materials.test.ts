import { describe, expect, it } from 'vitest'
import type { Material, Project, Stock } from '../../../engine/project/document'
import { materialsInOrder, stockOf } from '../../../engine/project/materials'
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
