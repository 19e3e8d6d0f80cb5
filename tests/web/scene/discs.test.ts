import { describe, expect, it } from 'vitest'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import { partsOf } from '../../../engine/parts/partsOf'
import { USUAL_FIXINGS } from '../../../engine/project/fixing'
import { discsOf, widerThan } from '../../../web/scene/discs'
import { aCabinet, rulesWith } from '../../helpers/cabinets'

function partsWith(fixing: keyof typeof USUAL_FIXINGS) {
  const rules = rulesWith({ fixing: USUAL_FIXINGS[fixing] })
  return partsOf(buildCabinet(aCabinet('upper', { front: { kind: 'pair' } }), rules), rules)
}

function told(discs: ReturnType<typeof discsOf>): string[] {
  return discs.parts.map((part, at) => {
    const vector = (of: Float32Array) => [...of.slice(3 * at, 3 * at + 3)].join(',')
    return `${part.split('/')[1]} ${vector(discs.centres)} opens ${vector(discs.opens)} along ${vector(discs.along)}`
  })
}

describe('the discs of holes', () => {
  it('lie where the holes are, the widest first, and open out of the wood', () => {
    const discs = discsOf(partsWith('none'), false)
    // Two doors with two cups of 35 each, then their four screws of 8, then two plates of two holes of 5 on each side.
    expect([...discs.sizes].filter((_, at) => at % 2 === 0)).toEqual([
      ...new Array(4).fill(17.5),
      ...new Array(8).fill(4),
      ...new Array(8).fill(2.5),
    ])
    // The inside of a door looks at the wall: its cup is 22.5 from the edge that begins at 1.5, on its rear face at 330.
    expect(told(discs)[0]).toMatch(/^door-1 24,.*,330 opens 0,0,-1 along 0,1,0$/)
    expect([0, 5, 8, 35].map((least) => widerThan(discs, least))).toEqual([20, 12, 4, 0])
  })

  it('leave out those of hidden fronts', () => {
    const discs = discsOf(partsWith('none'), true)
    expect(discs.parts.map((part) => part.split('/')[1])).toEqual([
      ...new Array(4).fill('left-side'),
      ...new Array(4).fill('right-side'),
    ])
  })

  it('are long where a mortise is, and open in the ends of boards too', () => {
    const discs = discsOf(partsWith('looseTenons'), true)
    // A mortise of 5 x 19 is a disc of 2.5 whose halves are drawn 7 apart from its middle.
    const mortises = [...discs.sizes].flatMap((size, at) => (at % 2 === 1 && size > 0 ? [size] : []))
    expect(new Set(mortises)).toEqual(new Set([(19 - 5) / 2]))
    const ends = told(discs).filter((one) => one.startsWith('bottom'))
    expect(new Set(ends.map((one) => one.split('opens ')[1]))).toEqual(
      new Set(['-1,0,0 along 0,0,-1', '1,0,0 along 0,0,-1']),
    )
  })

  it('open the way that a slanting door looks', () => {
    const corner = { kind: 'diagonal', hand: 'left', other: 620, otherDepth: 320 } as const
    const said = { width: 620, depth: 320, front: { kind: 'door', hinge: 'left' }, corner } as const
    const rules = rulesWith({})
    const parts = partsOf(buildCabinet(aCabinet('upper', said), rules), rules)
    const discs = discsOf(
      parts.filter(({ role }) => role === 'door'),
      false,
    )
    // 300 along and 300 out: its cups open square to that, away from the room.
    expect([...discs.opens.slice(0, 3)].map((one) => one.toFixed(4))).toEqual(['-0.7071', '0.0000', '-0.7071'])
  })

  it('of a hole that is bored through are one on each face', () => {
    const screws = told(discsOf(partsWith('screws'), true)).filter((one) => one.startsWith('left-side 0,'))
    const inside = told(discsOf(partsWith('screws'), true)).filter((one) => /^left-side 18,9,/.test(one))
    expect(screws.length).toBe(2 * 3)
    expect(inside.length).toBe(3)
  })
})
