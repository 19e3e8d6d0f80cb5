import { describe, expect, it } from 'vitest'
import type { WallId } from '../../../engine/basics/id'
import { derive } from '../../../engine/pipeline'
import type { Cabinet, Project } from '../../../engine/project/document'
import { aRoom, cabinet, idOf, OTHER_WALL } from '../../helpers/wall'
import { built, figureOf, findingIn } from './findings'

const DRAWER = { kind: 'drawer' } as const
const LEFT = { kind: 'door', hinge: 'left' } as const
const ACROSS = /across the room/
/** Common practice: what a handle stands out. */
const PULL = 40
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
      expect(finding).toMatchObject({ weight: 'mind', measure: `${between} mm` })
      expect(finding.source).toContain('worked out from the boards')
      expect(figureOf(finding.limit)).toBeCloseTo(slides + 2 * PULL, 0)
    }
    const wide = (apart: number) => narrow(apart + 2 * (580 + FRONT), b1, b2)
    expect(findingIn(wide(slides - 1), /^B1: what opens/)?.weight).toBe('mind')
    // From there on only the pulls of both meet.
    expect(findingIn(wide(slides), /^B1: what opens/)?.weight).toBe('know')
    expect(findingIn(wide(slides + 2 * PULL - 1), /^B1: what opens/)?.message).toMatch(
      /own pull 40 mm.*pulls of B2 40 mm/,
    )
    expect(findingIn(wide(slides + 2 * PULL), /what opens/)).toBeNull()
    expect(findingIn(narrow(slides + PULL - 1 + 580 + FRONT, b1), /what opens/)?.limit).toBe(`${slides + PULL} mm`)
    expect(findingIn(narrow(slides + PULL + 580 + FRONT, b1), /what opens/)).toBeNull()
  })

  it('come out less by what standard slides leave inside: 4 in at least, by the Architectural Woodwork Standards', () => {
    const wide = (apart: number) => narrow(apart + 580 + FRONT, b1)
    const drawer = derive(wide(2000)).cabinets[0]!.parts.find(({ role }) => role === 'drawerSide')!.length
    const out = drawer - 4 * 25.4 + PULL
    const standard = (project: Project) => {
      const { slides } = project.methods[project.method]!
      return built(project, { slides: { ...slides, extension: 'standard' } })
    }
    expect(findingIn(standard(wide(out - 1)), /what opens/)?.limit).toBe(`${out} mm`)
    expect(findingIn(standard(wide(out)), /what opens/)).toBeNull()
    expect(findingIn(wide(out), /what opens/)).not.toBeNull()
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

  it('open against a bare wall too, with their pulls', () => {
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

describe('a passage between two walls', () => {
  const wide = (apart: number, ...more: readonly Cabinet[]) => narrow(apart + 2 * (580 + FRONT), b1, b2, ...more)
  const PASSAGE = /from its face to/
  const [aisle, walkway] = [42 * 25.4, 36 * 25.4]

  it('is asked to be 42 in wide where one works between two runs, by NKBA guideline 6', () => {
    const finding = findingIn(wide(aisle - 1), PASSAGE)!
    expect(finding).toMatchObject({ weight: 'know', measure: `${aisle - 1} mm`, limit: `${aisle} mm` })
    expect(finding.source).toContain('NKBA guideline 6')
    expect(finding.message).toContain('1219.2 mm where several do')
    expect(findingIn(wide(aisle), PASSAGE)).toBeNull()
    expect(findingIn(wide(walkway - 1), PASSAGE)?.weight).toBe('mind')
    expect(findingIn(wide(walkway), PASSAGE)?.weight).toBe('know')
  })

  it('is told once for all that stand along it, about the one where it is narrowest', () => {
    const deeper = at('B3', 'w1', 1600, { depth: 600 })
    const more = [deeper, at('B4', 'w1', 2200), at('B5', 'w3', 1400), at('B6', 'w3', 800)]
    const finding = findingIn(wide(1000, ...more), PASSAGE)!
    expect(finding.about).toEqual({ kind: 'cabinet', cabinet: idOf('B3') })
    // From 1600 to 2200, which is 3600 - 2200 to 3600 - 1600 of the wall across: B5.
    expect(finding.measure).toBe(`${1000 - 20} mm`)
    expect(finding.message).toContain('B3: it is 980 mm from its face to B5')
    expect(finding.message).toContain('B1, B2, B4 and B6 stand in the same passage')
  })

  it('is asked to be 36 in wide along a bare wall, by NKBA guideline 7', () => {
    const bare = (gap: number) => narrow(gap + 580 + FRONT, b1)
    expect(findingIn(bare(walkway - 1), PASSAGE)).toMatchObject({ weight: 'know', limit: `${walkway} mm` })
    expect(findingIn(bare(walkway - 1), PASSAGE)?.source).toContain('NKBA guideline 7')
    expect(findingIn(bare(walkway), PASSAGE)).toBeNull()
  })
})
