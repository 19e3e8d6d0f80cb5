import { describe, expect, it } from 'vitest'
import type { Front } from '../../../engine/project/document'
import { inch } from '../../../engine/units/length'
import { aWall, cabinet, type Said } from '../../helpers/wall'
import { findingIn } from './findings'

const TIPS = /stands alone with drawers/

function drawers(count: number): Front {
  const row = { size: { kind: 'share', share: 1 }, front: { kind: 'drawer' } } as const
  return { kind: 'rows', rows: Array.from({ length: count }, () => row) }
}

const FIVE: Said = { left: 1000, height: 1200, front: drawers(5) }

// Source: 16 CFR 1261 (ASTM F2057-23): clothing storage units 27 in and higher, of 30 lb and 3.2 cu ft or more, that are
// not built in.
describe('a base of drawers', () => {
  const told = (said: Said, ...others: ReturnType<typeof cabinet>[]) =>
    findingIn(aWall(cabinet('B1', { ...FIVE, ...said }), ...others), TIPS)

  it('that stands alone must be fixed to the wall, by its height and with the source', () => {
    expect(told({})).toMatchObject({ weight: 'mind', measure: '1200 mm', limit: 'fixed from 685.8 mm' })
    expect(told({})?.source).toMatch(/^16 CFR 1261 .*27 in high, 30 lb and 3\.2 cu ft/)
  })

  // Source: questions and answers of the CPSC: built-in units that are permanently attached are outside it; its figures in a
  // note of a test laboratory: 234 deaths, 199 of children, from January 2000 to April 2022.
  it('is told whom the rule is about, who is outside it and why there is one', () => {
    const { message, source } = told({})!
    expect(message).toContain(
      'free-standing clothing storage of this size; what is permanently attached to the building is outside it',
    )
    expect(message).toContain('234 people, 199 of them children')
    expect(source).toContain('not units that are permanently attached to the building (CPSC')
  })

  it('and a tall with drawers that stands alone are told the same, one of doors is not', () => {
    const tall = (front: Front) => findingIn(aWall(cabinet('T1', { left: 1000, front })), /^T1: stands alone/)!
    expect(tall(drawers(5))).toMatchObject({ weight: 'mind', limit: 'fixed, however high' })
    expect(tall(drawers(5)).message).toContain('free-standing clothing storage')
    expect(tall(drawers(5)).source).toContain('16 CFR 1261')
    expect(tall({ kind: 'door', hinge: 'left' }).message).not.toContain('clothing')
    const beside = aWall(cabinet('T1', { left: 1000, front: drawers(5) }), cabinet('B2', { left: 1600 }))
    expect(findingIn(beside, /^T1: is/)?.message).not.toContain('clothing')
  })

  it('is told from 27 in on, and not below', () => {
    const low = { front: drawers(3), width: 900 }
    expect(told({ ...low, height: inch(27) })?.measure).toBe('685.8 mm')
    expect(told({ ...low, height: inch(27) - 1 })).toBeNull()
  })

  it('is not told with less room than 3.2 cu ft, which is 90.6 litres', () => {
    const narrow = { front: drawers(3), height: 868 }
    // Within boards of 18 over a plinth of 100: 214 x 732 x 580 is 90.9 litres, and 213 across 90.4.
    expect(told({ ...narrow, width: 250 })).not.toBeNull()
    expect(told({ ...narrow, width: 249 })).toBeNull()
  })

  it('is not told where a cabinet beside it holds it, where it hangs, or where it has none', () => {
    expect(told({}, cabinet('B2', { left: 1600 }))).toBeNull()
    expect(told({}, cabinet('B2', { left: 1606 }))).not.toBeNull()
    expect(told({ bottom: 300 })).toBeNull()
    expect(told({ front: { kind: 'door', hinge: 'left' } })).toBeNull()
  })
})
