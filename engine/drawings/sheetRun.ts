import type { PartPiece } from '../sheets/layout'
import type { LineMark } from './drawing'

/** How far from the middle of the boards a line begins and ends, in parts of what they have in common across. */
const BEGINS = 0.3
const ENDS = 0.1

/**
 * The two slanted lines that are drawn over boards whose grain runs on, so that their order is seen when they are apart
 * (common practice, no source): over all parts of a run, which lie in a row, drawing together towards the last.
 */
export function runLines(parts: readonly PartPiece[], runOf: (part: string) => string | null): LineMark[] {
  const runs = new Map<string, PartPiece[]>()
  for (const part of parts) {
    const run = runOf(part.part)
    if (run !== null) runs.set(run, [...(runs.get(run) ?? []), part])
  }
  return [...runs.values()].filter(({ length }) => length > 1).flatMap(linesOver)
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
