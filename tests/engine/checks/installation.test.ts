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
