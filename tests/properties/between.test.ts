import { describe, expect, it } from 'vitest'
import type { MaterialId } from '../../engine/basics/id'
import { type Random, randomFrom } from '../../engine/basics/random'
import type { Part } from '../../engine/parts/part'
import { derive } from '../../engine/pipeline'
import { applyEdit } from '../../engine/project/apply'
import type { Beside, Between, Cabinet, Project } from '../../engine/project/document'
import type { Floor } from '../../engine/project/method'
import { misfits } from '../../engine/runs/fit'
import { roomBeside } from '../../engine/runs/footprint'
import { interferences } from '../../engine/solids/interference'
import { pick } from '../helpers/dice'
import { aWall, cabinet, withWall } from '../helpers/wall'

const WALLS = 150
const FRONT = 'front' as MaterialId
const BESIDE: readonly Beside[] = [
  { kind: 'none' },
  { kind: 'none' },
  { kind: 'filler', width: 37.5, scribe: 8 },
  { kind: 'skin', material: 'back' as MaterialId },
  { kind: 'panel', material: FRONT, foot: 'floor' },
  { kind: 'panel', material: FRONT, foot: 'notched' },
]
const FLOORS: readonly Floor[] = [
  { kind: 'notched', height: 100, setback: 75 },
  { kind: 'plinth', height: 90, setback: 60 },
  { kind: 'legs', height: 110, setback: 50 },
]

/** Bases, a tall and uppers side by side, each as close to the one before as what stands beside them lets it. */
function anyWall(seed: number): Project {
  const dice = randomFrom(seed)
  const oneOf = <Value>(values: readonly Value[]): Value => pick(values, dice)
  const empty = withWall(
    aWall(),
    { length: 9000 },
    { kind: 'window', left: 500, bottom: 2330, width: 3000, height: 50 },
  )
  const low = [...Array.from({ length: 5 }, (_, at) => `B${at + 1}`), 'T1'].sort(() => dice() - 0.5)
  const cabinets = [...inARow(low, empty, dice), ...inARow(['U1', 'U2'], empty, dice)].filter(
    (one, _, all) => one.kind !== 'upper' || clearOfTalls(one, all, empty),
  )
  const wall = cabinets.reduce((project, one) => applyEdit(project, { kind: 'addCabinet', cabinet: one }), empty)
  const floor = oneOf(FLOORS)
  const built = applyEdit(wall, {
    kind: 'editMethod',
    id: wall.method,
    change: { floor, frontMount: oneOf(['fullOverlay', 'inset']) },
  })
  const countertop = { material: 'carcass' as MaterialId, overhang: 20, ends: 25, splash: oneOf([0, 90]), banding: 0 }
  return applyEdit(built, { kind: 'editBetween', change: { kick: 'inLengths', countertop, ...anyTrims(dice) } })
}

/** Trims before and behind the front edge, on a wall with a window. */
function anyTrims(dice: Random): Partial<Between> {
  const trim = (height: number) => ({ material: FRONT, height, forward: Math.round(dice() * 80) - 40 })
  return { lightRail: trim(45), crown: trim(70), valance: trim(120) }
}

function inARow(marks: readonly string[], project: Project, dice: Random): Cabinet[] {
  let at = 50 + Math.round(dice() * 100)
  return marks.map((mark) => {
    const pick = () => BESIDE[Math.floor(dice() * BESIDE.length)]!
    const beside = { left: pick(), right: pick() }
    const width = 400 + Math.round(dice() * 500)
    const left = at + roomBeside({ beside }, 'left', project)
    at = left + width + roomBeside({ beside }, 'right', project) + (dice() < 0.3 ? Math.round(dice() * 60) : 0)
    const own = { material: pickBoard(dice), overhang: Math.round(dice() * 40), ends: Math.round(dice() * 30) }
    const top = dice() < 0.3 ? { own } : {}
    const cutout = dice() < 0.3 ? ({ of: 'hob', width: 300, depth: 380, fromFront: 60 } as const) : null
    return cabinet(mark, { left, width, beside, cutout, top, front: { kind: 'pair' } })
  })
}

/** Of one thickness with the others, and thinner. */
function pickBoard(dice: Random): MaterialId {
  return (dice() < 0.5 ? FRONT : 'drawer') as MaterialId
}

function clearOfTalls(upper: Cabinet, all: readonly Cabinet[], project: Project): boolean {
  const others = all.filter(({ id }) => id === upper.id || id.startsWith('t'))
  return (
    misfits(others.reduce((one, box) => applyEdit(one, { kind: 'addCabinet', cabinet: box }), project)).length === 0
  )
}

/** Every part in the frame of the wall. */
function onTheWall(project: Project): Part[] {
  const { cabinets, runs } = derive(project)
  const placed = [
    ...cabinets.map(({ cabinet: place, parts }) => ({ place, parts })),
    ...runs.map(({ place, parts }) => ({ place, parts })),
  ]
  return placed.flatMap(({ place, parts }) =>
    parts.map((part) => {
      const { x, y, z } = part.placement.origin
      return { ...part, placement: { ...part.placement, origin: { x: x + place.left, y: y + place.bottom, z } } }
    }),
  )
}

describe('what stands between cabinets and over them', () => {
  it('is never where a cabinet or another of its kind is', () => {
    let found = 0
    let trims = 0
    for (let seed = 0; seed < WALLS; seed++) {
      const project = anyWall(seed)
      expect(misfits(project), `seed ${seed}`).toEqual([])
      const parts = onTheWall(project)
      trims += parts.filter(({ role }) => role === 'lightRail' || role === 'crown' || role === 'valance').length
      found += parts.filter(({ role }) => role === 'longKick' || role === 'countertop' || role === 'filler').length
      const told = interferences(parts).map(({ a, b, volume }) => `${a.mark} in ${b.mark}: ${volume} mm3`)
      expect(told, `seed ${seed}`).toEqual([])
    }
    expect(found).toBeGreaterThan(WALLS * 3)
    expect(trims).toBeGreaterThan(WALLS * 2)
  })
})
