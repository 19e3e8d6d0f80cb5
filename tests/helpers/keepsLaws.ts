import { describe, expect, it } from 'vitest'
import type { ANY_KIND } from './anyMade'
import { judge } from './judge'
import { isMirrored } from './mirrorLaw'
import { isSeated, sharesNoRoom, staysInItsRoom } from './together'
import { hasTheirHoles, hasTheirVolume } from './volumeLaw'
import { growsAtItsRight } from './widerLaw'

const LAWS = [
  ['no two boards in one place', sharesNoRoom],
  ['no joint unseated', isSeated],
  ['no board out of their room but by their method', staysInItsRoom],
  ['boards of the volume that the blocks of another library leave of them', hasTheirVolume],
  ['holes that take what its drills take, clear of all else in their board', hasTheirHoles],
  ['the boards of the other hand with the mirrored work on each in the mirrored places, seen in a mirror', isMirrored],
  ['only what should be moved or larger where they are made wider', growsAtItsRight],
] as const

/** Judges a kind of cabinets by all laws that hold for every cabinet. */
export function itKeepsAllLaws([kind, any, numRuns]: (typeof ANY_KIND)[number]): void {
  const { all, isKept } = judge(
    any,
    numRuns,
    LAWS.map(([, law]) => law),
  )
  describe(`${kind}, built by every choice of a method,`, () => {
    it.each(LAWS)('have %s', (_, law) => isKept(law), 600_000)

    it('are as many as are asked for, most of them with nothing in them that cannot be built', () => {
      expect(all().all).toBe(numRuns)
      expect(all().sound).toBeGreaterThan(numRuns / 2)
    })
  })
}
