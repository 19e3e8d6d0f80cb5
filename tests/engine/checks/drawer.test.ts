import { describe, expect, it } from 'vitest'
import { derive } from '../../../engine/pipeline'
import type { DrawerInsert, Project } from '../../../engine/project/document'
import { aWall, cabinet, the } from '../../helpers/wall'
import { figureOf, findingIn, remedied } from './findings'

const drawers = (width: number, depth = 580) =>
  aWall(cabinet('B1', { left: 400, width, depth, front: { kind: 'drawer' } }))

const LB = 0.45359237

/** 15 lb on each square foot of its bottom, in kg. Source: ANSI/KCMA A161.1, 7.1, as reproduced by a panel trader. */
function held(project: ReturnType<typeof drawers>): number {
  const parts = derive(project).cabinets.flatMap((one) => one.parts)
  const bottom = parts.find(({ role }) => role === 'drawerBottom')!
  return ((15 * bottom.length * bottom.width) / 304.8 ** 2) * LB
}

// Source of the classes, 50, 75 and 100 lb: Architectural Woodwork Standards (2009), appendix B, p. 584.
describe('the slides of a drawer', () => {
  it('are of no concern while the drawer, full, is within the least class', () => {
    expect(findingIn(drawers(300), /class/)).toBeNull()
  })

  it('are of the class that carries the drawer with what is in it', () => {
    const project = drawers(600)
    const finding = findingIn(project, /class/)!
    expect(finding.weight).toBe('know')
    expect(finding.message).toContain(`${Math.round(10 * held(project)) / 10} kg in it`)
    const whole = figureOf(finding.measure)
    expect(whole).toBeGreaterThan(50 * LB)
    expect(figureOf(finding.limit)).toBeCloseTo(whole <= 75 * LB ? 75 * LB : 100 * LB, 1)
    expect(whole).toBeGreaterThan(held(project))
    const mended = remedied(project, finding)
    expect(findingIn(mended, /class/)).toBeNull()
    expect(the(mended, 'B1').overrides.slides).toEqual({ loadClass: whole <= 75 * LB ? 75 : 100 })
  })

  it('are told for one drawer or for several, the heaviest of them by its weight', () => {
    expect(findingIn(drawers(600), /class/)!.message).toMatch(
      /^B1: 1 drawer with [\d.]+ kg in it, [\d.]+ kg with its boards: /,
    )
    const row = { size: { kind: 'share', share: 1 }, front: { kind: 'drawer' } } as const
    const bank = aWall(cabinet('B1', { left: 400, width: 1200, front: { kind: 'rows', rows: [row, row, row] } }))
    expect(findingIn(bank, /class/)!.message).toMatch(
      /^B1: 3 drawers, the heaviest with [\d.]+ kg in it, .*make two of each\.$/,
    )
  })

  it('are tied together, or the drawer is two, where it is wider than twice their length', () => {
    // Sides of 18 and clearances of 12.7: 2 x 30.7 = 61.4 less than its cabinet. Slides of 500 in a depth of 580.
    const side = (width: number) =>
      derive(drawers(width)).cabinets[0]!.parts.find(({ role }) => role === 'drawerSide')!.length
    const most = 2 * side(1000) + 2 * (18 + 12.7)
    expect(findingIn(drawers(most), /askew/)).toBeNull()
    const finding = findingIn(drawers(most + 10), /askew/)
    expect(finding?.weight).toBe('know')
    expect(figureOf(finding?.measure)).toBe(2 * side(1000) + 10)
    expect(figureOf(finding?.limit)).toBe(2 * side(1000))
  })

  it('of a new project carry a drawer of the usual width, but not the one of a base twice as wide', () => {
    // Three drawers in a base of 600: each weighs up to 34 kg full, which is the class of 75 lb.
    const row = { size: { kind: 'share', share: 1 }, front: { kind: 'drawer' } } as const
    const three = { kind: 'rows', rows: [row, row, row] } as const
    const bank = (width: number) => aWall(cabinet('B1', { left: 400, width, front: three }))
    expect(findingIn(bank(600), /class/)).toBeNull()
    expect(findingIn(bank(1200), /class/)).not.toBeNull()
  })

  it('of the build method are of no concern where they carry it', () => {
    const project = drawers(600)
    const method = project.methods[project.method]!
    const strong = { ...method, slides: { ...method.slides, loadClass: 100 } }
    expect(findingIn({ ...project, methods: { ...project.methods, [method.id]: strong } }, /class/)).toBeNull()
  })

  it('are more than any usual class carries under a very wide drawer', () => {
    const finding = findingIn(drawers(1600), /class/)
    expect(finding?.weight).toBe('mind')
    expect(figureOf(finding?.measure)).toBeGreaterThan(100 * LB)
  })

  it('carry the insert that lies in the drawer too, and none of another', () => {
    const bank = (insert?: DrawerInsert) => {
      const row = {
        size: { kind: 'share', share: 1 },
        front: { kind: 'drawer', ...(insert ? { insert } : {}) },
      } as const
      return aWall(cabinet('B1', { left: 400, width: 1000, front: { kind: 'rows', rows: [row, row] } }))
    }
    const whole = (project: Project) => figureOf(findingIn(project, /class/)!.measure)
    const [full, empty] = [bank({ divisions: 9, height: 120 }), bank()]
    const boards = derive(full).cabinets[0]!.parts.filter(({ role }) => role.startsWith('insert'))
    expect(boards.length).toBe(2 * (2 + 10))
    const kg = boards.reduce((sum, one) => {
      const density = full.materials[one.material]!.density
      return sum + (one.length * one.width * one.thickness * density) / 1e9
    }, 0)
    expect(kg / 2).toBeGreaterThan(2)
    expect(Math.abs(whole(full) - whole(empty) - kg / 2)).toBeLessThan(0.11)
  })
})
