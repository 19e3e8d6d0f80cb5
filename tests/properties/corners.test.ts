import { describe, expect, it } from 'vitest'
import type { MaterialId } from '../../engine/basics/id'
import { type Random, randomFrom } from '../../engine/basics/random'
import { boxOf } from '../../engine/cabinets/boardBox'
import { derive } from '../../engine/pipeline'
import { applyEdit } from '../../engine/project/apply'
import type { Cabinet, Project } from '../../engine/project/document'
import { misfits } from '../../engine/runs/fit'
import { aCorner, cabinet, OTHER_WALL } from '../helpers/wall'

const WALLS = 400
/** Sums of sums on the grid of 1/3200 mm. */
const HAIR = 0.001

/** A few cabinets near the corner of two walls, straight and in the corner; only what fits beside those before it is kept. */
function anyCorner(seed: number): Project {
  const dice = randomFrom(seed)
  let project = aCorner()
  for (let at = 1; at <= 7; at++) {
    const fresh = anyCabinet(`${dice() < 0.7 ? 'B' : 'U'}${at}`, dice)
    const after = applyEdit(project, { kind: 'addCabinet', cabinet: fresh })
    if (misfits(after).length === 0) project = after
  }
  const countertop = { material: 'carcass' as MaterialId, overhang: 20, ends: 15, splash: 80, banding: 0 }
  const trim = { material: 'front' as MaterialId, height: 40, forward: 10 }
  const change = { countertop, kick: 'inLengths', lightRail: trim, crown: trim } as const
  return applyEdit(project, { kind: 'editBetween', change })
}

function anyCabinet(mark: string, dice: Random): Cabinet {
  const isSecond = dice() < 0.5
  const between = (least: number, most: number) => Math.round(least + dice() * (most - least))
  const depth = between(300, 620)
  const hand = isSecond ? 'left' : 'right'
  const corner = { kind: 'L', hand, other: between(850, 1100), otherDepth: between(300, 620) } as const
  const isCorner = dice() < 0.3
  const width = isCorner ? between(850, 1100) : between(300, 800)
  const fromCorner = isCorner ? 0 : dice() < 0.3 ? 0 : between(0, 1600)
  return cabinet(mark, {
    ...(isSecond ? { wall: OTHER_WALL } : {}),
    left: isSecond ? fromCorner : 3600 - width - fromCorner,
    width,
    depth,
    front: dice() < 0.5 ? { kind: 'door', hinge: 'left' } : { kind: 'open' },
    corner: isCorner ? corner : null,
    top: dice() < 0.25 ? { own: { material: 'drawer' as MaterialId, splash: between(0, 120) } } : {},
  })
}

interface Solid {
  readonly of: string
  readonly min: readonly [number, number, number]
  readonly max: readonly [number, number, number]
}

/** Every board in the room: x along the first wall, y up, z along the second, which goes on from the corner at 3600. */
function solidsIn(project: Project): Solid[] {
  const { cabinets, runs } = derive(project)
  const owners = [...cabinets.map(({ cabinet: place, parts }) => ({ place, parts })), ...runs]
  return owners.flatMap(({ place, parts }, at) =>
    parts.map((part): Solid => {
      const { min, max } = boxOf(part)
      const y = [place.bottom + min.y, place.bottom + max.y] as const
      const [from, to] = [place.left + min.x, place.left + max.x]
      const of = `${at}`
      return place.wall === OTHER_WALL
        ? { of, min: [3600 - max.z, y[0], from], max: [3600 - min.z, y[1], to] }
        : { of, min: [from, y[0], min.z], max: [to, y[1], max.z] }
    }),
  )
}

function doMeet(a: Solid, b: Solid): boolean {
  return [0, 1, 2].every((axis) => Math.min(a.max[axis]!, b.max[axis]!) - Math.max(a.min[axis]!, b.min[axis]!) > HAIR)
}

describe('whatever stands in a corner of two walls', () => {
  it('has no board in another cabinet or countertop, as long as nothing is said of its place', () => {
    let both = 0
    for (let seed = 1; seed <= WALLS; seed++) {
      const project = anyCorner(seed)
      const solids = solidsIn(project)
      if (Object.values<Cabinet>(project.cabinets).some(({ corner }) => corner)) both++
      const met = solids.flatMap((a, at) =>
        solids.slice(at + 1).flatMap((b) => (a.of !== b.of && doMeet(a, b) ? [[a, b]] : [])),
      )
      expect(met, `seed ${seed}`).toEqual([])
    }
    expect(both).toBeGreaterThan(WALLS / 4)
  }, 120_000)
})
