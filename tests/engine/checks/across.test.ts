import { describe, expect, it } from 'vitest'
import type { WallId } from '../../../engine/basics/id'
import { derive } from '../../../engine/pipeline'
import type { Cabinet, Project } from '../../../engine/project/document'
import { aRoom, cabinet, idOf, OTHER_WALL } from '../../helpers/wall'
import { figureOf, findingIn } from './findings'

const DRAWER = { kind: 'drawer' } as const
const LEFT = { kind: 'door', hinge: 'left' } as const
const ACROSS = /across the room/
/** Fronts of a new metric project are 18 thick. */
const FRONT = 18

/** A closed room of 3600 by so much, with cabinets at the first wall and at that across. */
function narrow(apart: number, ...cabinets: readonly Cabinet[]): Project {
  const room = aRoom(...cabinets)
  const sides = ['w2', 'w4'].map((id) => [id, { ...room.walls[id as WallId]!, length: apart }])
  return { ...room, walls: { ...room.walls, ...Object.fromEntries(sides) } }
}

const at = (mark: string, wall: string, left: number, said: Partial<Cabinet> = {}) =>
  cabinet(mark, { wall: wall as WallId, left, width: 600, depth: 580, front: DRAWER, ...said })

/** So far from the left end of the first wall is 3600 - 1000 - 600 from that of the wall across. */
const b1 = at('B1', 'w1', 1000)
const b2 = at('B2', 'w3', 2000)

describe('fronts across the room from each other', () => {
  it('cannot be opened where less is between them than the slides are long', () => {
    const project = narrow(1300, b1, b2)
    const between = 1300 - 2 * (580 + FRONT)
    const parts = derive(project).cabinets.flatMap((one) => one.parts)
    const slides = Math.max(...parts.filter(({ role }) => role === 'drawerSide').map(({ length }) => length))
    for (const [mark, other] of [
      ['B1', 'B2'],
      ['B2', 'B1'],
    ] as const) {
      const finding = findingIn(project, new RegExp(`^${mark}: what opens .* ${other} across`))!
      expect(finding).toMatchObject({ weight: 'mind', measure: `${between} mm`, source: 'worked out from the boards' })
      expect(figureOf(finding.limit)).toBeCloseTo(slides, 0)
    }
    const wide = (apart: number) => narrow(apart + 2 * (580 + FRONT), b1, b2)
    expect(findingIn(wide(slides - 1), /^B1: what opens/)).not.toBeNull()
    expect(findingIn(wide(slides), /what opens/)).toBeNull()
  })

  it('want a passage to work in, told once', () => {
    const wide = (apart: number) => narrow(apart + 2 * (580 + FRONT), b1, b2)
    const finding = findingIn(wide(899), ACROSS)!
    expect(finding).toMatchObject({
      weight: 'know',
      measure: '899 mm',
      limit: '900 mm',
      about: { cabinet: idOf('B1') },
    })
    expect(findingIn(wide(900), ACROSS)).toBeNull()
  })

  it('are of no concern to each other where they do not face', () => {
    // From 2600 of the wall across to the corner of 3600: before 0 to 1000 of the first.
    const aside = narrow(1300, b1, at('B2', 'w3', 2600))
    expect(findingIn(aside, /B2 across/)).toBeNull()
    expect(findingIn(narrow(1300, b1, at('B2', 'w3', 2599)), /^B1.*B2 across/)).not.toBeNull()
    const high = at('U2', 'w3', 2000, { kind: 'upper', bottom: 1400, depth: 1200, front: { kind: 'open' } })
    expect(findingIn(narrow(1900, b1, high), ACROSS)).toBeNull()
  })

  it('are known where three walls stand in a row, and not where they do not meet', () => {
    const room = narrow(1300, b1, b2)
    const { w4: _, ...three } = room.walls as Record<string, Project['walls'][WallId]>
    expect(findingIn({ ...room, walls: three as Project['walls'] }, /^B2.*B1 across/)).not.toBeNull()
    const loose = { ...three, [OTHER_WALL]: { ...room.walls[OTHER_WALL]!, meets: false } }
    expect(findingIn({ ...room, walls: loose as Project['walls'] }, ACROSS)).toBeNull()
  })

  it('open against a bare wall too', () => {
    expect(findingIn(narrow(900, b1), /the wall opposite across/)).toMatchObject({
      weight: 'mind',
      measure: `${900 - 580 - FRONT} mm`,
    })
  })

  it('swing in a circle, and pass what is only before their free edge', () => {
    // A door of 597 hinged at 1001.5; across stands a deep one from 1550 on, where it comes out about 240.
    const door = at('B1', 'w1', 1000, { front: LEFT })
    const deep = at('T2', 'w3', 3600 - 1550 - 600, { kind: 'tall', height: 2052, front: { kind: 'open' } })
    const apart = (gap: number) => narrow(gap + 580 + FRONT + 580, door, deep)
    expect(findingIn(apart(250), /what opens/)).toBeNull()
    expect(findingIn(apart(220), /^B1: what opens .* T2 across/)).not.toBeNull()
  })
})
