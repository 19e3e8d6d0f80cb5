import load from 'highs'
import { beforeAll, expect, it } from 'vitest'
import { type Random, randomFrom } from '../../engine/basics/random'
import { Simplex } from '../../engine/sheets/simplex'

/** The linear programmes of the packer solved a second time by HiGHS, a library for linear programmes. */

let library: Awaited<ReturnType<typeof load>>
beforeAll(async () => {
  library = await load()
})

/** How many of each demand a column meets. */
type Column = ReadonlyMap<number, number>

/** Few of a few demands, as strips and sheets have them. */
function anyColumn(random: Random, size: number): Column {
  const rows = Array.from({ length: 1 + Math.floor(6 * random()) }, () => Math.floor(size * random()))
  return new Map(rows.map((row) => [row, 1 + Math.floor(3 * random() * random())]))
}

/** The fewest columns, in fractions, that together meet every demand. */
function fewestByLibrary(demand: readonly number[], columns: readonly Column[]): number {
  const names = columns.map((_, at) => `x${at}`)
  const rows = demand.map((least, row) => {
    const terms = columns.flatMap((column, at) => (column.has(row) ? [`${column.get(row)} x${at}`] : []))
    return `${terms.join(' + ')} >= ${least}`
  })
  const text = `Minimize\n ${names.join(' + ')}\nSubject To\n ${rows.join('\n ')}\nEnd`
  const { Status, ObjectiveValue } = library.solve(text, { time_limit: 20 })
  expect(Status).toBe('Optimal')
  return ObjectiveValue
}

it('covers demands with as few columns as the library does, also where it goes on from its last basis', () => {
  for (let seed = 1; seed <= 30; seed++) {
    const random = randomFrom(seed)
    const size = 4 + Math.floor(60 * random())
    const demand = Array.from({ length: size }, () => 1 + Math.floor(4 * random() * random()))
    const columns: Column[] = demand.map((_, row) => new Map([[row, 1]]))
    const simplex = new Simplex(demand)
    for (let round = 0; round < 4; round++) {
      for (let some = 0; some < 40; some++) {
        const column = anyColumn(random, size)
        columns.push(column)
        simplex.add([...column.keys()], [...column.values()])
      }
      const row = Math.floor(size * random())
      demand[row] = Math.max(0, demand[row]! - 1)
      simplex.demandOf(row, demand[row]!)
      expect(simplex.solve()!.value, `seed ${seed}, round ${round}`).toBeCloseTo(fewestByLibrary(demand, columns), 5)
    }
  }
})
