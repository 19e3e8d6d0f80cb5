import { describe, expect, it } from 'vitest'
import type { Cabinet, Front, Opening, Project } from '../../../engine/project/document'
import { fitOf, misfits } from '../../../engine/runs/fit'
import { freeStretches, gapsBeside } from '../../../engine/runs/neighbours'
import { newCabinetAt, placesFor } from '../../../engine/runs/place'
import { reachingIn } from '../../../engine/runs/reach'
import { snapMove } from '../../../engine/runs/snap'
import { aCorner, aRoom, cabinet, OTHER_WALL, the } from '../../helpers/wall'

const DOOR: Front = { kind: 'door', hinge: 'left' }
/** The thickness of the fronts of a new metric project. */
const FRONT = 18

const L = { kind: 'L', hand: 'right', other: 950, otherDepth: 570 } as const

function why(project: Project, mark: string): string {
  const fit = fitOf(project, the(project, mark))
  return fit.fits ? fit.says : fit.why
}

function reaching(project: Project, wall: Cabinet['wall'] = OTHER_WALL) {
  return reachingIn(project, project.walls[wall]!).map(({ left, width, rear, front }) => [
    left,
    left + width,
    rear,
    front,
  ])
}

describe('what reaches in from the wall that is met', () => {
  it('goes along this wall by its depth with its doors, and out from it by its place', () => {
    const b1 = cabinet('B1', { left: 2900, width: 600, depth: 560, front: DOOR })
    expect(reaching(aCorner(b1))).toEqual([[0, 560 + FRONT, 3600 - 3500, 3600 - 2900]])
  })

  it('stands at the right end of the wall before, seen from there', () => {
    const b1 = cabinet('B1', { wall: OTHER_WALL, left: 20, width: 600, depth: 560 })
    const first = cabinet('B2').wall
    expect(reaching(aCorner(b1), first)).toEqual([[3600 - 560, 3600, 20, 620]])
  })

  it('is both legs of a corner cabinet', () => {
    const b1 = cabinet('B1', { left: 2700, width: 900, depth: 560, corner: L })
    expect(reaching(aCorner(b1))).toEqual([
      [0, 560, 0, 900],
      [0, 950, 0, 570],
    ])
  })

  it('comes round the last corner of a closed room as round any other', () => {
    const b1 = cabinet('B1', { left: 40, width: 600, depth: 560, front: DOOR })
    const b2 = cabinet('B2', { wall: 'w4' as Cabinet['wall'], left: 2100, width: 600, depth: 540 })
    const room = aRoom(b1, b2)
    // B2 ends 100 from the corner, and stands 540 along the first wall.
    expect(reaching(room, b1.wall)).toEqual([[0, 540, 100, 700]])
    expect(reaching(room, b2.wall)).toEqual([[2800 - 560 - FRONT, 2800, 40, 640]])
    // Out from the fourth wall they share less than along the first, where it would be 540 less 40.
    expect(why(room, 'B1')).toBe(`B1 would overlap B2 by ${560 + FRONT - 100} mm in the corner with Wall 4`)
  })

  it('is nothing while the walls do not meet', () => {
    const project = aCorner(cabinet('B1', { left: 2900 }))
    const apart = { ...project.walls[OTHER_WALL]!, meets: false }
    expect(reaching({ ...project, walls: { ...project.walls, [OTHER_WALL]: apart } })).toEqual([])
  })
})

describe('a cabinet in a corner of two walls', () => {
  const b1 = cabinet('B1', { left: 2700, width: 900, depth: 560, corner: L, front: DOOR })

  it('cannot stand in the other leg of a corner cabinet', () => {
    const project = aCorner(b1, cabinet('B2', { wall: OTHER_WALL, left: 850, width: 600 }))
    expect(why(project, 'B2')).toBe('B2 would overlap B1 by 100 mm in the corner with Wall')
    expect(why(project, 'B1')).toBe('B1 would overlap B2 by 100 mm in the corner with Side wall')
    expect(misfits(project)).toHaveLength(2)
  })

  it('stands against the end of the other leg', () => {
    const project = aCorner(b1, cabinet('B2', { wall: OTHER_WALL, left: 950, width: 600 }))
    expect(why(project, 'B2')).toBe('B2: fits, 1250 left to the wall end')
    expect(gapsBeside(project, the(project, 'B2')).left).toEqual({ gap: 0, to: 'B1' })
    expect(misfits(project)).toEqual([])
  })

  it('cannot begin before the doors of what ends at the other wall', () => {
    const base = cabinet('B1', { left: 3000, width: 600, depth: 560, front: DOOR })
    const at = (left: number) => aCorner(base, cabinet('B2', { wall: OTHER_WALL, left, width: 600, depth: 560 }))
    expect(why(at(560), 'B2')).toBe(`B2 would overlap B1 by ${FRONT} mm in the corner with Wall`)
    expect(misfits(at(560 + FRONT))).toEqual([])
  })

  it('may go on to the corner where what stands at the other wall begins before its front', () => {
    const base = cabinet('B1', { left: 2300, width: 600, depth: 560 })
    const project = aCorner(base, cabinet('B2', { wall: OTHER_WALL, left: 0, width: 600, depth: 560 }))
    expect(misfits(project)).toEqual([])
  })

  it('hangs over what stands there', () => {
    const project = aCorner(b1, cabinet('U1', { wall: OTHER_WALL, left: 0, width: 600 }))
    expect(misfits(project)).toEqual([])
  })

  it('does not reach before a door of the other wall', () => {
    const project = aCorner(b1)
    const door: Opening = { id: 'o1' as Opening['id'], kind: 'door', left: 800, bottom: 0, width: 900, height: 2000 }
    const side = { ...project.walls[OTHER_WALL]!, openings: { [door.id]: door } }
    const withDoor = { ...project, walls: { ...project.walls, [OTHER_WALL]: side } }
    expect(why(withDoor, 'B1')).toBe('B1 would stand before the door of Side wall')
    const short = { ...side, openings: {}, length: 930 }
    expect(why({ ...project, walls: { ...project.walls, [OTHER_WALL]: short } }, 'B1')).toBe(
      'B1 would reach 20 mm past the other end of Side wall',
    )
  })
})

describe('a free place at a wall that meets another', () => {
  const b1 = cabinet('B1', { left: 2700, width: 900, depth: 560, corner: L, front: DOOR })
  const project = aCorner(b1)
  const side = project.walls[OTHER_WALL]!

  it('begins behind the other leg', () => {
    expect(freeStretches(project, side, 'base')).toEqual([{ from: 950, to: 2800 }])
    expect(newCabinetAt(project, 'base', null, 600, OTHER_WALL)?.left).toBe(950)
    expect(freeStretches(project, side, 'upper')).toEqual([{ from: 0, to: 2800 }])
  })

  it('draws what is moved to the end of the leg', () => {
    const b2 = cabinet('B2', { wall: OTHER_WALL, left: 1500, width: 600 })
    const both = aCorner(b1, b2)
    const { left, guides } = snapMove(both, b2, { left: 958, bottom: 0 }, 20)
    expect(left).toBe(950)
    expect(guides.map(({ to }) => to)).toEqual(['the other leg of B1'])
  })

  it('is none for a corner cabinet whose other leg would find something at the other wall', () => {
    const taken = aCorner(cabinet('B1', { left: 2900, width: 700 }))
    const places = placesFor(taken, 'cornerBase', 900, OTHER_WALL)
    expect(places.map(({ left }) => left)).not.toContain(0)
    expect(
      places.every(({ left }) => fitOf(taken, newCabinetAt(taken, 'cornerBase', left, 900, OTHER_WALL)!).fits),
    ).toBe(true)
  })
})
