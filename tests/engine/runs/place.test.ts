import { describe, expect, it } from 'vitest'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import type { Project } from '../../../engine/project/document'
import { fitOf } from '../../../engine/runs/fit'
import { newCabinetAt, placesFor } from '../../../engine/runs/place'
import { aWall, cabinet } from '../../helpers/wall'

describe('a new cabinet', () => {
  it('has the usual size of its kind, and the first id and number that are free', () => {
    const made = newCabinetAt(aWall(cabinet('B1'), cabinet('B3', { left: 2000 })), 'base', 900)
    expect(made).toMatchObject({ id: 'k1', number: 2, left: 900, bottom: 0, width: 600, height: 868, depth: 580 })
  })

  it('goes to the first free place when none is named', () => {
    expect(newCabinetAt(aWall(cabinet('B1', { left: 0 })), 'base', null)).toMatchObject({ left: 600, width: 600 })
    expect(newCabinetAt(aWall(cabinet('B1', { left: 300 })), 'base', null)).toMatchObject({ left: 900 })
  })

  it('is narrowed to the only gap there is, down to 150', () => {
    const gapOf = (gap: number) => aWall(cabinet('B1', { left: 0, width: 3600 - gap }))
    expect(newCabinetAt(gapOf(400), 'base', null)).toMatchObject({ left: 3200, width: 400 })
    expect(newCabinetAt(gapOf(150), 'base', null)).toMatchObject({ left: 3450, width: 150 })
    expect(newCabinetAt(gapOf(149), 'base', null)).toBeNull()
  })

  it('has a pair of doors when it is wider than 24 in', () => {
    const doors = [609.6, 800].map((width) => {
      const added = applyEdit(aWall(), { kind: 'addCabinet', cabinet: newCabinetAt(aWall(), 'base', 0, width)! })
      return derive(added).cabinets[0]!.fronts.length
    })
    expect(doors).toEqual([1, 2])
  })

  it('goes on under the countertop of a base that it touches, where that has anything of its own', () => {
    const own = { overhang: 45 }
    const wall = aWall(cabinet('B1', { left: 600, top: { own, rear: 200 } }), cabinet('T1', { left: 3000 }))
    expect(newCabinetAt(wall, 'base', 1200)!.top).toEqual({ own })
    expect(newCabinetAt(wall, 'base', 0)!.top).toEqual({ own })
    // Away from it, lower than it, or over it there is nothing to go on.
    expect(newCabinetAt(wall, 'base', 1300)!.top).toBeUndefined()
    expect(newCabinetAt(wall, 'benchBox', 1200)!.top).toBeUndefined()
    expect(newCabinetAt(wall, 'upper', 1200)!.top).toBeUndefined()
  })

  it('can be added again and again until the wall is full, and always fits', () => {
    let project = aWall()
    for (const kind of ['tall', 'base', 'upper'] as const) {
      for (let made = newCabinetAt(project, kind, null); made; made = newCabinetAt(project, kind, null)) {
        expect(fitOf(project, made).fits).toBe(true)
        project = applyEdit(project, { kind: 'addCabinet', cabinet: made })
        if (kind === 'tall') break
      }
    }
    // One tall of 600, then 3000 / 600 bases and as many uppers.
    expect(Object.keys(project.cabinets)).toHaveLength(1 + 5 + 5)
  })
})

describe('the places for a click', () => {
  it('are both ends of every free stretch that has room for two', () => {
    const places = placesFor(aWall(cabinet('B1', { left: 1000 })), 'base', 500)
    expect(places.map(({ left, width }) => `${left}+${width}`)).toEqual(['0+500', '500+500', '1600+500', '3100+500'])
  })

  it('are narrowed to a stretch that is a little short', () => {
    const places = placesFor(aWall(cabinet('B1', { left: 0, width: 3200 })), 'base', 600)
    expect(places).toEqual([{ left: 3200, bottom: 0, width: 400, height: 868 }])
  })

  it('are none on a full wall', () => {
    expect(placesFor(aWall(cabinet('B1', { left: 0, width: 3600 })), 'base', 600)).toEqual([])
  })
})

describe('the places for a corner cabinet', () => {
  const lefts = (project: Project, width: number) => placesFor(project, 'cornerUpper', width).map(({ left }) => left)

  it('are the ends of the wall, flush with its corners, though there is more room than it takes', () => {
    // 3600 - 2700 leaves 900, where 600 go: not beside U1, but in the corner.
    const project = aWall(cabinet('U1', { left: 2100, width: 600 }))
    expect(lefts(project, 600)).toEqual([0, 3600 - 600])
    expect(newCabinetAt(project, 'cornerUpper', 3000, 600)?.corner).toMatchObject({ hand: 'right' })
    expect(newCabinetAt(project, 'upper', null, 600)?.left).toBe(0)
  })

  it('are none where its legs would be shorter than the one across is deep, a side thick and a leaf wide', () => {
    // Bases are 580 deep, sides 18 thick, and the narrowest leaf is 150.
    const least = 580 + 18 + 150
    const withGaps = (left: number) =>
      placesFor(aWall(cabinet('B1', { left, width: 3600 - 2 * left })), 'cornerBase', 900).map(({ width }) => width)
    expect(withGaps(least - 1)).toEqual([])
    expect(withGaps(least)).toEqual([least, least])
    const made = newCabinetAt(aWall(), 'cornerBase', 0, least)!
    const stops = derive(aWall(made)).problems.filter(({ weight }) => weight === 'stop')
    expect(stops).toEqual([])
  })

  it('are those along the wall where both of its ends are taken', () => {
    const project = aWall(cabinet('U1', { left: 0, width: 600 }), cabinet('U2', { left: 3000, width: 600 }))
    expect(lefts(project, 900)).toEqual([600, 3000 - 900])
  })
})
