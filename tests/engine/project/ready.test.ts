import { describe, expect, it } from 'vitest'
import { valuesOf } from '../../../engine/basics/id'
import { derive } from '../../../engine/pipeline'
import { blindWidthLeast } from '../../../engine/project/blind'
import { newProject } from '../../../engine/project/defaults'
import type { Project } from '../../../engine/project/document'
import type { BuildMethod } from '../../../engine/project/method'
import { nicheFrontHeight } from '../../../engine/project/ready'
import { newKindName, READY } from '../../../engine/project/readyKinds'
import { fitOf } from '../../../engine/runs/fit'
import { newCabinetAt } from '../../../engine/runs/place'
import { interferences } from '../../../engine/solids/interference'
import { unseatedJoints } from '../../../engine/solids/seating'
import { boardIn, sizeOf } from '../../helpers/cabinets'
import { readyBuild } from '../../helpers/ready'

const NAMES = READY.map(([name]) => name)
const UNITS = ['mm', 'in'] as const
const roles = (name: (typeof NAMES)[number]) => readyBuild(name).boards.map(({ role }) => role)

describe.each(UNITS)('every ready kind in %s', (unit) => {
  const project = newProject(unit)
  const methods = valuesOf<BuildMethod>(project.methods)

  it.each(NAMES)('%s fits a free wall and is built without a problem', (name) => {
    expect(fitOf(project, newCabinetAt(project, name, 0)!).fits).toBe(true)
    for (const left of [0, 1800]) expect(readyBuild(name, project, left).problems).toEqual([])
  })

  it.each(NAMES)('%s can be built by each method that it is placed under', (name) => {
    for (const method of methods) {
      const under = { ...project, method: method.id }
      const stops = readyBuild(name, under).problems.filter(({ weight }) => weight === 'stop')
      expect(stops.map(({ message }) => `${method.name}: ${message}`)).toEqual([])
    }
  })

  it.each(NAMES)('%s has no two boards in one place, every joint filled, and comes apart, by either method', (name) => {
    for (const method of methods) {
      const { boards } = readyBuild(name, project, 0, method)
      for (let step = 0; step <= 20; step++) expect(interferences(boards, step / 20)).toEqual([])
      expect(unseatedJoints(boards, 2)).toEqual([])
    }
  })
})

// By the shop standard: boards of 18, dados of 6, plinth of 100, fronts with 1.5 beside, 3 above and between.
describe('the main parts of', () => {
  it('a drawer base are three fronts that share its height', () => {
    const { boards } = readyBuild('drawerBase')
    const shared = (868 - 100 - 3 - 2 * 3 - 140) / 2
    expect([1, 2, 3].map((number) => sizeOf(boardIn(boards, 'drawerFront', number)))).toEqual([
      `${600 - 2 * 1.5} x ${shared}`,
      `${600 - 2 * 1.5} x ${shared}`,
      `${600 - 2 * 1.5} x 140`,
    ])
    expect(roles('drawerBase').filter((role) => role === 'drawerBottom')).toHaveLength(3)
  })

  it('a sink base are a rail on edge, a false front over a pair, and a back with a window for pipes', () => {
    const { boards } = readyBuild('sinkBase')
    expect(boards.some(({ role }) => role === 'backStretcher' || role === 'top')).toBe(false)
    expect(sizeOf(boardIn(boards, 'frontStretcher'))).toBe(`${800 - 2 * 18} x 75`)
    expect(sizeOf(boardIn(boards, 'falseFront'))).toBe(`${800 - 2 * 1.5} x 160`)
    expect(sizeOf(boardIn(boards, 'door'))).toBe(`${868 - 100 - 3 - 3 - 160} x ${(800 - 2 * 1.5 - 3) / 2}`)
    // The back stands in the groove of the bottom, 6 deep, with 1.5 of play in all; it runs on to the top.
    const foot = 100 + 18 - 6 + 1.5 / 2
    const wide = 800 - 2 * 18 + 2 * 6 - 1.5
    expect(boardIn(boards, 'back').operations).toEqual([
      { kind: 'notch', x: 100 + 200 - foot, y: (wide - 300) / 2, length: 250, width: 300, for: 'pipes' },
    ])
  })

  it('a vanity base are those of a low sink base that hangs with its top at that of a base', () => {
    const made = readyBuild('vanityBase')
    expect([made.cabinet.bottom, made.cabinet.height, made.cabinet.depth]).toEqual([868 - 600, 600, 480])
    expect(sizeOf(boardIn(made.boards, 'leftSide'))).toBe('600 x 480')
    expect(sizeOf(boardIn(made.boards, 'falseFront'))).toBe(`${600 - 2 * 1.5} x 100`)
    expect(sizeOf(boardIn(made.boards, 'door'))).toBe(`${600 - 3 - 3 - 100} x ${(600 - 2 * 1.5 - 3) / 2}`)
    expect(made.boards.some(({ role }) => role === 'topNailer')).toBe(true)
    expect(made.boards.some(({ role }) => role === 'kickBoard' || role === 'plinthFront')).toBe(false)
  })

  it('a blind corner base are a panel and a strip that close 680, and a door on the rest', () => {
    const { boards } = readyBuild('blindBase')
    // 580 of the other run, 18 of its doors and a filler of 76.2 are 674.2; the next 10 is 680.
    const height = 868 - 100 - 3
    expect(sizeOf(boardIn(boards, 'blindPanel'))).toBe(`${height} x ${680 - 80}`)
    expect(sizeOf(boardIn(boards, 'cornerFiller'))).toBe(`${height} x 80`)
    expect(sizeOf(boardIn(boards, 'door'))).toBe(`${height} x ${680 + 450 - 2 * 1.5 - 3 - 680}`)
    expect(boardIn(boards, 'blindPanel').placement.origin.x).toBe(1.5)
  })

  it('a blind corner upper at the right end of the wall are the same seen from the other side', () => {
    const { boards, fronts } = readyBuild('blindUpper', newProject('mm'), 2700)
    // 330, 18 and 76.2 are 424.2; the next 10 is 430.
    expect(sizeOf(boardIn(boards, 'blindPanel'))).toBe(`${720 - 3} x ${430 - 80}`)
    expect(fronts.map(({ kind, hinge }) => hinge ?? kind)).toEqual(['left', 'blindPanel', 'cornerFiller'])
    expect(boardIn(boards, 'blindPanel').placement.origin.x).toBe(430 + 450 - 1.5 - (430 - 80))
    expect(boardIn(boards, 'cornerFiller').placement.origin.x).toBe(430 + 450 - 1.5 - 430)
  })

  it('an island base are a back of the front board over the whole carcass, and no nailer', () => {
    const { boards } = readyBuild('islandBase')
    const back = boardIn(boards, 'back')
    expect([sizeOf(back), back.material, back.thickness]).toEqual([`${868 - 100} x 600`, 'front', 18])
    expect(boardIn(boards, 'leftSide').width).toBe(580 - 18)
    expect(Object.values(back.banding)).toEqual([1, 1, 1, 1])
    expect(roles('islandBase')).not.toContain('topNailer')
  })

  it('a bench box are a lid over everything at 450, and a front that does not move', () => {
    const { boards } = readyBuild('benchBox')
    const lid = boardIn(boards, 'lid')
    // A strip of 70 is screwed on at the wall, with 2 for the hinge, so that the lid can be lifted there.
    // Beside a higher cabinet or another lid it has the play of doors.
    expect(sizeOf(lid)).toBe(`${900 - 2 * 1.5} x ${450 + 18 - 70 - 2}`)
    expect(lid.placement.origin.x).toBe(1.5)
    expect(sizeOf(boardIn(boards, 'lidStrip'))).toBe('900 x 70')
    expect(lid.placement.origin.y).toBe(450)
    expect(sizeOf(boardIn(boards, 'falseFront'))).toBe(`${900 - 2 * 1.5} x ${450 - 18 - 100 - 3}`)
  })

  it('an end shelf and open shelves are shelves without a front', () => {
    const end = readyBuild('endShelf').boards
    expect(boardIn(end, 'fixedShelf', 2).length).toBe(250 - 2 * 18 + 2 * 6)
    expect(boardIn(readyBuild('openShelves').boards, 'adjustableShelf', 2).length).toBe(600 - 2 * 18 - 3)
    for (const name of ['endShelf', 'openShelves'] as const) expect(roles(name)).not.toContain('door')
  })

  it('a tall pantry are doors of two fifths and three fifths over one another', () => {
    const { boards } = readyBuild('pantry')
    const shared = 2152 - 100 - 3 - 3
    expect(boardIn(boards, 'door', 1).length).toBeCloseTo((shared * 3) / 5, 3)
    expect(boardIn(boards, 'door', 2).length).toBeCloseTo((shared * 2) / 5, 3)
    expect(roles('pantry').filter((role) => role === 'adjustableShelf')).toHaveLength(4)
  })

  it('an appliance housing are two boards 590 apart that end 45 before the back, over two drawers', () => {
    const { boards } = readyBuild('applianceHousing')
    const [under, over] = [boardIn(boards, 'fixedShelf', 1), boardIn(boards, 'fixedShelf', 2)]
    expect(over.placement.origin.y - (under.placement.origin.y + 18)).toBeCloseTo(590, 3)
    // Sides of 580; the back lies 10 before their rear edge and is 6 thick.
    expect(under.width).toBe(580 - 10 - 6 - 45)
    expect(boardIn(boards, 'back').operations.filter(({ kind }) => kind === 'notch')).toHaveLength(1)
    expect(roles('applianceHousing').filter((role) => role === 'drawerFront')).toHaveLength(2)
  })
})

describe('what there is to mind of a vanity base in the middle of a wall', () => {
  it.each(UNITS)('is nothing, in %s', (unit) => {
    const project = newProject(unit)
    const vanity = newCabinetAt(project, 'vanityBase', 1500)!
    const { problems } = derive({ ...project, cabinets: { [vanity.id]: vanity } as Project['cabinets'] })
    expect(problems.filter(({ weight }) => weight !== 'know').map(({ message }) => message)).toEqual([])
  })
})

describe('the names of ready kinds', () => {
  it('are the words of the menu, and plain boxes keep theirs', () => {
    expect(newKindName('endShelf')).toBe('end shelf')
    expect(newKindName('upper')).toBe('upper')
  })
})

describe('the row of a niche', () => {
  it('is as high as the niche and one board, less a gap', () => {
    expect(nicheFrontHeight(590, 18, 3)).toBe(590 + 2 * (18 / 2) - 2 * (3 / 2))
  })
})

describe('the blind part of a corner', () => {
  it('is at least as wide as the other run is deep, with its doors and its pulls', () => {
    expect(blindWidthLeast({ neighbour: 580, pull: 35 }, 19)).toBe(580 + 19 + 35)
  })
})
