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
