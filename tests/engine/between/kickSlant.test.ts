import { describe, expect, it } from 'vitest'
import type { Operation } from '../../../engine/cabinets/operation'
import { toCabinet } from '../../../engine/geometry/placement'
import type { Part } from '../../../engine/parts/part'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import type { Cabinet, Project } from '../../../engine/project/document'
import { interferences } from '../../../engine/solids/interference'
import { aCorner, aWall, cabinet, OTHER_WALL } from '../../helpers/wall'

const T = 18
const SETBACK = 75
/** The diagonal goes 900 along both walls and is 580 deep at both ends: its front is at 45 degrees. */
const HALF = Math.tan(Math.PI / 8)
const FRONT = (900 - 580) * Math.SQRT2

/** With kicks in lengths before legs. */
function onLegs(project: Project): Project {
  const method = project.methods[project.method]!
  const floor = { kind: 'legs', height: 100, setback: SETBACK } as const
  const legged = { ...project, methods: { ...project.methods, [project.method]: { ...method, floor } } }
  return applyEdit(legged, { kind: 'editBetween', change: { kick: 'inLengths' } })
}

const corner = { kind: 'diagonal', hand: 'right', other: 900, otherDepth: 580 } as const
const b1 = cabinet('B1', { left: 2100, width: 600 })
const b2 = cabinet('B2', { left: 2700, width: 900, corner })
const b3 = cabinet('B3', { wall: OTHER_WALL, left: 900, width: 500 })

const kicksOf = (project: Project): Readonly<Record<string, Part>> =>
  Object.fromEntries(
    derive(onLegs(project))
      .runs.filter(({ kind }) => kind === 'kick')
      .flatMap(({ place, parts }) =>
        parts.map((part) => {
          const { x, y, z } = part.placement.origin
          return [part.mark, { ...part, placement: { ...part.placement, origin: { x: x + place.left, y, z } } }]
        }),
      ),
  )

/** The short point of an end on the face, at its wall. */
function faceAt({ placement, length, operations }: Part, edge: 'start' | 'end') {
  const bevel = operations.find(
    (one): one is Extract<Operation, { kind: 'bevel' }> => one.kind === 'bevel' && one.edge === edge,
  )
  const by = bevel?.by ?? 0
  return toCabinet(placement, edge === 'start' ? by : length - by, 0, 0)
}

describe('the kick before a diagonal on legs', () => {
  it('is mitred against the kicks beside it, which go on under the diagonal until their faces meet', () => {
    const kicks = kicksOf(aCorner(b1, b2, b3))
    expect(Object.keys(kicks)).toEqual(['BK1-KL1', 'BK3-KL1', 'BKC2-KL1'])
    // As far behind the fronts as the setback, faces meet 75 x tan 22.5 past the ends of the cabinets; behind them all are longer.
    expect(kicks['BK1-KL1']!.length).toBeCloseTo(600 + SETBACK * HALF + T * HALF, 2)
    expect(kicks['BK3-KL1']!.length).toBeCloseTo(500 + SETBACK * HALF + T * HALF, 2)
    expect(kicks['BKC2-KL1']!.length).toBeCloseTo(FRONT + 2 * SETBACK * HALF + 2 * T * HALF, 2)
    const by = expect.closeTo(T * HALF, 2)
    const mitre = (edge: string) => ({ kind: 'bevel', edge, face: 'outside', by })
    expect(kicks['BK1-KL1']!.operations).toEqual([mitre('start')])
    expect(kicks['BK3-KL1']!.operations).toEqual([mitre('end')])
    expect(kicks['BKC2-KL1']!.operations).toEqual([mitre('start'), mitre('end')])
    const meets = { x: expect.closeTo(2700 + SETBACK * HALF, 2), z: expect.closeTo(580 - SETBACK, 2) }
    expect(faceAt(kicks['BK1-KL1']!, 'start')).toMatchObject(meets)
    expect(faceAt(kicks['BKC2-KL1']!, 'end')).toMatchObject(meets)
    expect(interferences([kicks['BK1-KL1']!, kicks['BKC2-KL1']!])).toEqual([])
  })

  it('is in line with the end of its cabinet where no kick goes on from there', () => {
    for (const others of [[], [{ ...b1, depth: 560 }]] satisfies Cabinet[][]) {
      const kick = kicksOf(aWall(...others, b2))['BKC2-KL1']!
      // 75 behind the front it comes out at the end of the cabinet 75 x sqrt 2 behind the front edge there.
      const end = { x: expect.closeTo(2700, 2), z: expect.closeTo(580 - SETBACK * Math.SQRT2, 2) }
      expect(faceAt(kick, 'end')).toMatchObject(end)
      expect(kick.length).toBeCloseTo(FRONT + 2 * SETBACK + 2 * T, 2)
      expect(toCabinet(kick.placement, kick.length, 0, T).x).toBeCloseTo(2700, 2)
    }
  })

  it('is the mirror image with the corner at the left', () => {
    const left = { ...corner, hand: 'left' } as const
    const b4 = cabinet('B4', { left: 900, width: 600 })
    const kicks = kicksOf(aWall({ ...b2, left: 0, corner: left }, b4))
    expect(kicks['BKC2-KL1']!.length).toBeCloseTo(FRONT + SETBACK * HALF + SETBACK + T * HALF + T, 2)
    expect(faceAt(kicks['BKC2-KL1']!, 'start')).toMatchObject({ x: expect.closeTo(900 - SETBACK * HALF, 2) })
    expect(faceAt(kicks['BK4-KL1']!, 'end')).toMatchObject({ x: expect.closeTo(900 - SETBACK * HALF, 2) })
    expect(interferences([kicks['BK4-KL1']!, kicks['BKC2-KL1']!])).toEqual([])
  })

  it('is no board of its cabinet, and is left out where every cabinet has its own', () => {
    const project = onLegs(aWall(b2))
    expect(derive(project).cabinets[0]!.parts.filter(({ role }) => role === 'kickBoard')).toEqual([])
    const own = applyEdit(project, { kind: 'editBetween', change: { kick: 'perCabinet' } })
    expect(derive(own).runs).toEqual([])
  })
})
