import { describe, expect, it } from 'vitest'
import { assemblyOfCabinet } from '../../../engine/assembly/assemblyOf'
import type { MaterialId } from '../../../engine/basics/id'
import { derive } from '../../../engine/pipeline'
import type { Project } from '../../../engine/project/document'
import { begin, make, undo } from '../../../engine/project/history'
import { newCabinetAt } from '../../../engine/runs/place'
import { demonstrationKitchen } from '../../../engine/samples/kitchen'
import { aCorner, aWall, cabinet, OTHER_WALL, the } from '../../helpers/wall'
import { findingIn, remedied } from './findings'

const LEFT = { kind: 'door', hinge: 'left' } as const
const RIGHT = { kind: 'door', hinge: 'right' } as const
const OPENS = /opens against/

describe('a door hinged at the end of the wall', () => {
  it('wants a filler that its handle clears: the box moves to make room and the filler stands there, in one step', () => {
    const project = aWall(cabinet('B1', { left: 15, front: LEFT }), cabinet('B2', { left: 615, front: LEFT }))
    const finding = findingIn(project, OPENS)!
    expect(finding).toMatchObject({ weight: 'mind', measure: '15 mm', limit: '40 mm' })
    const after = remedied(project, finding)
    expect([the(after, 'B1').left, the(after, 'B2').left]).toEqual([40, 640])
    expect(findingIn(after, OPENS)).toBeNull()
    // The 15 that were free and the 25 that it moves, to be scribed to the wall.
    expect(the(after, 'B1').beside.left).toEqual({ kind: 'filler', width: 15 + 25, scribe: 10 })
    expect(derive(after).cabinets.flatMap(({ parts }) => parts.filter(({ role }) => role === 'filler'))).toHaveLength(1)
    expect(finding.remedy?.label).toBe('Put a filler at the left of B1')
    const made = make(begin(project), finding.remedy!.edit, finding.remedy!.label)
    expect(made.past).toHaveLength(1)
    expect(undo(made).present).toBe(project)
  })

  it('gets room alone where a finished end stands, and that is what the step is called', () => {
    const end = { kind: 'skin', material: 'back' as MaterialId } as const
    const beside = { left: end, right: { kind: 'none' } } as const
    const project = aWall(cabinet('B1', { left: 15, front: LEFT, beside }))
    const finding = findingIn(project, OPENS)!
    expect(finding.remedy?.label).toBe('Leave room at the left of B1')
    expect(the(remedied(project, finding), 'B1')).toMatchObject({ left: 40, beside })
  })

  it('is turned where there is no room for a filler', () => {
    const project = aWall(cabinet('B1', { width: 600, front: LEFT }), cabinet('B2', { left: 600, width: 3000 }))
    const finding = findingIn(project, OPENS)!
    expect(finding.remedy?.label).toBe('Hinge B1 at the other side')
    const after = remedied(project, finding)
    expect(the(after, 'B1').front).toEqual(RIGHT)
    expect(findingIn(after, OPENS)).toBeNull()
  })

  it('is not asked for a filler where none fits', () => {
    const full = (front: typeof LEFT | { readonly kind: 'pair' }) =>
      findingIn(
        aWall(cabinet('B1', { width: 800, front }), cabinet('B2', { left: 800, width: 2800 })),
        /its left opens against/,
      )!
    expect(full(LEFT).message).toContain('would have to be 40 mm narrower. Hinge it at the other side.')
    expect(full(LEFT).message).not.toContain('Make it that')
    const pair = full({ kind: 'pair' })
    expect(pair.message).toMatch(
      /There is no room for a filler: the cabinets of this run would have to be 40 mm narrower\.$/,
    )
    expect(pair.remedy).toBeUndefined()
  })

  it('is not asked to hang at the other side where it is one of a pair', () => {
    const told = (front: typeof LEFT | { readonly kind: 'pair' }) =>
      findingIn(aWall(cabinet('B1', { left: 15, width: 800, front })), OPENS)?.message
    expect(told(LEFT)).toContain('or hinge it at the other side')
    expect(told({ kind: 'pair' })).not.toContain('other side')
  })

  it('is of no concern with its hinges at the other side, or far from the end', () => {
    expect(findingIn(aWall(cabinet('B1', { left: 0, front: RIGHT })), OPENS)).toBeNull()
    expect(findingIn(aWall(cabinet('B1', { left: 40, front: LEFT })), OPENS)).toBeNull()
    expect(findingIn(aWall(cabinet('B1', { left: 3600 - 600, front: RIGHT })), OPENS)).not.toBeNull()
  })

  it('opens past a shallower neighbour, and not past one that stands out as far as its handle', () => {
    const beside = (depth: number) =>
      findingIn(aWall(cabinet('T1', { left: 500, depth }), cabinet('U1', { left: 1100, front: LEFT })), OPENS)
    // The door is 597 wide and its handle 50 from the edge: it reaches 330 + 18 + 547 from the wall.
    const reach = 330 + 18 + 597 - 50
    expect(beside(reach - 1)).toBeNull()
    expect(beside(reach)?.message).toContain('T1')
  })
})

describe('fronts hard against the end of the wall', () => {
  // Source: the page of a drafting course: 25 to 28 mm for the installer at walls.
  it('are good to know of nearer than 25, and are moved off it', () => {
    const end = { kind: 'skin', material: 'back' as MaterialId } as const
    const beside = { left: end, right: { kind: 'none' } } as const
    const project = aWall(cabinet('B1', { left: 10, front: { kind: 'drawer' }, beside }))
    const finding = findingIn(project, /walls are not straight/)!
    expect(finding.weight).toBe('know')
    expect(the(remedied(project, finding), 'B1').left).toBe(25)
    expect(findingIn(remedied(project, finding), /walls are not straight/)).toBeNull()
  })

  it('are moved so far that the filler is wide enough to be sawn', () => {
    const project = aWall(cabinet('B1', { left: 10, front: { kind: 'drawer' } }))
    const after = remedied(project, findingIn(project, /walls are not straight/)!)
    // Sawn 10 wider for the scribe, and 1 narrower for the band at its other edge: 40 in all.
    expect(the(after, 'B1').beside.left).toEqual({ kind: 'filler', width: 40 - 10 + 1, scribe: 10 })
    expect(the(after, 'B1').left).toBe(31)
    expect(derive(after).cabinets[0]!.parts.find(({ role }) => role === 'filler')!.cutWidth).toBe(40)
    expect(findingIn(after, /neither rail nor hand/)).toBeNull()
  })

  it('are of no concern where the end is the blind panel of a corner, or cabinets of the other wall stand before it', () => {
    const HARD = /walls are not straight/
    const drawers = (left: number) => cabinet('B1', { left, front: { kind: 'drawer' } })
    expect(findingIn(aCorner(drawers(3000)), HARD)).not.toBeNull()
    // The face of B1 is 580 + 18 out; B2 begins just before it, or a step away from it.
    const other = (left: number) => cabinet('B2', { wall: OTHER_WALL, left, front: { kind: 'drawer' } })
    expect(findingIn(aCorner(drawers(3000), other(600)), HARD)).toBeNull()
    expect(findingIn(aCorner(drawers(3000), other(900)), HARD)).not.toBeNull()
    const plain = aCorner()
    const blind = newCabinetAt(plain, 'blindBase', 3600 - 1100)!
    const project = { ...plain, cabinets: { [blind.id]: { ...blind, left: 3600 - blind.width } } }
    expect(derive(project).cabinets[0]!.fronts.map(({ kind }) => kind)).toContain('blindPanel')
    expect(findingIn(project as Project, HARD)).toBeNull()
  })

  it('are of no concern where the box is open', () => {
    expect(findingIn(aWall(cabinet('B1')), /walls are not straight/)).toBeNull()
  })
})

describe('a tall', () => {
  it('is fixed to the wall, the more so where it stands alone', () => {
    const tall = cabinet('T1', { left: 600 })
    expect(findingIn(aWall(tall), /fix it to the wall/)?.weight).toBe('mind')
    expect(findingIn(aWall(tall, cabinet('B1', { left: 1200 })), /fix it to the wall/)?.weight).toBe('know')
    expect(findingIn(aWall(tall, cabinet('B1', { left: 1206 })), /fix it to the wall/)?.weight).toBe('mind')
  })
})

describe('an island', () => {
  const FREE = {
    back: { kind: 'applied', margin: 0 },
    nailers: { where: 'inside', top: false, bottom: false, width: 90 },
  } as const

  it('is fixed to the floor, unless a wall can hold it', () => {
    const { methods, method } = aWall()
    const overrides = { ...FREE, backMaterial: methods[method]!.frontMaterial }
    const island = aWall(cabinet('B1', { overrides }))
    expect(findingIn(island, /stands at no wall/)?.weight).toBe('mind')
    expect(findingIn(aWall(cabinet('B1', { overrides: FREE })), /stands at no wall/)).toBeNull()
    expect(findingIn(aWall(cabinet('B1')), /stands at no wall/)).toBeNull()
    const words = assemblyOfCabinet(derive(island).cabinets[0]!, island).map(({ text }) => text)
    expect(words.filter((text) => text.includes('cleats on the floor'))).toHaveLength(1)
    expect(words.filter((text) => text.includes('fix it to the wall'))).toEqual([])
  })

  it('has no wall end beside its doors, where a cabinet at a wall has', () => {
    const front = { kind: 'door', hinge: 'left' } as const
    const overrides = { ...FREE, backMaterial: aWall().methods[aWall().method]!.frontMaterial }
    expect(findingIn(aWall(cabinet('B1', { left: 0, front })), /against the wall end/)?.measure).toBe('0 mm')
    expect(findingIn(aWall(cabinet('B1', { left: 0, front, overrides })), /against the wall end/)).toBeNull()
  })
})

describe('the demonstration kitchen', () => {
  const { problems } = derive(demonstrationKitchen())

  it('has nothing to stop for and few things to mind', () => {
    expect(problems.filter(({ weight }) => weight === 'stop')).toEqual([])
    expect(problems.filter(({ weight }) => weight === 'mind').map(({ message }) => message.split(':')[0])).toEqual([
      'T1',
    ])
  })

  it('has a source for everything that is said about it', () => {
    expect(problems.length).toBeGreaterThan(0)
    expect(problems.filter(({ source }) => !source)).toEqual([])
  })
})

describe('what is found about a cabinet', () => {
  it('stays the same object when another is moved', () => {
    // Without a way out, which is tried on each design anew: their strips are all there.
    const overrides = { nailers: { where: 'inside', top: true, bottom: true, width: 90 } } as const
    const uppers = { width: 300, overrides }
    const project = aWall(cabinet('U1', { left: 100, ...uppers }), cabinet('U2', { left: 900, ...uppers }))
    const before = derive(project).problems
    const after = derive(
      make(begin(project), { kind: 'shapeCabinets', shapes: [{ id: the(project, 'U2').id, left: 950 }] }).present,
    )
    expect(before.length).toBeGreaterThan(0)
    expect(after.problems.every((finding, at) => finding === before[at])).toBe(true)
  })
})
