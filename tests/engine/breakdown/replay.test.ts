import { describe, expect, it } from 'vitest'
import { randomFrom } from '../../../engine/basics/random'
import { breakdownOf } from '../../../engine/breakdown/steps'
import type { Piece } from '../../../engine/sheets/layout'
import {
  type Cutting,
  countsOf,
  crosscut,
  inputOf,
  OFFCUT,
  part,
  placementsOf,
  replay,
  rip,
  sheets,
  WASTE,
} from './sawyer'

describe('a replay of the steps', () => {
  it.each(Array.from({ length: 60 }, (_, seed) => seed))(
    'leaves exactly the parts, offcuts and waste of layout %i',
    (seed) => {
      const given = randomSheets(seed)
      for (const minutes of [
        { perSetting: 99, perCut: 1, perSheet: 0 },
        { perSetting: 0, perCut: 1, perSheet: 99 },
      ]) {
        const floor = replay(breakdownOf(inputOf(given, { minutes })), given.job, given.answer)
        expect(floor.filter(({ kind }) => ['sheet', 'strip', 'piece'].includes(kind))).toEqual([])
        const tree = given.answer.sheets.flatMap(({ root, copies }) =>
          Array.from({ length: copies }, () => leavesOf(root)).flat(),
        )
        expect(countsOf(floor.filter(({ kind }) => kind === 'part'))).toEqual(
          countsOf(tree.filter(({ kind }) => kind === 'part')),
        )
        // An offcut that reaches the far edges of the sheet still has its factory edges; what is trimmed is waste besides.
        expect(countsOf(floor.filter(({ kind }) => kind === 'offcut'))).toEqual(
          countsOf(tree.filter(({ kind }) => kind === 'offcut')),
        )
        const strays = countsOf(tree.filter(({ kind }) => kind === 'waste'))
        expect(
          strays.filter(
            (waste) => !countsOf(floor.filter(({ kind }) => kind === 'waste')).some((there) => covers(there, waste)),
          ),
        ).toEqual([])
      }
    },
  )

  it('fails when a step is left out', () => {
    const given = sheets({ A: [768, 580], B: [1000, 320] }, [
      [1, rip(crosscut(part('A'), part('A'), OFFCUT), crosscut(part('B'), WASTE), OFFCUT)],
    ])
    const plan = breakdownOf(inputOf(given))
    expect(() => replay({ ...plan, steps: plan.steps.slice(1) }, given.job, given.answer)).toThrow('there is none')
  })
})

/** `4 of 7 x 580` covers `3 of 7 x 580`. */
function covers(there: string, wanted: string): boolean {
  const [have, size] = there.split(' of ')
  const [need, same] = wanted.split(' of ')
  return size === same && Number(have) >= Number(need)
}

/** Leaves of a tree as they really come off the saw: at the far edges, the factory edge is still on what is left over. */
function leavesOf(root: Piece): { kind: Piece['kind']; length: number; width: number }[] {
  const far = { x: root.x + root.length, y: root.y + root.width }
  function walk(piece: Piece, hasEnds: boolean): ReturnType<typeof leavesOf> {
    if (piece.kind === 'cut') return piece.pieces.flatMap((child) => walk(child, hasEnds && piece.direction === 'rip'))
    if (piece.kind === 'part') return [piece]
    const { kind, x, y, length, width } = piece
    const ends = (hasEnds ? 10 : 0) + (x + length === far.x ? 10 : 0)
    return [{ kind, length: length + ends, width: width + (y + width === far.y ? 10 : 0) }]
  }
  return walk(root, true)
}

/** Sheets of strips of equal or smaller parts, some of them ripped again: rips, crosscuts, re-rips. */
function randomSheets(seed: number) {
  const random = randomFrom(seed)
  const between = (least: number, most: number) => least + Math.floor(random() * (most - least) * 4) / 4
  const sizes: Record<string, readonly [number, number]> = {}
  const name = (length: number, width: number) => {
    const id = `P${length}x${width}`
    sizes[id] = [length, width]
    return part(id)
  }
  const strip = (width: number): Cutting => {
    const pieces: Cutting[] = []
    for (let room = 2420 - 153; room > 500; ) {
      const length = between(200, Math.min(900, room - 50))
      const isRipped = random() < 0.3 && width > 200
      pieces.push(isRipped ? rip(name(length, between(60, width / 2)), WASTE) : name(length, width))
      room -= length + 3
    }
    // The widest piece of a strip sets its width.
    return crosscut(name(between(100, 150), width), ...pieces, random() < 0.5 ? OFFCUT : WASTE)
  }
  const layout = (): Cutting => {
    const strips: Cutting[] = []
    for (let room = 1200; room > 260; ) {
      const width = between(80, Math.min(600, room - 20))
      strips.push(strip(width))
      room -= width + 3
    }
    return rip(...strips, OFFCUT)
  }
  const layouts = Array.from({ length: 1 + (seed % 3) }, (_, at) => [1 + ((seed + at) % 3), layout()] as const)
  const given = sheets(sizes, layouts)
  expect(
    given.answer.sheets.flatMap(({ root }) => placementsOf(root)).every(({ x, length }) => x + length <= 2430),
  ).toBe(true)
  return given
}
