import { describe, expect, it } from 'vitest'
import { type Random, randomFrom } from '../../../engine/basics/random'
import { Simplex } from '../../../engine/sheets/simplex'

/** A column: which demands it meets, and how much of each. */
type Column = readonly (readonly [row: number, count: number])[]

/** A simplex, and beside it what it was told. */
class Desk {
  readonly simplex: Simplex
  readonly columns: Column[]
  constructor(readonly demand: number[]) {
    this.simplex = new Simplex(demand)
    this.columns = demand.map((_, row) => [[row, 1]])
  }

  add(column: Column): void {
    this.columns.push(column)
    const [rows, counts] = [column.map(([row]) => row), column.map(([, count]) => count)]
    expect(this.simplex.add(rows, counts)).toBe(this.columns.length - 1)
  }

  change(row: number, demand: number): void {
    this.demand[row] = demand
    this.simplex.demandOf(row, demand)
  }

  /** What meets the demands at a sum that prices forbid to be less is as little as can be. */
  expectLeast(): number {
    const { value, duals } = this.simplex.solve()!
    for (const price of duals) expect(price).toBeGreaterThan(-1e-6)
    for (const column of this.columns) {
      expect(column.reduce((sum, [row, count]) => sum + count * duals[row]!, 0)).toBeLessThan(1 + 1e-5)
    }
    expect(this.demand.reduce((sum, demand, row) => sum + demand * duals[row]!, 0)).toBeCloseTo(value, 3)
    const met = this.demand.map(() => 0)
    let taken = 0
    for (const { column, times } of this.simplex.columnsTaken()) {
      taken += times
      for (const [row, count] of this.columns[column]!) met[row]! += count * times
    }
    for (const [row, demand] of this.demand.entries()) expect(met[row]).toBeGreaterThan(demand - 0.01)
    expect(Math.abs(taken - value)).toBeLessThan(0.01)
    return value
  }
}

function anyColumn(random: Random, size: number): Column {
  const rows = new Set(Array.from({ length: 1 + Math.floor(6 * random()) }, () => Math.floor(size * random())))
  return [...rows].map((row) => [row, 1 + Math.floor(3 * random() * random())])
}

describe('covering demands', () => {
  it('takes each demand alone where there is nothing better, and halves where three pairs cover three', () => {
    const desk = new Desk([1, 1, 1])
    expect(desk.expectLeast()).toBeCloseTo(3, 9)
    for (const [a, b] of [
      [0, 1],
      [1, 2],
      [2, 0],
    ] as const) {
      desk.add([
        [a, 1],
        [b, 1],
      ])
    }
    expect(desk.expectLeast()).toBeCloseTo(3 / 2, 9)
    desk.change(1, 0)
    expect(desk.expectLeast()).toBeCloseTo(1, 9)
  })

  it('takes the least there is, whatever columns come and demands go', () => {
    for (let seed = 1; seed <= 40; seed++) {
      const random = randomFrom(seed)
      const size = 4 + Math.floor(50 * random())
      const desk = new Desk(Array.from({ length: size }, () => 1 + Math.floor(4 * random() * random())))
      for (let round = 0; round < 6; round++) {
        for (let some = 0; some < 20; some++) desk.add(anyColumn(random, size))
        const row = Math.floor(size * random())
        desk.change(row, Math.max(0, desk.demand[row]! - 1))
        desk.expectLeast()
      }
    }
  })
})
