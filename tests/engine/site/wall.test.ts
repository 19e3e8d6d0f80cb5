import { describe, expect, it } from 'vitest'
import type { WallId } from '../../../engine/basics/id'
import { firstWall, openingsAcross, wallsOf } from '../../../engine/site/wall'
import { aWall, withWall } from '../../helpers/wall'

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
