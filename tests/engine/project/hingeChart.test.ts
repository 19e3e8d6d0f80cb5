import { describe, expect, it } from 'vitest'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import { newProject } from '../../../engine/project/defaults'
import { type Project, VERSION } from '../../../engine/project/document'
import { chartOf, USUAL_CHART, withRowAdded, withRowRemoved } from '../../../engine/project/hingeChart'
import type { HingeChart } from '../../../engine/project/hingeRules'
import { USUAL_HINGE } from '../../../engine/project/machining'
import { readMethod, writeMethod } from '../../../engine/project/methodFile'
import { readProject, writeProject } from '../../../engine/project/schema'
import { aWall, cabinet, idOf, the } from '../../helpers/wall'

const CHART: HingeChart = [
  { height: 400, weight: 6.80388555 },
  { height: 500, weight: 10 },
  { height: 2000, weight: 20.1 },
  { height: 2400, weight: 30 },
]

function hungBy(project: Project, chart: HingeChart): Project {
  const { id, hinge } = project.methods[project.method]!
  return applyEdit(project, { kind: 'editMethod', id, change: { hinge: { ...hinge, chart } } })
}

describe('the chart of how many hinges a door has', () => {
  it('is the published one where a method says nothing of it, as every new one does', () => {
    // Source: a hinge maker's chart: to 40 in or under 15 lb two, 60 in or 30 lb three, 80 in or 45 lb four, 100 in or 60 lb five.
    expect(chartOf(USUAL_HINGE)).toBe(USUAL_CHART)
    expect(USUAL_CHART.map(({ height }) => height)).toEqual([1016, 1524, 2032, 2540])
    expect(USUAL_CHART.map(({ weight }) => weight / 0.45359237)).toEqual([15, 30, 45, 60])
    for (const project of [newProject('mm'), newProject('in')]) {
      expect(Object.values(project.methods).every(({ hinge }) => hinge.chart === undefined)).toBe(true)
    }
  })

  it('is in the file of a project and of a method, with its weights to the last figure', () => {
    const project = hungBy(newProject('mm'), CHART)
    expect(project.methods[project.method]!.hinge.chart).toEqual(CHART)
    const text = writeProject(project)
    expect(JSON.parse(text).version).toBe(VERSION)
    expect(readProject(text)).toEqual({ ok: true, value: project })
    const read = readMethod(writeMethod(project, project.method)!)
    expect(read.ok && read.value.method.hinge.chart).toEqual(CHART)
  })

  it('may be a cabinet’s own, and goes back to that of its method', () => {
    const door = { kind: 'door', hinge: 'left' } as const
    const two = aWall(cabinet('B1', { front: door }), cabinet('B2', { left: 700, front: door }))
    const own = applyEdit(two, { kind: 'override', ids: [idOf('B1')], choices: { hinge: { chart: CHART } } })
    const hinges = (project: Project) =>
      derive(project).cabinets.map(
        ({ hardware }) => hardware.find(({ name }) => name === 'full overlay hinge')?.quantity,
      )
    expect([hinges(two), hinges(own)]).toEqual([
      [2, 2],
      [4, 2],
    ])
    expect(readProject(writeProject(own))).toEqual({ ok: true, value: own })
    const back = applyEdit(own, { kind: 'override', ids: [idOf('B1')], choices: { hinge: { chart: undefined } } })
    expect(the(back, 'B1').overrides).toEqual({})
    // By null it is the usual one, whatever its method has.
    const usual = { hinge: { chart: null } }
    const without = applyEdit(hungBy(two, CHART), { kind: 'override', ids: [idOf('B1')], choices: usual })
    expect(hinges(without)).toEqual([2, 4])
    expect(readProject(writeProject(without))).toEqual({ ok: true, value: without })
  })
})

describe('a chart of hinges that cannot be', () => {
  const withRow = (at: number, change: object) =>
    CHART.map((row, other) => (other === at ? { ...row, ...change } : row)) as unknown as HingeChart

  it.each<[string, unknown]>([
    ['.1.height is 400; it must be above 400 mm, the height for 2 hinges.', withRow(1, { height: 400 })],
    ['.3.height is 1999; it must be above 2000 mm, the height for 4 hinges.', withRow(3, { height: 1999 })],
    ['.2.weight is 9.5; it must be above 10 kg, the weight for 3 hinges.', withRow(2, { weight: 9.5 })],
    ['.0.weight is 0; it must be between 0.1 and 500.', withRow(0, { weight: 0 })],
    ['.0.height is -3; it must be between 0 and 20000 mm.', withRow(0, { height: -3 })],
    [' is a list; it must be a list of 2 to 8 rows: for 2 hinges, for 3 and so on.', CHART.slice(3)],
    [' is a list; it must be a list of 2 to 8 rows: for 2 hinges, for 3 and so on.', [...CHART, ...CHART, ...CHART]],
    [' is 5; it must be a list of 2 to 8 rows: for 2 hinges, for 3 and so on.', 5],
  ])('is refused in a file: %s', (words, chart) => {
    const project = newProject('mm')
    const file = JSON.parse(writeProject(project))
    file.methods[project.method].hinge.chart = chart
    const read = readProject(JSON.stringify(file))
    const path = `methods.${project.method}.hinge.chart`
    expect(read.ok ? 'it was read' : read.message).toBe(`The file cannot be read as a project. ${path}${words}`)
  })

  it('is refused of a cabinet too', () => {
    const project = aWall(cabinet('B1'))
    const file = JSON.parse(writeProject(project))
    file.cabinets.b1.overrides = { hinge: { chart: withRow(1, { height: 300 }) } }
    const read = readProject(JSON.stringify(file))
    expect(!read.ok && read.message).toContain(
      'cabinets.b1.overrides.hinge.chart.1.height is 300; it must be above 400 mm, the height for 2 hinges.',
    )
  })

  it('is taken by no edit', () => {
    const project = aWall(cabinet('B1'))
    for (const wrong of [withRow(1, { height: 400 }), withRow(2, { weight: 9 }), withRow(0, { weight: 0 })]) {
      expect(hungBy(project, wrong)).toBe(project)
      const choices = { hinge: { chart: wrong } }
      expect(applyEdit(project, { kind: 'override', ids: [idOf('B1')], choices })).toBe(project)
    }
  })
})

describe('the rows of a chart of hinges', () => {
  it('are added behind the last, as far above it as that is above the one before, up to 8', () => {
    const [before, last] = CHART.slice(-2)
    const added = withRowAdded(CHART)!
    expect(added.slice(0, 4)).toEqual(CHART)
    expect(added[4]).toEqual({
      height: 2 * last!.height - before!.height,
      weight: 2 * last!.weight - before!.weight,
    })
    let chart: HingeChart = [
      { height: 300, weight: 2 },
      { height: 600, weight: 5 },
    ]
    for (let rows = 3; rows <= 8; rows++) chart = withRowAdded(chart)!
    expect(chart.map(({ height }) => height)).toEqual([300, 600, 900, 1200, 1500, 1800, 2100, 2400])
    expect(withRowAdded(chart)).toBeNull()
  })

  it('are not added past the highest door', () => {
    expect(
      withRowAdded([
        { height: 2000, weight: 2 },
        { height: 4000, weight: 5 },
      ]),
    ).toBeNull()
  })

  it('are removed from the end, down to two, and the chart hangs doors by what is left', () => {
    const three = withRowRemoved(CHART)!
    expect(three).toEqual(CHART.slice(0, 3))
    expect(withRowRemoved(three.slice(0, 2))).toBeNull()
    const project = hungBy(aWall(cabinet('B1', { front: { kind: 'door', hinge: 'left' } })), CHART.slice(0, 2))
    expect(chartOf(project.methods[project.method]!.hinge)).toEqual(CHART.slice(0, 2))
    expect(readProject(writeProject(project))).toEqual({ ok: true, value: project })
  })
})
