import type { Cells } from './cells'
import { planesOf, woodAt } from './faces'

/**
 * The lines where the skin of a board has a corner. Round a line between four cells it is sharp when one or three of
 * them are wood, or two that only touch along it:
 *
 *      #|.     #|#     #|.        not   #|#    #|.
 *      -+-     -+-     -+-              -+-    -+-
 *      .|.     #|.     .|#              .|.    #|.
 */
export function sharpEdges(cells: Cells): number[] {
  const edges: number[] = []
  const planes = planesOf(cells)
  for (const along of [0, 1, 2] as const) {
    const u = ((along + 1) % 3) as 0 | 1 | 2
    const v = ((along + 2) % 3) as 0 | 1 | 2
    for (let b = 0; b < planes[v].length; b++) {
      for (let a = 0; a < planes[u].length; a++) {
        const end = (step: number) => {
          const point = [0, 0, 0]
          point[along] = planes[along][step]!
          point[u] = planes[u][a]!
          point[v] = planes[v][b]!
          return point
        }
        let from: number | null = null
        for (let step = 0; step < planes[along].length; step++) {
          const goesOn = step < planes[along].length - 1 && isSharp(cells, along, step, a, b)
          if (goesOn && from === null) from = step
          if (!goesOn && from !== null) {
            edges.push(...end(from), ...end(step))
            from = null
          }
        }
      }
    }
  }
  return edges
}

function isSharp(cells: Cells, along: 0 | 1 | 2, step: number, a: number, b: number): boolean {
  const wood = (da: number, db: number) => {
    const at = [0, 0, 0]
    at[along] = step
    at[(along + 1) % 3] = a + da
    at[(along + 2) % 3] = b + db
    return woodAt(cells, at)
  }
  const [lowLow, highLow, lowHigh, highHigh] = [wood(-1, -1), wood(0, -1), wood(-1, 0), wood(0, 0)]
  const count = Number(lowLow) + Number(highLow) + Number(lowHigh) + Number(highHigh)
  return count === 1 || count === 3 || (count === 2 && lowLow === highHigh)
}
