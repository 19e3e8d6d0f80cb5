import { describe, expect, it } from 'vitest'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import { partsOf } from '../../../engine/parts/partsOf'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import type { CabinetKind } from '../../../engine/project/document'
import type { BandingRules } from '../../../engine/project/method'
import { aCabinet, PLAIN, rulesWith } from '../../helpers/cabinets'
import { aWall, cabinet, idOf } from '../../helpers/wall'

const BAND = 1
const banding = (ends: BandingRules['ends']): BandingRules => ({
  ...{ carcass: BAND, fronts: 1, isInFinishedSize: true },
  ...(ends && { ends }),
})
const partsWith = (
  kind: CabinetKind,
  ends: BandingRules['ends'],
  changes = {},
  height = kind === 'tall' ? 2100 : 720,
) => {
  const rules = rulesWith({ ...PLAIN, banding: banding(ends), ...changes })
  return partsOf(buildCabinet(aCabinet(kind, { height }), rules), rules)
}
const sideOf = (...said: Parameters<typeof partsWith>) => partsWith(...said).find(({ role }) => role === 'leftSide')!

// Source: AWS 2009 4.4.4: the bottom edge of the end of upper cabinets is banded; the top edge of tall ends over 80 in where
// it is open above.
describe('the ends of sides', () => {
  it('are not banded where the method does not say so', () => {
    expect(sideOf('upper', undefined).banding).toEqual({ low: 0, high: BAND, start: 0, end: 0 })
    expect(sideOf('upper', undefined).cutLength).toBe(720)
  })

  it('are banded at the foot of uppers, and sawn shorter by it', () => {
    for (const role of ['leftSide', 'rightSide'] as const) {
      const side = partsWith('upper', 'uppers').find((part) => part.role === role)!
      expect([side.banding.start, side.banding.end]).toEqual([BAND, 0])
      expect([side.length, side.cutLength, side.cutWidth]).toEqual([720, 720 - BAND, 330 - BAND])
      expect(Math.max(side.banding.low, side.banding.high)).toBe(BAND)
    }
    expect(sideOf('base', 'uppersAndTalls').banding).toMatchObject({ start: 0, end: 0 })
  })

  it('are banded at the head of talls over 80 in alone, where that is chosen', () => {
    expect(sideOf('tall', 'uppers').banding).toMatchObject({ start: 0, end: 0 })
    expect(sideOf('tall', 'uppersAndTalls').banding).toMatchObject({ start: 0, end: BAND })
    // 80 in are 2032.
    expect(sideOf('tall', 'uppersAndTalls', {}, 2032).banding.end).toBe(0)
    expect(sideOf('tall', 'uppersAndTalls', {}, 2033).banding.end).toBe(BAND)
  })

  it('are not banded where they stand in a bottom or under a top', () => {
    expect(sideOf('upper', 'uppers', { bottom: 'under' }).banding.start).toBe(0)
    expect(sideOf('tall', 'uppersAndTalls', { top: 'over' }).banding.end).toBe(0)
  })

  it('are banded at the foot of both sides of corner uppers too, and their fronts as before', () => {
    for (const kind of ['L', 'diagonal'] as const) {
      for (const hand of ['left', 'right'] as const) {
        const corner = { kind, hand, other: 620, otherDepth: 310 }
        const cabinet = aCabinet('upper', { width: 600, corner })
        const sidesBy = (ends: BandingRules['ends']) => {
          const rules = rulesWith({ ...PLAIN, banding: banding(ends) })
          return partsOf(buildCabinet(cabinet, rules), rules).filter(({ role }) => /Side$/.test(role))
        }
        const [plain, banded] = [sidesBy(undefined), sidesBy('uppers')]
        expect(banded).toHaveLength(2)
        for (const [at, side] of banded.entries()) {
          expect(side.banding).toEqual({ ...plain[at]!.banding, start: BAND })
          expect(Math.max(side.banding.low, side.banding.high)).toBe(BAND)
          expect(side.cutLength).toBe(plain[at]!.cutLength - BAND)
        }
      }
    }
  })

  it('are counted in the metres of banding, each as long as the side is wide', () => {
    const plain = aWall(cabinet('U1'))
    const own = applyEdit(plain, { kind: 'override', ids: [idOf('U1')], choices: { banding: { ends: 'uppers' } } })
    const metres = (project: typeof plain) =>
      derive(project).cutList.totals.reduce((sum, { banding: length }) => sum + length, 0)
    const side = derive(own).cabinets[0]!.parts.find(({ role }) => role === 'leftSide')!
    const both = 2 * side.cutWidth
    expect((metres(own) - metres(plain)) * 1000).toBeGreaterThanOrEqual(both - 4)
    expect((metres(own) - metres(plain)) * 1000).toBeLessThanOrEqual(both + 4)
  })
})
