import { describe, expect, it } from 'vitest'
import { derive } from '../../../engine/index'
import { findingLines, findingsWords, findingsWordsUnderHand } from '../../../web/tables/findingLines'
import { aWall, cabinet } from '../../helpers/wall'

const tall = (id: string, left: number, height: number) =>
  cabinet(id, { left, width: 600, height, bottom: 0, depth: 580 })

describe('how much the list of findings holds', () => {
  it('is counted in its lines: two cabinets that are told in one line are one', () => {
    // Two low uppers alike have nothing to mind, and both are told of their strips in one line.
    const known = derive(aWall(cabinet('U1', { left: 400, width: 450 }), cabinet('U2', { left: 850, width: 450 })))
    expect(known.problems.map(({ weight }) => weight)).toEqual(['know', 'know'])
    expect(findingsWords(known)).toBe('1')
    // Talls apart stand alone, each by itself, which is to be minded.
    const apart = derive(aWall(tall('T1', 400, 2000), tall('T2', 1400, 2000), tall('T3', 2400, 2000)))
    const minds = apart.problems.filter(({ weight }) => weight === 'mind').length
    const lines = findingLines(apart).filter(({ finding }) => finding.weight === 'mind').length
    expect(minds).toBe(3)
    expect(lines).toBe(1)
    expect(findingsWords(apart)).toBe('1 to mind')
    expect(findingsWordsUnderHand(apart)).toBe('1 to mind')
    expect(findingsWordsUnderHand(known)).toBe('1')
  })

  it('is counted under the hand without the words of any finding', () => {
    const derived = derive(aWall(tall('T1', 400, 2000), tall('T2', 1400, 2000), tall('T3', 2400, 1900)))
    const problems = derived.problems.map(({ weight, about, measure, limit, source }) => ({
      ...{ weight, about, measure, limit, source },
      get message(): string {
        throw new Error('words were made')
      },
    }))
    expect(findingsWordsUnderHand({ ...derived, problems } as typeof derived)).toBe('2 to mind')
    expect(findingsWords(derived)).toBe('2 to mind')
  })

  it('begins with the gravest, and is worked out once for one design', () => {
    const derived = derive(aWall(tall('T1', 400, 2000), cabinet('U1', { left: 420, width: 450, bottom: 1300 })))
    const weights = findingLines(derived).map(({ finding }) => finding.weight)
    const order = ['stop', 'mind', 'know']
    expect(weights).toEqual([...weights].sort((a, b) => order.indexOf(a) - order.indexOf(b)))
    expect(new Set(weights).size).toBeGreaterThan(1)
    expect(findingLines(derived)).toBe(findingLines(derived))
  })
})
