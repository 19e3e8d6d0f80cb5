import { describe, expect, it } from 'vitest'
import type { MaterialId, WallId } from '../../../engine/basics/id'
import { boxOf } from '../../../engine/cabinets/boardBox'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import type { Cabinet, Countertop, Project, TopHere } from '../../../engine/project/document'
import { startOf } from '../../../engine/project/ready'
import { readProject, writeProject } from '../../../engine/project/schema'
import { aWall, cabinet, idOf, type Said, WALL } from '../../helpers/wall'
import { findingIn } from '../checks/findings'

const TOP: Countertop = { material: 'carcass' as MaterialId, overhang: 20, ends: 15, splash: 80, banding: 0 }

function topped(cabinets: readonly Cabinet[], change: Partial<Countertop> = {}): Project {
  return applyEdit(aWall(...cabinets), { kind: 'editBetween', change: { countertop: { ...TOP, ...change } } })
}
const { overrides: ISLAND } = startOf(aWall(), 'islandBase')
const row = (said: (at: number) => Said = () => ({})) =>
  [600, 900, 500].map((width, at) => {
    const left = [200, 800, 1700][at]!
    return cabinet(`B${at + 1}`, { left, width, front: { kind: 'pair' }, ...said(at) })
  })
const here = (project: Project, mark: string, top: TopHere) =>
  applyEdit(project, { kind: 'setTop', ids: [idOf(mark)], top })
const boards = (project: Project, role: string) =>
  derive(project).runs.flatMap(({ parts }) => parts.filter((part) => part.role === role))
const sizes = (project: Project, role: string) =>
  boards(project, role).map(({ length, width }) => `${length} x ${width}`)

describe('the splash of a countertop', () => {
  it('is left out over a cabinet that has none, and ends at the cabinets beside it', () => {
    const project = here(topped(row()), 'B2', { hasSplash: false })
    expect(sizes(project, 'splash')).toEqual([`${15 + 600} x 80`, `${500 + 15} x 80`])
    expect(boards(project, 'splash').map((part) => boxOf(part).min.x)).toEqual([0, 15 + 600 + 900])
    // The top itself goes on.
    expect(sizes(project, 'countertop')).toEqual([`${15 + 2000 + 15} x ${580 + 18 + 20}`])
  })
  it('is banded at the ends that stop on the top, which are seen', () => {
    const project = here(topped(row(), { banding: 2 }), 'B1', { hasSplash: false })
    expect(boards(project, 'splash').map(({ banding }) => banding)).toEqual([{ low: 0, high: 2, start: 2, end: 2 }])
    const whole = boards(topped([cabinet('B1', { left: 0, width: 600 })], { banding: 2 }), 'splash')
    expect(whole.map(({ banding }) => banding)).toEqual([{ low: 0, high: 2, start: 0, end: 2 }])
  })
  it('may stand over one cabinet alone, with what is cut out of the top clear of it', () => {
    const bare = row(() => ({ top: { hasSplash: false } }))
    expect(sizes(topped(bare), 'splash')).toEqual([])
    expect(derive(topped(bare)).runs[0]!.place.height).toBe(18)
    expect(sizes(here(topped(bare), 'B2', { hasSplash: true }), 'splash')).toEqual(['900 x 80'])
  })
})

describe('the countertop of an island', () => {
  const island = (top: TopHere = {}) => row(() => ({ overrides: ISLAND, top }))
  it('has no splash, for want of a wall, unless it is asked for', () => {
    expect(sizes(topped(island()), 'splash')).toEqual([])
    expect(sizes(topped(island({ hasSplash: true })), 'splash')).toEqual([`${15 + 2000 + 15} x 80`])
  })
  it('stands out behind by as much as is said, over all of it, and is banded there', () => {
    const project = here(topped(island(), { banding: 2 }), 'B2', { rear: 300 })
    const [top] = boards(project, 'countertop')
    expect([top!.length, top!.width]).toEqual([15 + 2000 + 15, 300 + 580 + 18 + 20])
    expect([boxOf(top!).min.z, boxOf(top!).max.z]).toEqual([-300, 580 + 18 + 20])
    expect(top!.banding).toEqual({ low: 2, high: 2, start: 2, end: 2 })
  })
  it('stands out and is banded at both ends where it begins at the end of its line, which is no wall, but for one that meets it', () => {
    const island = [cabinet('B1', { left: 0, width: 600, overrides: ISLAND })]
    const [top] = boards(topped(island, { banding: 2 }), 'countertop')
    expect(boxOf(top!).max.x - boxOf(top!).min.x).toBe(15 + 600 + 15)
    expect(top!.banding).toMatchObject({ start: 2, end: 2 })
    const wall = topped([cabinet('B1', { left: 0, width: 600 })], { banding: 2 })
    expect(boards(wall, 'countertop')[0]!.length).toBe(600 + 15)
    const alone = topped(island, { banding: 2 })
    const next = { ...alone.walls[WALL]!, id: 'w2' as WallId, order: 1, meets: true, openings: {} }
    const moved = applyEdit(applyEdit(alone, { kind: 'addWall', wall: next }), {
      kind: 'shapeCabinets',
      shapes: [{ id: idOf('B1'), wall: next.id }],
    })
    expect(boards(moved, 'countertop')[0]!.length).toBe(600 + 15)
  })
  it('has its cut-outs as far from the front as before', () => {
    const sink = { of: 'sink', width: 500, depth: 400, fromFront: 60 } as const
    const project = here(applyEdit(topped(island()), { kind: 'setCutout', ids: [idOf('B2')], cutout: sink }), 'B2', {
      rear: 300,
    })
    const [cut] = boards(project, 'countertop')[0]!.operations
    // Across the board, from its rear edge.
    expect(cut).toMatchObject({ y: 300 + 618 - 60 - 400, width: 400 })
  })
  it('ends at the wall where not all of it stands away from the walls, and says so', () => {
    const mixed = row((at) => (at === 1 ? { overrides: ISLAND, top: { rear: 300 } } : {}))
    expect(sizes(topped(mixed), 'countertop')).toEqual([`${15 + 2000 + 15} x 618`])
    expect(findingIn(topped(mixed), /it ends at the wall/)).toMatchObject({ weight: 'mind', measure: '300 mm' })
    expect(findingIn(topped(island({ rear: 300 })), /it ends at the wall/)).toBeNull()
  })
  it('is kept in a file', () => {
    const project = topped(island({ rear: 300, hasSplash: false }))
    expect(readProject(writeProject(project))).toEqual({ ok: true, value: project })
    const bad = readProject(writeProject(project).replace('"rear": 300', '"rear": -300'))
    expect(bad.ok ? 'read' : bad.message).toMatch(/cabinets\.b\d\.top\.rear/)
  })
})
