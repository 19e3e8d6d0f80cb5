import { describe, expect, it } from 'vitest'
import type { MethodChoices } from '../../engine/project/method'
import { inch } from '../../engine/units/length'
import { aCabinet, boardIn, boardsOf, type MethodChanges, PLAIN, rulesWith } from '../helpers/cabinets'
import { FRAME } from '../helpers/frames'

/** Sizes printed in published articles on cabinets with face frames. */

const residual = (inches: number) => ({ kind: 'dado', depth: { rule: 'residual', residual: inch(inches) } }) as const
const past = (left: number, right: number): Pick<MethodChoices, 'faceFrame'> => ({
  faceFrame: { ...FRAME, pastLeft: inch(left), pastRight: inch(right) },
})

const THICK = { carcass: inch(0.75), frame: inch(0.75) }

function built(width: number, changes: MethodChanges, thick: Parameters<typeof rulesWith>[1] = THICK) {
  const depth = inch(24)
  return boardsOf(aCabinet('base', { width: inch(width), height: inch(34.5), depth }), rulesWith(changes, thick))
}

describe('a base whose frame stands a half inch past it, with 3/8 in left outside the dado', () => {
  // Source: 'Custom Cabinet Construction #1: Basic Base', a woodworking forum blog by rhett, 2010.
  const boards = built(
    36,
    {
      ...past(0.5, 0.5),
      cornerJoint: residual(3 / 8),
      back: { kind: 'applied', margin: 0 },
      floor: { kind: 'notched', height: inch(4), setback: inch(3) },
    },
    { carcass: inch(23 / 32), frame: inch(0.75), back: inch(0.25) },
  )
  it('has sides of 34 1/2 by 23 in: 24 less the frame of 3/4 and the back of 1/4', () => {
    const side = boardIn(boards, 'leftSide')
    expect([side.length, side.width]).toEqual([inch(34.5), inch(24 - 0.75 - 0.25)])
  })

  it('has a bottom as long as the frame is wide less 1 3/4 in, whatever the sheet measures', () => {
    expect(boardIn(boards, 'bottom').length).toBeCloseTo(inch(36 - 2 * 0.5 - 2 * (3 / 8)), 2)
  })
})

describe('a bottom by frame width, offsets and what is left of the sides', () => {
  // Source: 'Kitchen Cabinet Build Part 16 - Base Cabinet The Final Material', snaservices.com, 2021.
  it.each([
    ['both ends flush', 0, 0, 30 - 1],
    ['one end a quarter inch past', 0, 0.25, 30 - 1.25],
    ['both ends a quarter inch past', 0.25, 0.25, 30 - 1.5],
  ])('%s', (_, left, right, length) => {
    const boards = built(30, { ...past(left, right), cornerJoint: residual(0.5) })
    expect(boardIn(boards, 'bottom').length).toBeCloseTo(inch(length), 2)
  })
})

describe('a pair of inset doors in the opening of a frame', () => {
  const opening = (width: number, gap: number, changes: MethodChanges = {}) => {
    const frame = { ...FRAME, stile: inch(1.5), pastLeft: 0, pastRight: 0 }
    const cabinet = aCabinet('base', { width: inch(width + 3), front: { kind: 'pair' } })
    const fronts = { ...PLAIN.fronts, gap: inch(gap) }
    return boardsOf(cabinet, rulesWith({ faceFrame: frame, fronts, ...changes }))
  }

  it('40 in wide with gaps of 5/64 is two doors of 19.8828 in', () => {
    // Source: 'Sizing Cabinet Doors to Tolerances', a cabinetmaking forum knowledge base, 2013.
    expect(boardIn(opening(40, 5 / 64), 'door').width).toBeCloseTo(inch((40 - 3 * (5 / 64)) / 2), 2)
  })

  it('34 in wide with three gaps of 1/4 in all is two doors of 16 7/8, with panels of 13 3/8', () => {
    // Source: 'Storage chest build completion', raugh.net/woodnerd.
    const frontBuild = {
      ...{ kind: 'fivePart' as const, stile: inch(2), rail: inch(2.75), groove: inch(0.25) },
      ...{ play: 0, areDrawersToo: false },
    } as const
    const boards = opening(34, 1 / 12, { frontBuild })
    const panel = boardIn(boards, 'doorPanel')
    expect(panel.width).toBeCloseTo(inch((34 - 0.25) / 2 - 2 * 2 + 2 * 0.25), 2)
  })
})
