import { describe, expect, it } from 'vitest'
import { installCautions } from '../../../engine/checks/installation'
import { aCabinet } from '../../helpers/cabinets'

const MM = { unit: 'mm', step: 1 } as const
const STUDS = { studSpacing: 406.4 }
const words = (...cabinets: Parameters<typeof installCautions>[0]) =>
  installCautions(cabinets, MM, STUDS).map(({ text, cabinets: marks }) => `${marks.join(' ')}: ${text}`)

describe('the cautions for installing', () => {
  it('are none where there is nothing to install', () => {
    expect(words()).toEqual([])
  })

  it('send everyone to local codes and licensed trades', () => {
    expect(words(aCabinet('base')).join()).toMatch(/licensed trades; local codes/)
    expect(words(aCabinet('base'))).toHaveLength(1)
  })

  // Source: thehonestcarpenter.com, on hanging wall cabinets: at least four screws over 12 in, and two studs for each box.
  it('ask for studs behind every upper, and four screws where it is wider than 12 in', () => {
    const twelve = 304.8
    expect(words(aCabinet('upper', { width: twelve })).join()).not.toMatch(/four screws/)
    expect(words(aCabinet('upper', { width: twelve + 1 })).join()).toMatch(/four screws/)
    expect(words(aCabinet('upper')).join()).toMatch(/two studs/)
    // Source: the same: the top rail is the place for them. Trade pages on wall cabinets: no drywall screws.
    expect(words(aCabinet('upper')).join()).toMatch(/not drywall screws.* The top rail first/)
  })

  // Source: trade pages on wall cabinets, '#8 or #10 cabinet screws, usually 2-1/2" to 3" long'; thehonestcarpenter.com: wide boxes on three studs.
  it('name the screws that a cabinet hangs by', () => {
    expect(words(aCabinet('upper')).join()).toContain(
      `number 8 or 10 with a washer under the head or on it, 63.5 mm to 76.2 mm long`,
    )
    const inInches = installCautions([aCabinet('upper')], { unit: 'in', step: 16 }, STUDS)
    expect(inInches.map(({ text }) => text).join()).toContain('2 1/2 in to 3 in long')
    expect(words(aCabinet('upper')).join()).toContain('a wide one into three')
  })

  // Source: a page on hanging wall cabinets, 'ganging, use a minimum of three screws, in the uppers'.
  it('have two that hang side by side joined with three screws', () => {
    expect(words(aCabinet('upper'), aCabinet('upper', { number: 2 })).join()).toMatch(
      /at least three screws through the sides/,
    )
    expect(words(aCabinet('upper')).join()).not.toMatch(/three screws through/)
  })

  // Source: J. Korean Wood Sci. 2021 (plywood holds less than is predicted); a carpenters' handbook (60 per cent in end grain).
  it('count on no screw in plywood or in end grain', () => {
    expect(words(aCabinet('upper')).join()).toMatch(/Plywood holds less than that sum says, and end grain 60 %/)
    expect(words(aCabinet('base')).join()).not.toMatch(/end grain/)
  })

  // Follows from the two studs for each box and studs 16 in on centre. Source of both: thehonestcarpenter.com.
  it('ask for blocking behind one that is narrower than studs are apart', () => {
    const sixteen = 406.4
    expect(words(aCabinet('upper', { width: sixteen - 1 })).join()).toMatch(/blocking/)
    expect(words(aCabinet('upper', { width: sixteen })).join()).not.toMatch(/blocking/)
    const inMasonry = installCautions([aCabinet('upper', { width: 300 })], MM, { studSpacing: null })
    expect(inMasonry.map(({ text }) => text).join()).not.toMatch(/blocking/)
  })

  it('ask the same of a base that hangs as of an upper', () => {
    const hung = words(aCabinet('base', { bottom: 350, width: 900 }))
    expect(hung).toEqual(words(aCabinet('upper', { width: 900 })).map((text) => text.replace(/^U1/, 'B1')))
    expect(hung.join()).toMatch(/at least two studs/)
  })

  it('have every tall fixed to the wall', () => {
    expect(words(aCabinet('tall')).join()).toMatch(/fix it to the wall/)
    expect(words(aCabinet('base')).join()).not.toMatch(/fix it to the wall/)
  })
})
