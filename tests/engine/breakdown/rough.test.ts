import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { roughCutOf } from '../../../engine/breakdown/rough'
import type { Task } from '../../../engine/breakdown/task'
import type { Piece } from '../../../engine/sheets/layout'
import { crosscut, lay, OFFCUT, part, rip } from './sawyer'

const KERF = 3
const ALLOWANCE = 10
const LENGTH = 2440

/** Strips of parts of these lengths, on a sheet with 10 at each end. */
function taskOf(strips: readonly (readonly number[])[], runOf: Task['runOf'] = () => null): Task {
  const sizes = Object.fromEntries(strips.flat().map((length) => [`P${length}`, [length, 100] as const]))
  const cutting = rip(
    ...strips.map((lengths) => crosscut(...lengths.map((length) => part(`P${length}`)), OFFCUT)),
    OFFCUT,
  )
  const drawn = lay(cutting, { x: 10, y: 10, length: LENGTH - 20, width: 1200 }, sizes, KERF)
  return { drawn, rough: { start: 10, end: 10, low: 10, high: 10 }, runOf } as unknown as Task
}

/** Whether every strip can still be cut: as many parts as go before the cut, and the others behind it. */
function leavesAllWhole(strips: readonly (readonly number[])[], at: number): boolean {
  return strips.every((lengths) => {
    let from = 10
    let count = 0
    while (count < lengths.length && from + lengths[count]! + ALLOWANCE <= at) from += lengths[count++]! + KERF
    // Behind: squared by the allowance, then part after part, and the factory end.
    const behind = lengths.slice(count)
    const need = behind.reduce((sum, length) => sum + length, 0) + KERF * Math.max(0, behind.length - 1)
    return behind.length === 0 || at + KERF + ALLOWANCE + need + 10 <= LENGTH
  })
}

const lengths = fc.array(fc.integer({ min: 200, max: 900 }), { minLength: 1, maxLength: 4 }).filter((all) => {
  return all.reduce((sum, length) => sum + length + KERF, 0) <= LENGTH - 20 - 60
})
const strips = fc.array(lengths, { minLength: 1, maxLength: 4 })
const longest = fc.integer({ min: 1200, max: 2000 })

describe('a rough crosscut of a whole piece', () => {
  it('leaves every part whole and neither half too long', () => {
    fc.assert(
      fc.property(strips, longest, (all, most) => {
        const at = roughCutOf(taskOf(all), most, KERF, ALLOWANCE)
        fc.pre(at !== null)
        expect(leavesAllWhole(all, at)).toBe(true)
        expect(Math.max(at, LENGTH - at - KERF)).toBeLessThanOrEqual(most)
      }),
      { seed: 61, numRuns: 200 },
    )
  })

  it('is given up only where no millimetre would do', () => {
    fc.assert(
      fc.property(strips, longest, (all, most) => {
        fc.pre(roughCutOf(taskOf(all), most, KERF, ALLOWANCE) === null)
        for (let at = LENGTH - KERF - most; at <= most; at++) expect(leavesAllWhole(all, at), `at ${at}`).toBe(false)
      }),
      { seed: 62, numRuns: 50 },
    )
  })

  it('cuts what is left over wherever it likes', () => {
    const uncut: Piece = { kind: 'offcut', x: 10, y: 10, length: 2420, width: 1200 }
    const drawn = { ...uncut, kind: 'cut', direction: 'rip', pieces: [uncut] }
    const task = { drawn, rough: { start: 10, end: 10, low: 10, high: 10 } } as unknown as Task
    expect(roughCutOf(task, 1400, KERF, ALLOWANCE)).toBe((LENGTH - KERF) / 2)
  })

  it('does not part boards over which the grain runs on', () => {
    const all = [[700, 600, 500]]
    // 700 and 600 before the cut, or 700 alone: the second parts a run of 600 and 500.
    expect(roughCutOf(taskOf(all), 1800, KERF, ALLOWANCE)).toBe(1218.5)
    const runOf: Task['runOf'] = ({ part }) => (part === 'P700' ? null : { run: 'fronts', place: 1 })
    const at = roughCutOf(taskOf(all, runOf), 1800, KERF, ALLOWANCE)!
    expect(at).toBeGreaterThanOrEqual(720)
    expect(LENGTH - at - KERF).toBeGreaterThanOrEqual(ALLOWANCE + 600 + KERF + 500 + 10)
  })
})
