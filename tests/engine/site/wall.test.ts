import { describe, expect, it } from 'vitest'
import type { WallId } from '../../../engine/basics/id'
import { applyEdit } from '../../../engine/project/apply'
import type { Project } from '../../../engine/project/document'
import { readProject, writeProject } from '../../../engine/project/schema'
import { cornersOf, firstWall, freshWall, openingsAcross, wallsOf } from '../../../engine/site/wall'
import { aRoom, aWall, withWall } from '../../helpers/wall'

const window = { kind: 'window', left: 1300, bottom: 1000, width: 1200, height: 1100 } as const
const door = { kind: 'door', left: 0, bottom: 0, width: 800, height: 2000 } as const

describe('the walls of a project', () => {
  it('come in their own order, whatever they are called', () => {
    const project = aWall()
    const second = { ...firstWall(project)!, id: 'a1' as WallId, order: 2 }
    const two = { ...project, walls: { [second.id]: second, ...project.walls } }
    expect(wallsOf(two).map(({ id }) => id)).toEqual(['w1', 'a1'])
    expect(firstWall(two)?.id).toBe('w1')
  })
})

describe('the corners of walls that meet', () => {
  const ends = (project: Project) => cornersOf(project).map(({ before, after }) => `${before.id} ${after.id}`)

  it('go round a closed room of four walls', () => {
    expect(ends(aRoom())).toEqual(['w1 w2', 'w2 w3', 'w3 w4', 'w4 w1'])
  })

  it('do not close while the fourth wall does not, nor on three walls', () => {
    const room = aRoom()
    const fourth = room.walls['w4' as WallId]!
    const open = { ...room, walls: { ...room.walls, [fourth.id]: { ...fourth, closes: false } } }
    expect(ends(open)).toEqual(['w1 w2', 'w2 w3', 'w3 w4'])
    expect(ends(applyEdit(room, { kind: 'removeWall', id: 'w2' as WallId }))).toEqual(['w1 w3', 'w3 w4'])
  })

  it('are the same when the project is saved and opened', () => {
    const read = readProject(writeProject(aRoom()))
    expect(read.ok && ends(read.value)).toEqual(ends(aRoom()))
  })

  it('are not those of another wall that is added to a closed room', () => {
    const fresh = freshWall(aRoom())
    expect(fresh.closes).toBeUndefined()
    expect(ends(applyEdit(aRoom(), { kind: 'addWall', wall: fresh }))).toHaveLength(4)
  })
})

describe('the openings across a band of heights', () => {
  const wall = firstWall(withWall(aWall(), {}, window, door))!

  it('are those that reach into it, from left to right', () => {
    expect(openingsAcross(wall, { from: 0, to: 1001 }).map(({ kind }) => kind)).toEqual(['door', 'window'])
  })

  it('are not those that only touch it', () => {
    expect(openingsAcross(wall, { from: 0, to: 1000 }).map(({ kind }) => kind)).toEqual(['door'])
    expect(openingsAcross(wall, { from: 2000, to: 2100 }).map(({ kind }) => kind)).toEqual(['window'])
  })
})
