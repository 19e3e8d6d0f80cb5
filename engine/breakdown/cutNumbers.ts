import type { CutPiece } from '../sheets/layout'
import { type BreakdownInput, worksOf } from './steps'
import type { Work } from './work'

/** For each cut piece of one sheet, by its `pieceKey`, the turn of the cut behind each of its pieces; null where there is none. */
export type CutNumbers = ReadonlyMap<string, readonly (number | null)[]>

/** In which turn the steps make every cut of a sheet, counted from 1 on each sheet, by the number of the sheet. */
export function cutNumbersOf(input: BreakdownInput): ReadonlyMap<number, CutNumbers> {
  const sheets = new Map<number, Map<string, (number | null)[]>>()
  const turns = new Map<number, number>()
  for (const work of [...worksOf(input).values()].flat()) {
    const { sheet, drawn } = work.task
    if (!SEPARATING.has(work.kind)) continue
    const cuts = sheets.get(sheet) ?? new Map<string, (number | null)[]>()
    sheets.set(sheet, cuts)
    const numbers = cuts.get(pieceKey(drawn)) ?? drawn.pieces.map(() => null)
    cuts.set(pieceKey(drawn), numbers)
    for (const at of cutOffBy(work)) {
      const turn = (turns.get(sheet) ?? 0) + 1
      turns.set(sheet, turn)
      numbers[at] = turn
    }
  }
  for (const cuts of sheets.values()) for (const numbers of cuts.values()) giveToRest(numbers)
  return sheets
}

/** Straightening and squaring take off the trim, which has no line. */
const SEPARATING: ReadonlySet<Work['kind']> = new Set(['rip', 'crosscut', 'rerip'] as const)

/** The pieces that a work frees, as they are drawn. */
function cutOffBy({ task: { called }, leaves, cuts }: Work): number[] {
  return leaves.slice(0, cuts).map(({ key }) => called.indexOf(key))
}

/** The last piece has no line behind it: when it is cut off and another is what is left, that one's line is its cut. */
function giveToRest(numbers: (number | null)[]): void {
  const rest = numbers.indexOf(null)
  if (rest < 0 || rest === numbers.length - 1) return
  numbers[rest] = numbers.at(-1)!
  numbers[numbers.length - 1] = null
}

/** The same for a piece that is cut alike in the same place. */
export function pieceKey({ direction, x, y, length, width }: CutPiece): string {
  return [direction, x, y, length, width].join(' ')
}
