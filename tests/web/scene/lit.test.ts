import { describe, expect, it } from 'vitest'
import { type CabinetId, derive, type PartId, type RowKey } from '../../../engine/index'
import { builtOf } from '../../../web/scene/built'
import { captionOf, pictureWords, weightOf } from '../../../web/scene/caption'
import { chalkOn, litOf, sameLit } from '../../../web/scene/lit'
import { boxToShow, ownersOf } from '../../../web/scene/showing'
import { aCorner, aWall, cabinet } from '../../helpers/wall'
import { built, onAWall, upright } from './boards'

const side = upright('LS', { x: 0 })
const shelf = upright('SH', { x: 300 })
const b1 = built('k1', 0, [side, shelf])
const b2 = built('k2', 600, [])
const derived = onAWall(b1, b2)
const ROW = { kind: 'row', row: 'row of SH' as RowKey } as const

describe('the chalk on a cabinet', () => {
  it('is on all of it when the cabinet is selected, and on no other', () => {
    const selection = { kind: 'cabinets', ids: ['k1' as CabinetId] } as const
    expect(litOf(selection, derived, builtOf(b1))).toEqual({ kind: 'whole' })
    expect(litOf(selection, derived, builtOf(b2))).toEqual({ kind: 'none' })
  })

  it('is on every part of a row that is selected', () => {
    expect(litOf(ROW, derived, builtOf(b1))).toEqual({ kind: 'parts', parts: ['k1/SH'] })
    expect(litOf(ROW, derived, builtOf(b2))).toEqual({ kind: 'none' })
  })

  it('is laid on a part and not on the part beside it', () => {
    const lit = litOf({ kind: 'part', owner: 'k1' as CabinetId, part: side.id }, derived, builtOf(b1))
    expect(chalkOn(lit, side.id)).toBeGreaterThan(0)
    expect(chalkOn(lit, shelf.id)).toBe(0)
  })

  it('is the same chalk for equal parts, so that nothing is redrawn', () => {
    const one = { kind: 'parts', parts: ['a' as PartId] } as const
    expect(sameLit(one, { kind: 'parts', parts: ['a' as PartId] })).toBe(true)
    expect(sameLit(one, { kind: 'parts', parts: ['b' as PartId] })).toBe(false)
    expect(sameLit(one, { kind: 'none' })).toBe(false)
  })
})

describe('what Fit selected shows', () => {
  it('is the cabinets that the parts of a row are in', () => {
    expect(ownersOf(derived, ROW)).toEqual(['k1'])
  })

  it('is the drawn box of a cabinet that has no boards', () => {
    expect(boxToShow(derived, 0, ['k2' as CabinetId])).toEqual({
      min: { x: 600, y: 0, z: 0 },
      max: { x: 600 + 600, y: 700, z: 500 },
    })
  })

  it('is the wall when there is no cabinet at all', () => {
    expect(boxToShow(onAWall(), 0, null).max).toEqual({ x: 3600, y: 2400, z: 600 })
  })
})

describe('the caption of the picture', () => {
  it('gives mark, parts and weight of the cabinet that is selected', () => {
    const weight = (2 * 700 * 500 * 18 * 700) / 1e9
    expect(weightOf(b1.parts, derived)).toBeCloseTo(weight, 9)
    expect(captionOf(derived, { kind: 'cabinets', ids: ['k1' as CabinetId] })).toEqual({
      mark: 'k1',
      words: `2 parts, ${weight.toFixed(1)} kg`,
    })
  })

  it('weighs in pounds where lengths are in inches', () => {
    const project = { ...derived.project, display: { unit: 'in', step: 32 } as const }
    const kg = (2 * 700 * 500 * 18 * 700) / 1e9
    const { words } = captionOf({ ...derived, project }, { kind: 'cabinets', ids: ['k1' as CabinetId] })
    expect(words).toBe(`2 parts, ${(kg / 0.45359237).toFixed(1)} lb`)
  })

  it('gives mark, name and size of the part that is selected', () => {
    const caption = captionOf(derived, { kind: 'part', owner: 'k1' as CabinetId, part: side.id })
    expect(caption.mark).toBe('B1-LS')
    expect(caption.words).toMatch(/^LS, 700\D.*500\D.*18/)
  })

  it('speaks of the whole run when nothing is selected, or what was selected is gone', () => {
    expect(captionOf(derived, { kind: 'nothing' }).mark).toBe('2 cabinets')
    expect(captionOf(derived, { kind: 'row', row: 'gone' as RowKey }).mark).toBe('2 cabinets')
  })

  it('tells who cannot see it what the picture shows', () => {
    expect(pictureWords(derived, 0.4, true)).toBe('2 cabinets in 3D: k1, k2; 40 % apart, fronts hidden')
  })
})

describe('the box that is fitted', () => {
  const base = cabinet('B1', { left: 100, width: 600, depth: 560 })

  it('is that of the cabinets at one wall', () => {
    const { min, max } = boxToShow(derive(aWall(base)), 0, null)
    expect([min.x, max.x]).toEqual([100, 700])
  })

  it('holds a wall that nothing stands at yet, beside one where something does', () => {
    const { min, max } = boxToShow(derive(aCorner(base)), 0, null)
    // The second wall is 2800 long and comes out from the end of the first.
    expect([min.x, max.x, max.z]).toEqual([0, 3600, 2800])
    expect(boxToShow(derive(aCorner(base)), 0, [base.id]).max.x).toBe(700)
  })
})
