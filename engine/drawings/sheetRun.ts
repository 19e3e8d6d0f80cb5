import type { PartPiece } from '../sheets/layout'
import type { LineMark } from './drawing'

/** How far from the middle of the boards a line begins and ends, in parts of what they have in common across. */
const BEGINS = 0.3
const ENDS = 0.1

/** No blade is thicker: boards farther apart do not lie beside one another. */
const WIDEST_KERF = 20

/**
 * The two slanted lines that are drawn over boards whose grain runs on, so that their order is seen when they are apart
 * (common practice, no source): over those of a run that lie side by side, drawing together towards the last.
 */
export function runLines(parts: readonly PartPiece[], runOf: (part: string) => string | null): LineMark[] {
  const rows: PartPiece[][] = []
  for (const part of parts) {
    const run = runOf(part.part)
    const row =
      run === null ? undefined : rows.find((own) => runOf(own[0]!.part) === run && isBeside(own.at(-1)!, part))
    if (row) row.push(part)
    else if (run !== null) rows.push([part])
  }
  return rows.filter(({ length }) => length > 1).flatMap(linesOver)
}

function isBeside(a: PartPiece, b: PartPiece): boolean {
  const isNext = (gap: number) => gap >= 0 && gap <= WIDEST_KERF
  const isAlong = a.y === b.y && a.width === b.width && isNext(b.x - a.x - a.length)
  return isAlong || (a.x === b.x && a.length === b.length && isNext(b.y - a.y - a.width))
}

function linesOver(boards: readonly PartPiece[]): LineMark[] {
  const left = Math.min(...boards.map(({ x }) => x))
  const low = Math.min(...boards.map(({ y }) => y))
  const right = Math.max(...boards.map(({ x, length }) => x + length))
  const high = Math.max(...boards.map(({ y, width }) => y + width))
  const isAlong = boards[0]!.y === boards[1]!.y
  const middle = isAlong ? (low + high) / 2 : (left + right) / 2
  const across = isAlong ? high - low : right - left
  return [-1, 1].map((side): LineMark => {
    const begin = middle + side * BEGINS * across
    const end = middle + side * ENDS * across
    const [from, to] = isAlong
      ? [
          { x: left, y: begin },
          { x: right, y: end },
        ]
      : [
          { x: begin, y: low },
          { x: end, y: high },
        ]
    return { kind: 'line', layer: 'run', from, to }
  })
}
