import { describe, expect, it } from 'vitest'
import type { BoardRole } from '../../engine/cabinets/board'
import { boxOf } from '../../engine/cabinets/boardBox'
import { FIVE_PARTS } from '../../engine/cabinets/role'
import { derive } from '../../engine/pipeline'
import { applyEdit } from '../../engine/project/apply'
import { newProject } from '../../engine/project/defaults'
import type { Material, Project } from '../../engine/project/document'
import { freshBoard } from '../../engine/project/materials'
import type { MethodChoices } from '../../engine/project/method'
import { READY } from '../../engine/project/readyKinds'
import { readProject, writeProject } from '../../engine/project/schema'
import { inch, settle } from '../../engine/units/length'
import { stiffnessUnit } from '../../engine/units/weight'
import { readyBuild } from '../helpers/ready'
import { aWall, cabinet, idOf } from '../helpers/wall'

/** In GPa, by the same table. */
const SOFTWOOD_PLY_LEAST = 6.96

type Published = [string, ...[number, number][]]

/**
 * Bending stiffness of boards, in GPa and in million psi. Source: USDA Forest Products Laboratory, Wood Handbook, General
 * Technical Report 190 (2010), table 12-1; ranges are of what is sold.
 */
const PUBLISHED: Published[] = [
  ['white oak', [12.27, 1.78]],
  ['red maple', [11.31, 1.64]],
  ['coastal Douglas-fir', [13.44, 1.95]],
  ['western white pine', [10.07, 1.46]],
  ['longleaf pine', [13.65, 1.98]],
  ['hardboard', [3.1, 0.45], [5.52, 0.8]],
  ['medium-density fibreboard', [3.59, 0.52]],
  ['particleboard', [2.76, 0.4], [4.14, 0.6]],
  ['oriented strandboard', [4.41, 0.64], [6.28, 0.91]],
  ['structural softwood plywood', [SOFTWOOD_PLY_LEAST, 1.01], [8.55, 1.24]],
]
/** Yellow birch, in million psi. Source: Wood Handbook, chapter 5, from memory. */
const BIRCH = 2.01

const newtons = (unit: 'mm' | 'in', typed: number) => typed * stiffnessUnit({ unit }).newtons
const boardsIn = (project: Project) => [
  ...Object.values<Material>(project.materials),
  freshBoard({ ...project, materials: {} }).material,
]

describe('the stiffness of a board', () => {
  it.each(PUBLISHED)('of %s is the same typed in N/mm² and in 1000 psi, and is kept in the file', (_, ...pairs) => {
    const project = newProject('mm')
    const [board] = Object.values<Material>(project.materials)
    for (const [gpa, psi] of pairs) {
      const [metric, imperial] = [newtons('mm', gpa * 1000), newtons('in', psi * 1000)]
      // Both are printed to two places.
      expect(Math.abs(metric - imperial)).toBeLessThanOrEqual(newtons('in', 5) + newtons('mm', 5))
      const typed = applyEdit(project, { kind: 'editMaterial', id: board!.id, change: { stiffness: metric } })
      const read = readProject(writeProject(typed))
      expect(read.ok && read.value.materials[board!.id]!.stiffness).toBe(metric)
    }
  })

  it('in a new project, of birch ply, is between the least of softwood ply and solid birch', () => {
    const boards = [...boardsIn(newProject('mm')), ...boardsIn(newProject('in'))]
    expect(boards.length).toBeGreaterThan(8)
    for (const { stiffness } of boards) {
      expect(stiffness).toBeGreaterThan(newtons('mm', SOFTWOOD_PLY_LEAST * 1000))
      expect(stiffness).toBeLessThan(newtons('in', BIRCH * 1000))
    }
  })
})

// From memory: ply is far softer across the grain of its faces, so that the one number counts for spans along it alone.
describe('the grain of what spans between sides', () => {
  // One board round a corner spans both ways.
  const straight = READY.filter(([name]) => !readyBuild(name).boards.some(({ role }) => role === 'cornerPost'))
  it.each(straight)('runs along the span in the ready %s', (name) => {
    const build = readyBuild(name)
    const spans = build.boards.filter(({ role }) => role === 'fixedShelf' || role === 'adjustableShelf')
    const levels = build.boards.filter(({ role }) => role === 'top' || role === 'bottom' || role === 'frontStretcher')
    expect(levels.length).toBeGreaterThan(0)
    for (const board of [...spans, ...levels]) {
      const { min, max } = boxOf(board)
      expect(settle(max.x - min.x)).toBe(board.length)
    }
  })
})

// Sources: a forum, 'I would oversize the doors and trim them down'; Woodworker's Journal, 'Crosscut the door frame parts 1/8" longer than listed'.
describe('frame doors that are to be cut late', () => {
  const FRAMED: MethodChoices['frontBuild'] = newProject('mm').methods['m3' as keyof Project['methods']]!.frontBuild
  const plain = aWall(cabinet('B1', { width: 600, left: 300, front: { kind: 'door', hinge: 'left' } }))
  const method = plain.methods[plain.method]!
  const doors: Project = { ...plain, methods: { ...plain.methods, [method.id]: { ...method, frontBuild: FRAMED } } }
  const late = { fronts: true, drawerBoxes: false, fitted: false }
  const project = applyEdit(doors, { kind: 'editShop', change: { late } })

  it('are flagged whole, all five parts and nothing of the carcass', () => {
    const { cutList, cabinets } = derive(project)
    const ofDoors = cabinets[0]!.parts
      .filter(({ role }) => (FIVE_PARTS as readonly BoardRole[]).includes(role))
      .map(({ id }) => id)
    expect(ofDoors).toHaveLength(5)
    expect(cutList.rows.flatMap(({ isLate, parts }) => (isLate ? parts : [])).sort()).toEqual(ofDoors.sort())
    expect(derive(doors).cutList.rows.some(({ isLate }) => isLate)).toBe(false)
  })

  it('need no 1/8 in to be trimmed off: an opening that turns out 1/8 in wider makes rails and panel longer by it', () => {
    const [{ openings, parts }] = derive(project).cabinets as [ReturnType<typeof derive>['cabinets'][number]]
    const { key, drawn } = openings[0]!
    const measured = { width: settle(drawn.width + inch(1 / 8)), height: null }
    const after = applyEdit(project, { kind: 'measureOpening', id: idOf('B1'), at: key, measured })
    const changed = derive(after).cabinets[0]!.parts
    const grown = parts.flatMap((part) => {
      const now = changed.find(({ id }) => id === part.id)!
      const [along, across] = [settle(now.length - part.length), settle(now.width - part.width)]
      return along === 0 && across === 0 ? [] : [`${part.role} ${along} ${across}`]
    })
    const by = inch(1 / 8)
    expect(grown.sort()).toEqual([`doorPanel 0 ${by}`, `doorRail ${by} 0`, `doorRail ${by} 0`])
  })
})
