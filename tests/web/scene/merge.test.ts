import { describe, expect, it } from 'vitest'
import { explodedBy } from '../../../engine/index'
import { type BoardMesh, mergeParts, TONE } from '../../../web/scene/merge'
import { shareGone, stagesOf } from '../../../web/scene/stage'
import { upright } from './boards'

/** One triangle on the inside face, one in the floor of a groove 6 deep, and one edge, in the board's own frame. */
const MESH: BoardMesh = {
  positions: [0, 0, 18, 100, 0, 18, 0, 50, 18, 0, 0, 12, 100, 0, 12, 0, 50, 12],
  normals: [0, 0, 1, 0, 0, 1, 0, 0, 1, 0, 0, 1, 0, 0, 1, 0, 0, 1],
  indices: [0, 1, 2, 3, 4, 5],
  edges: [0, 0, 18, 700, 0, 18],
}

describe('the merged body of a cabinet', () => {
  it('carries each board from its own frame to its place: length up, width out, thickness to the right', () => {
    const merged = mergeParts([upright('LS', { x: 40 })], () => MESH)
    // The board's (100, 0, 18) lies 100 up and a thickness to the right of 40.
    expect([...merged.positions.slice(3, 6)]).toEqual([40 + 18, 100, 0])
    expect([...merged.normals.slice(0, 3)]).toEqual([1, 0, 0])
    expect([...merged.edges]).toEqual([40 + 18, 0, 0, 40 + 18, 700, 0])
  })

  it('counts the corners of the second board on from those of the first', () => {
    const merged = mergeParts([upright('LS', { x: 0 }), upright('RS', { x: 582 })], () => MESH)
    expect([...merged.indices]).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11])
    expect(merged.spans.map((span) => [span.part, span.corners, span.edges])).toEqual([
      ['k1/LS', { from: 0, to: 6 }, { from: 0, to: 2 }],
      ['k1/RS', { from: 6, to: 12 }, { from: 2, to: 4 }],
    ])
  })

  it('has the fronts last, so that hiding them is drawing less', () => {
    const door = upright('D', { x: 0, role: 'door' })
    const merged = mergeParts([door, upright('LS', { x: 0 })], () => MESH)
    expect(merged.spans.map((span) => span.part)).toEqual(['k1/LS', 'k1/D'])
    expect(merged.withoutFronts).toEqual({ indices: 6, edges: 2 })
  })

  it('draws all of a cabinet that has no fronts', () => {
    expect(mergeParts([upright('LS', { x: 0 })], () => MESH).withoutFronts).toEqual({ indices: 6, edges: 2 })
  })

  it('tells the face of a board from the floor of a groove in it', () => {
    const merged = mergeParts([upright('LS', { x: 0 })], () => MESH)
    expect([...merged.tones]).toEqual([TONE.face, TONE.face, TONE.face, TONE.worked, TONE.worked, TONE.worked])
  })

  it('says of every corner and edge point where it goes when the cabinet is taken apart', () => {
    const merged = mergeParts([upright('LS', { x: 0, by: { x: -220, y: 0, z: 30 } })], () => MESH)
    expect([...merged.away.slice(15, 18)]).toEqual([-220, 0, 30])
    expect([...merged.edgesAway.slice(3, 6)]).toEqual([-220, 0, 30])
  })
})

describe('the way of a board in the shader', () => {
  it('is that of the engine at every stand of the slider', () => {
    const part = upright('LS', { x: 0, by: { x: -220, y: 10, z: 30 } })
    const late = { ...part, explode: { ...part.explode, from: 0.3, to: 0.8 } }
    const atOnce = { ...part, explode: { ...part.explode, from: 0.4, to: 0.4 } }
    const twice = { ...part, explode: { ...part.explode, after: { by: { x: 70, y: 0, z: 0 }, from: 0.5, to: 0.7 } } }
    for (const board of [part, late, atOnce, twice]) {
      const { first, second } = stagesOf(board)
      for (let apart = 0; apart <= 1; apart += 0.05) {
        const gone = first.away.x * shareGone(first, apart) + second.away.x * shareGone(second, apart)
        expect(gone).toBeCloseTo(explodedBy(board.explode, apart).x, 6)
      }
    }
    expect(explodedBy(twice.explode, 1).x).toBe(-150)
  })
})
