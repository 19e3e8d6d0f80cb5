import { describe, expect, it } from 'vitest'
import { valuesOf } from '../../../engine/basics/id'
import { newProject } from '../../../engine/project/defaults'
import type { Project, Wall } from '../../../engine/project/document'
import { startOf } from '../../../engine/project/ready'
import { newCabinetAt, placesFor } from '../../../engine/runs/place'
import { settle } from '../../../engine/units/length'
import { aCorner, cabinet, OTHER_WALL, the } from '../../helpers/wall'
import { findingIn, remedied } from './findings'

const DRAWER = { kind: 'drawer' } as const
const RIGHT = { kind: 'door', hinge: 'right' } as const
const LEFT = { kind: 'door', hinge: 'left' } as const
const OVEN = { kind: 'appliance', width: 500, height: 500, air: 0 } as const
/** Fronts of a new metric project are 18 thick and stay 1.5 behind the sides of their cabinet. */
const FRONT = 18
const REVEAL = 1.5
const OPENS = /what opens/

/** The run along the side wall has its face at 540 + 18, so at 3600 - 558 of the first wall, and begins 700 from the corner. */
const b2 = cabinet('B2', { wall: OTHER_WALL, left: 700, width: 600, depth: 540, front: DRAWER })
const edge = 3600 - 540 - FRONT

describe('fronts beside the face of the other wall', () => {
  const b1 = (away: number) => cabinet('B1', { left: edge - away - 600, width: 600, front: DRAWER })

  it('are told when there is less than 3 in of filler, and moved away', () => {
    const project = aCorner(b1(60), b2)
    const finding = findingIn(project, OPENS)!
    expect(finding).toMatchObject({ weight: 'know', measure: `${60 + REVEAL} mm`, limit: '76.2 mm' })
    expect(finding.source).toContain('3 in')
    const after = remedied(project, finding)
    expect(the(after, 'B1').left).toBeCloseTo(edge - 600 - (3 * 25.4 - REVEAL), 3)
    expect(findingIn(after, OPENS)).toBeNull()
    // The run round the corner begins 700 from it, and what is open there is no gap for a filler.
    expect(finding.remedy?.label).toBe('Leave room at the right of B1')
  })

  it('get the filler itself where the other run reaches into the corner', () => {
    const project = aCorner(b1(40), { ...b2, left: 0, front: { kind: 'open' } })
    const finding = findingIn(project, OPENS)!
    expect(finding.remedy?.label).toBe('Put a filler at the right of B1')
    // From the side of the box to the face there: 3 in less the reveal.
    const { right } = the(remedied(project, finding), 'B1').beside
    expect(right).toMatchObject({ kind: 'filler', scribe: 0 })
    expect(right.kind === 'filler' && right.width).toBeCloseTo(3 * 25.4 - REVEAL, 3)
  })

  it('strike the pulls there when they are nearer than those stand out', () => {
    expect(findingIn(aCorner(b1(40 - REVEAL), b2), OPENS)?.weight).toBe('know')
    expect(findingIn(aCorner(b1(40 - REVEAL - 0.5), b2), OPENS)?.weight).toBe('mind')
    expect(findingIn(aCorner(b1(20), { ...b2, front: { kind: 'open' } }), /pulls of B2 take 0 mm/)?.weight).toBe('know')
  })

  it('cannot open behind it', () => {
    const finding = findingIn(aCorner(b1(-50), b2), OPENS)!
    expect(finding.message).toContain(`${50 - REVEAL} mm behind the face of B2`)
  })

  it('want 6 in beside an appliance', () => {
    const project = aCorner(b1(100), { ...b2, front: OVEN })
    expect(findingIn(project, /what opens/)).toMatchObject({ measure: `${100 + REVEAL} mm`, limit: '152.4 mm' })
  })

  it('are of no concern where nothing stands so near, or the walls do not meet', () => {
    expect(findingIn(aCorner(b1(76), b2), OPENS)).toBeNull()
    expect(findingIn(aCorner(b1(20), { ...b2, left: 1800 }), OPENS)).toBeNull()
    const project = aCorner(b1(20), b2)
    const apart = { ...project.walls[OTHER_WALL]!, meets: false }
    expect(findingIn({ ...project, walls: { ...project.walls, [OTHER_WALL]: apart } }, OPENS)).toBeNull()
  })
})

describe('an appliance in an inside corner', () => {
  const b1 = (away: number) => cabinet('B1', { left: edge - away - 600, width: 600, front: OVEN })
  const APPLIANCE = /its appliance/

  it('is asked to be 15 in from it', () => {
    const finding = findingIn(aCorner(b1(300), b2), APPLIANCE)!
    expect(finding).toMatchObject({ weight: 'know', measure: '300 mm', limit: `${15 * 25.4} mm` })
    expect(finding.remedy?.label).toBe('Leave room at the right of B1')
    expect(the(remedied(aCorner(b1(300), b2), finding), 'B1').left).toBeCloseTo(edge - 600 - 15 * 25.4, 3)
    expect(findingIn(aCorner(b1(381), b2), APPLIANCE)).toBeNull()
  })

  it('opens against what stands there when its pulls have no room', () => {
    expect(findingIn(aCorner(b1(40), b2), APPLIANCE)?.weight).toBe('know')
    const finding = findingIn(aCorner(b1(39), b2), APPLIANCE)!
    expect(finding.weight).toBe('mind')
    expect(finding.message).toMatch(/opens .* out, and B2 with its pulls wants 40 mm where there are 39 mm/)
  })

  it('is told by how much what comes round the corner stands in its way', () => {
    const finding = findingIn(aCorner(b1(-25), b2), APPLIANCE)!
    expect(finding).toMatchObject({ weight: 'mind', measure: '25 mm in its way' })
    expect(finding.message).toMatch(
      /opens .* out, and B2 round the corner stands 25 mm in its way; 381 mm to an inside/,
    )
  })
})

describe('doors hinged in the corner', () => {
  const b1 = cabinet('B1', { left: edge - 100 - 600, width: 600, front: RIGHT })
  const other = { ...b2, front: LEFT }
  const HINGED = /both hinged in the corner/

  it('meet when both are opened square; one is hinged at the other side', () => {
    const project = aCorner(b1, other)
    const finding = findingIn(project, HINGED)!
    expect(finding.weight).toBe('know')
    const after = remedied(project, finding)
    expect(the(after, 'B1').front).toEqual(LEFT)
    expect(findingIn(after, HINGED)).toBeNull()
  })

  it('are of no concern where one of them is farther away than the other is wide', () => {
    // The door is 600 - 3 wide and hinged 1.5 behind its side; the face of B2 is at 558.
    const farthest = 600 - 2 * REVEAL - REVEAL
    const at = (away: number) => aCorner({ ...b1, left: edge - away - 600 }, other)
    expect(findingIn(at(farthest), HINGED)).not.toBeNull()
    expect(findingIn(at(farthest + 1), HINGED)).toBeNull()
  })
})

describe('the blind part of a corner before which a run stands', () => {
  const blind = { kind: 'blind', neighbour: 580, filler: 50, pull: 35 } as const
  const front = {
    kind: 'columns',
    columns: [
      { size: { kind: 'share', share: 1 }, front: LEFT, shelves: null },
      { size: { kind: 'fixed', width: 680 }, front: blind, shelves: null },
    ],
  } as const
  const b1 = cabinet('B1', { left: 2400, width: 1200, front })
  const MADE = /made for a run/

  it('takes the depth of that run in one step', () => {
    const project = aCorner(b1, b2)
    const finding = findingIn(project, MADE)!
    expect(finding).toMatchObject({ weight: 'mind', measure: '580 mm', limit: '540 mm' })
    const after = remedied(project, finding)
    expect(the(after, 'B1').front).toMatchObject({
      columns: [{ front: LEFT }, { front: { ...blind, neighbour: 540 } }],
    })
    expect(findingIn(after, MADE)).toBeNull()
  })

  it('is as it is typed where nothing stands before it', () => {
    expect(findingIn(aCorner(b1), MADE)).toBeNull()
  })
})

describe('a ready blind corner and the run that is put before it', () => {
  function withBlind(what: 'blindBase' | 'blindUpper', at: 'left' | 'right', unit: 'mm' | 'in') {
    const plain = { ...newProject(unit), walls: aCorner().walls }
    const on = at === 'left' ? OTHER_WALL : valuesOf<Wall>(plain.walls)[0]!.id
    const width = newCabinetAt(plain, what, 0, undefined, on)!.width
    const left = at === 'left' ? 0 : settle(plain.walls[on]!.length - width)
    const blind = newCabinetAt(plain, what, left, undefined, on)!
    return { ...plain, cabinets: { [blind.id]: blind } as Project['cabinets'] }
  }

  it.each([
    ['blindBase', 'base', 'left', 'mm'],
    ['blindBase', 'drawerBase', 'right', 'mm'],
    ['blindUpper', 'upper', 'left', 'mm'],
    ['blindBase', 'base', 'right', 'in'],
    ['blindUpper', 'upper', 'left', 'in'],
  ] as const)('%s: a %s in the free place in the corner opens clear of it (%s, %s)', (what, kind, at, unit) => {
    const project = withBlind(what, at, unit)
    const run = valuesOf<Wall>(project.walls)[at === 'left' ? 0 : 1]!
    const { width } = startOf(project, kind)
    // The run comes along the other wall to the corner, at its right end or at its left one.
    const lefts = placesFor(project, kind, width, run.id).map(({ left }) => left)
    const place = at === 'left' ? Math.max(...lefts) : Math.min(...lefts)
    const before = newCabinetAt(project, kind, place, width, run.id)!
    const both = { ...project, cabinets: { ...project.cabinets, [before.id]: before } }
    expect(findingIn(both, OPENS)).toBeNull()
    expect(findingIn(both, /blind part/)).toBeNull()
    // Nearer it would not be clear of the corner.
    const nearer = { ...before, left: place + (at === 'left' ? 10 : -10) }
    expect(findingIn({ ...both, cabinets: { ...both.cabinets, [before.id]: nearer } }, OPENS)).not.toBeNull()
  })
})
