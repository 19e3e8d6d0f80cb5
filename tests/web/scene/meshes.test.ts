import { describe, expect, it } from 'vitest'
import type { BoardMesh } from '../../../web/scene/merge'
import { meshKeeper } from '../../../web/scene/meshes'
import { upright } from './boards'

function counting(mostKept: number) {
  const made: string[] = []
  const meshOf = ({ name }: { name: string }): BoardMesh => {
    made.push(name)
    return { positions: [], normals: [], indices: [], edges: [] }
  }
  return { made, meshFor: meshKeeper((part) => part.name, meshOf, mostKept) }
}

describe('the meshes that are kept', () => {
  it('are made once for boards of one shape', () => {
    const { made, meshFor } = counting(10)
    expect(meshFor(upright('side', { x: 0 }))).toBe(meshFor(upright('side', { x: 582 })))
    expect(made).toEqual(['side'])
  })

  it('are no more than allowed: the one unused for longest goes', () => {
    const { made, meshFor } = counting(2)
    for (const name of ['a', 'b', 'a', 'c', 'a', 'b']) meshFor(upright(name, { x: 0 }))
    expect(made).toEqual(['a', 'b', 'c', 'b'])
  })
})
