import { describe, expect, it } from 'vitest'
import type { MethodId } from '../../../engine/basics/id'
import type { Operation } from '../../../engine/cabinets/operation'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import type { Front, Project } from '../../../engine/project/document'
import { USUAL_FIVE_PART, USUAL_FRAME } from '../../../engine/project/frames'
import type { HingeRules } from '../../../engine/project/hingeRules'
import { USUAL_HINGE } from '../../../engine/project/machining'
import { mirroredFront } from '../../../engine/project/mirror'
import { aWall, cabinet } from '../../helpers/wall'
import { figureOf, findingIn } from './findings'

const DOOR = { kind: 'door', hinge: 'left' } as const
const PROJECT = aWall(cabinet('B1', { left: 500, width: 450, height: 868, front: DOOR }))

/** A narrow flap between a drawer and what is open, and open columns beside it, the wider one at the left. */
const FLAP_BETWEEN: Front = {
  kind: 'columns',
  columns: [
    { size: { kind: 'share', share: 1.5 }, front: { kind: 'open' }, shelves: null },
    {
      size: { kind: 'share', share: 1 },
      shelves: null,
      front: {
        kind: 'rows',
        rows: [{ kind: 'drawer' }, { kind: 'door', hinge: 'top' }, { kind: 'open' }].map((front) => ({
          size: { kind: 'share', share: 1 },
          front: front as Front,
        })),
      },
    },
    { size: { kind: 'share', share: 1 }, front: { kind: 'open' }, shelves: null },
  ],
}

function isCup(one: Operation): one is Extract<Operation, { readonly kind: 'holeRow' }> {
  return one.kind === 'holeRow' && one.purpose === 'hingeCup'
}

function hungWith(change: Partial<HingeRules>, project: Project = PROJECT): Project {
  const hinge = { ...USUAL_HINGE, ...change }
  return applyEdit(project, { kind: 'editMethod', id: 'm1' as MethodId, change: { hinge } })
}

describe('the hinges of a build method', () => {
  // Source: a hinge maker's quick reference, OL = FD + B - H.
  it('cover what the door does, give or take what they can be set by', () => {
    // Sides of 18 with a reveal of 1.5 are covered by 16.5; the hinges give 11.5 + 5 - H.
    expect(findingIn(hungWith({ plateHeight: 2 }), /cover an edge/)).toBeNull()
    const finding = findingIn(hungWith({ plateHeight: 3 }), /cover an edge/)
    expect(finding?.weight).toBe('mind')
    expect(figureOf(finding?.measure)).toBeCloseTo(18 - 1.5 - (11.5 + 5 - 3), 6)
  })

  it('leave 3 of a door behind their cups', () => {
    // Source: a hinge catalogue of 2023: cups are 10.5 or 12.5 mm deep at least. 3 behind them: common practice, no source.
    for (const cupDepth of [10.5, 12.5, 18 - 3]) expect(findingIn(hungWith({ cupDepth }), /deep leave/)).toBeNull()
    expect(figureOf(findingIn(hungWith({ cupDepth: 18 - 2 }), /deep leave/)?.measure)).toBe(2)
  })

  it('keep their cups out of the groove of a five-part door', () => {
    // A cup of 35 begins 5 from the edge and ends at 40; a groove of 10 in a stile of 50 begins there.
    const framed = (stile: number) =>
      findingIn(
        applyEdit(PROJECT, {
          kind: 'editMethod',
          id: 'm1' as MethodId,
          change: { frontBuild: { ...USUAL_FIVE_PART, stile, groove: 10 } },
        }),
        /groove of the panel/,
      )
    expect(framed(50)).toBeNull()
    expect(framed(49)).toMatchObject({ weight: 'mind', measure: '40 mm', limit: '39 mm' })
  })

  it('find no place where the holes of a plate are farther apart than the door is high, and that is said', () => {
    expect(findingIn(PROJECT, /find no place/)).toBeNull()
    expect(findingIn(hungWith({ plateSpread: 800 }), /find no place/)?.measure).toBe('2 hinges')
  })

  it('are two at least, and a door that has no room for two plates is told', () => {
    expect(findingIn(PROJECT, /no room for two hinges/)).toBeNull()
    // Under a reveal of 3 the door is 765 high; a plate of 800 leaves 3 of wood at both its ends.
    const finding = findingIn(hungWith({ plateLength: 800 }), /no room for two hinges/)
    expect(finding).toMatchObject({ weight: 'mind', measure: '765 mm', limit: `${2 * (800 + 2 * 3)} mm` })
  })

  it('of a flap are two at least, and one that has room for one over its face frame is told, in either hand', () => {
    const flapBefore = (width: number, isMirrored: boolean) => {
      const front = isMirrored ? mirroredFront(FLAP_BETWEEN) : FLAP_BETWEEN
      const project = aWall(cabinet('B1', { width, height: 620, depth: 450, front }))
      const change = { faceFrame: USUAL_FRAME, frontBuild: USUAL_FIVE_PART }
      return applyEdit(project, { kind: 'editMethod', id: 'm1' as MethodId, change })
    }
    const rail = (project: Project) =>
      derive(project).cabinets[0]!.parts.find(({ role, operations }) => role === 'doorRail' && operations.some(isCup))!
    for (const width of [800, 820, 833, 840, 847, 860, 873]) {
      for (const isMirrored of [false, true]) {
        const project = flapBefore(width, isMirrored)
        const { length, operations } = rail(project)
        const cups = operations.filter(isCup)
        expect(cups).toHaveLength(1)
        expect(Math.abs(cups[0]!.x - length / 2)).toBeLessThan(0.002)
        const finding = findingIn(project, /^B1: 1 flap has no room for two hinges/)!
        // Screws 45 apart of 8 with 3 of wood at both ends; the rail gives all but its two stub tenons in the grooves.
        expect(finding.limit).toBe(`${2 * (45 + 8 + 2 * 3)} mm`)
        expect(figureOf(finding.measure)).toBeCloseTo(length - 2 * USUAL_FIVE_PART.groove, 0)
      }
    }
    expect(findingIn(flapBefore(1000, false), /hinge/)).toBeNull()
  })

  it('of a flap too short for two have none where the middle of it is taken, and that is told', () => {
    const lifted = (partition: { readonly at: number } | null) => {
      const interior = { fixedShelves: 0, adjustableShelves: 0, partition }
      const front = { kind: 'door', hinge: 'top' } as const
      const project = aWall(cabinet('U1', { width: 220, height: 700, depth: 330, front, interior }))
      return applyEdit(project, { kind: 'editMethod', id: 'm1' as MethodId, change: { frontBuild: USUAL_FIVE_PART } })
    }
    const told = (project: Project) => findingIn(project, /no room for two hinges/)?.message
    expect(told(lifted(null))).toMatch(/which gives [\d.]+ mm\. Make it wider, or hang it at a side\.$/)
    expect(told(lifted({ at: 0.5 }))).toMatch(
      /mm\. The middle of it is taken too, so that none is bored\. Make it wider/,
    )
  })

  it('need their plates on the board that the door hangs on', () => {
    expect(findingIn(PROJECT, /the plates of/)).toBeNull()
    const finding = findingIn(hungWith({ plateFromFront: 900 }), /the plates of/)
    expect(finding).toMatchObject({ weight: 'mind', measure: '900 mm', limit: '580 mm' })
  })

  it('are nothing to speak of where nothing is bored', () => {
    expect(findingIn(hungWith({ cupDiameter: 0 }), /find no place|cover an edge/)).toBeNull()
  })
})
