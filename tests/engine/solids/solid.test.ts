import { describe, expect, it } from 'vitest'
import type { MaterialId } from '../../../engine/basics/id'
import { type Board, explodedBy, NO_BANDING } from '../../../engine/cabinets/board'
import type { Operation } from '../../../engine/cabinets/operation'
import { boxVolume } from '../../../engine/geometry/box'
import { placement } from '../../../engine/geometry/placement'
import { interferences } from '../../../engine/solids/interference'
import { meshOf, shapeKey } from '../../../engine/solids/mesh'
import { unseatedJoints } from '../../../engine/solids/seating'
import { boxesInCabinet, solidOf } from '../../../engine/solids/solid'
import { volumeOf } from '../../../engine/solids/volume'

const STAYS = { by: { x: 0, y: 0, z: 0 }, from: 0, to: 1 }

/** A board of 700 by 300 by 18 lying flat: its length to the right, its width to the rear, its inside up. */
function board(operations: readonly Operation[] = [], y = 0, changes: Partial<Board> = {}): Board {
  return {
    role: 'fixedShelf',
    number: 1,
    material: 'carcass' as MaterialId,
    length: 700,
    width: 300,
    thickness: 18,
    banding: NO_BANDING,
    placement: placement({ x: 0, y, z: 300 }, '+x', '-z'),
    operations,
    explode: STAYS,
    ...changes,
  }
}

const DADO: Operation = { kind: 'dado', face: 'inside', x: 200, y: 0, length: 18, width: 300, depth: 6 }
const NOTCH: Operation = { kind: 'notch', x: 0, y: 0, length: 100, width: 75 }
const HOLES: Operation = {
  kind: 'holeRow',
  purpose: 'shelfPin',
  face: 'outside',
  x: 300,
  y: 37,
  step: 32,
  count: 4,
  diameter: 5,
  depth: 11,
}

describe('the solid of a board', () => {
  it('is one box while nothing is worked on it', () => {
    expect(solidOf(board())).toEqual([{ min: { x: 0, y: 0, z: 0 }, max: { x: 700, y: 300, z: 18 } }])
  })
  it('is boxes that leave out its dado and its notch', () => {
    const volume = solidOf(board([DADO, NOTCH])).reduce((sum, box) => sum + boxVolume(box), 0)
    expect(volume).toBeCloseTo(700 * 300 * 18 - 18 * 300 * 6 - 100 * 75 * 18, 6)
  })
  it('loses what two cuts share only once', () => {
    const groove: Operation = { kind: 'groove', face: 'inside', x: 0, y: 12, length: 700, width: 6, depth: 8 }
    expect(volumeOf(board([DADO, groove]))).toBeCloseTo(700 * 300 * 18 - 18 * 300 * 6 - 700 * 6 * 8 + 18 * 6 * 6, 6)
  })
  it('loses a cylinder for every hole', () => {
    expect(volumeOf(board([HOLES]))).toBeCloseTo(700 * 300 * 18 - 4 * Math.PI * 2.5 ** 2 * 11, 6)
  })
  it('lies in the cabinet where the board lies', () => {
    expect(boxesInCabinet(board([], 40))).toEqual([{ min: { x: 0, y: 40, z: 0 }, max: { x: 700, y: 58, z: 300 } }])
  })
})

describe('two boards', () => {
  it('that touch do not take the same room', () => {
    expect(interferences([board(), board([], 18)])).toEqual([])
  })
  it('that reach into each other take as much room as they share', () => {
    expect(interferences([board(), board([], 17)]).map(({ volume }) => volume)).toEqual([700 * 300 * 1])
  })
  it('have a dado and its tongue in one place when the dado is too shallow', () => {
    // A board on its edge across the dado, reaching 6 into the other: 18 x 300 x 1 too much for a dado of 5.
    const tongue = board([], 0, { placement: placement({ x: 218, y: 12, z: 300 }, '+y', '-z') })
    const shallow: Operation = { ...DADO, depth: 5 }
    expect(interferences([board([DADO]), tongue])).toEqual([])
    expect(interferences([board([shallow]), tongue]).map(({ volume }) => volume)).toEqual([18 * 300 * 1])
  })
  it('have an unseated joint when the tongue does not reach the end of its dado', () => {
    const tongue = board([], 0, { placement: placement({ x: 218, y: 14, z: 300 }, '+y', '-z') })
    const found = unseatedJoints([board([DADO]), tongue], 0)
    expect(found.map(({ empty }) => Math.round(empty))).toEqual([18 * 300 * 2])
  })
})

describe('a board that leaves', () => {
  it('waits for its turn, goes, and stays where it went', () => {
    const explode = { by: { x: 0, y: 400, z: 0 }, from: 0.5, to: 0.75 }
    expect([0, 0.5, 0.625, 0.75, 1].map((apart) => explodedBy(explode, apart).y)).toEqual([0, 0, 200, 400, 400])
  })
})

describe('the mesh of a board', () => {
  it('is six faces and twelve edges while nothing is worked on it', () => {
    const { positions, indices, edges } = meshOf(board())
    expect([positions.length / 12, indices.length / 6, edges.length / 6]).toEqual([6, 6, 12])
  })
  it('has its faces where the wood ends: as much area as the board and the walls of its dado', () => {
    const { positions, indices } = meshOf(board([DADO]))
    // The two walls of the dado are added; what its floor takes from the face it gives back; its ends are open.
    expect(areaOf(positions, indices)).toBeCloseTo(2 * (700 * 300 + 700 * 18 + 300 * 18) + 2 * 300 * 6 - 2 * 18 * 6, 6)
  })
  it('has an edge along every corner of a dado, in one piece', () => {
    // Of the twelve edges two are cut in two (14); the dado has four long corners, four upright ones and two below.
    expect(meshOf(board([DADO])).edges.length / 6).toBe(14 + 4 + 4 + 2)
  })
  it('has its triangles turn left seen from outside', () => {
    const { positions, normals, indices } = meshOf(board([NOTCH, DADO]))
    for (let at = 0; at < indices.length; at += 3) {
      const [a, b, c] = [0, 1, 2].map((corner) => vectorAt(positions, indices[at + corner]!)) as [
        Triple,
        Triple,
        Triple,
      ]
      const turn = crossed(less(b, a), less(c, a))
      const normal = vectorAt(normals, indices[at]!)
      expect(turn[0] * normal[0] + turn[1] * normal[1] + turn[2] * normal[2]).toBeGreaterThan(0)
    }
  })
  it('is shared by boards that look alike wherever they lie', () => {
    expect(shapeKey(board([DADO], 500))).toBe(shapeKey(board([DADO])))
    expect(shapeKey(board([NOTCH]))).not.toBe(shapeKey(board([DADO])))
  })
})

type Triple = [number, number, number]

function vectorAt(values: readonly number[], at: number): Triple {
  return values.slice(3 * at, 3 * at + 3) as Triple
}

function less(a: Triple, b: Triple): Triple {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
}

function crossed(a: Triple, b: Triple): Triple {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]
}

function areaOf(positions: readonly number[], indices: readonly number[]): number {
  let area = 0
  for (let at = 0; at < indices.length; at += 3) {
    const [a, b, c] = [0, 1, 2].map((corner) => vectorAt(positions, indices[at + corner]!)) as [Triple, Triple, Triple]
    area += Math.hypot(...crossed(less(b, a), less(c, a))) / 2
  }
  return area
}
