import { invert } from './inverse'

/** Smaller than this is taken for nothing: of prices, of pivots, and of what is missing of a demand. */
const NO_GAIN = 1e-9
const NO_PIVOT = 1e-7
const NOT_MISSING = 1e-7
/** A column that is taken less often may owe that to how demands are told apart. */
const TAKEN = 1e-3
/**
 * Demands and costs are told apart by so much, so that no two columns come or leave as well as each other and the pivots
 * do not go in circles.
 */
const APART = 1e-6
/** So many pivots in one solution say that it goes nowhere; after so many the inverse is made anew. */
const MOST_PIVOTS = 2000
const PIVOTS_TRUSTED = 150

export interface Covered {
  /** So many columns it takes, in fractions. */
  readonly value: number
  /** What one more of each demand would cost, to a millionth. */
  readonly duals: Float64Array
}

/**
 * How often to take each column so that together they meet every demand and are as few as can be, in fractions: the
 * linear programme `min sum x, A x >= d, x >= 0`. Columns may be added and demands changed between solutions, and each
 * sets out from the basis of the one before: the revised simplex with an explicit inverse, primal while the demands are
 * met and dual where they are not. Source: Chvatal, Linear Programming (1983), chapters 7 and 10, from memory.
 */
export class Simplex {
  /** Numbers multiplied so far, to be counted as work. */
  steps = 0
  private readonly wanted: number[]
  /** The same, told apart. */
  private readonly demand: Float64Array
  /** The columns one after another: which demands each meets, and how much of each. */
  private readonly starts: number[] = [0]
  private readonly rows: number[] = []
  private readonly counts: number[] = []
  /** What stands in each place of the basis: a column, or the surplus of a demand as -1 - its row. */
  private readonly basis: Int32Array
  private readonly isIn: boolean[] = []
  private readonly isSurplusIn: Uint8Array
  private readonly inverse: Float64Array
  private readonly taken: Float64Array
  private readonly duals: Float64Array
  private readonly way: Float64Array
  /** Where a row of the inverse has numbers. */
  private readonly there: Int32Array
  private pivots = 0

  /** Begins with a column for every demand alone, of one each. */
  constructor(demand: readonly number[]) {
    const size = demand.length
    this.wanted = [...demand]
    this.demand = Float64Array.from(demand, toldApart)
    this.basis = Int32Array.from(demand, (_, row) => row)
    this.inverse = new Float64Array(size * size)
    this.taken = Float64Array.from(this.demand)
    this.duals = Float64Array.from(demand, (_, row) => costOf(row))
    this.way = new Float64Array(size)
    this.isSurplusIn = new Uint8Array(size)
    this.there = new Int32Array(size)
    for (let row = 0; row < size; row++) {
      this.add([row], [1])
      this.isIn[row] = true
      this.inverse[row * size + row] = 1
    }
  }

  /** The number of the new column. */
  add(rows: readonly number[], counts: readonly number[]): number {
    this.rows.push(...rows)
    this.counts.push(...counts)
    this.starts.push(this.rows.length)
    return this.isIn.push(false) - 1
  }

  demandOf(row: number, demand: number): void {
    const { inverse, taken, basis } = this
    const size = basis.length
    const more = toldApart(demand, row) - this.demand[row]!
    this.demand[row]! += more
    this.wanted[row] = demand
    for (let place = 0; place < size; place++) taken[place]! += inverse[place * size + row]! * more
  }

  /** Null where it comes to no end. */
  solve(): Covered | null {
    const until = this.pivots + MOST_PIVOTS
    while (this.meet() || this.gain()) if (this.pivots > until) return null
    return { value: this.value(), duals: this.duals }
  }

  /** What the columns of the basis come to where demands and costs are not told apart. */
  private value(): number {
    const { basis, inverse, wanted } = this
    const size = basis.length
    let value = 0
    for (let place = 0; place < size; place++) {
      if (basis[place]! < 0) continue
      for (let row = 0; row < size; row++) value += inverse[place * size + row]! * wanted[row]!
    }
    return value
  }

  /** How often each column is taken that is taken at all. */
  *columnsTaken(): Generator<{ readonly column: number; readonly times: number }> {
    for (let place = 0; place < this.basis.length; place++) {
      const column = this.basis[place]!
      const times = this.taken[place]!
      if (column >= 0 && times > TAKEN) yield { column, times }
    }
  }

  /** A step of the dual simplex, where a column is taken less than not at all; whether there was one. */
  private meet(): boolean {
    const { taken, basis, inverse, duals, isIn, isSurplusIn } = this
    const size = basis.length
    let place = -1
    let least = -NOT_MISSING
    for (let at = 0; at < size; at++) {
      if (taken[at]! >= least) continue
      least = taken[at]!
      place = at
    }
    if (place < 0) return false
    const row = place * size
    let entering = -Infinity
    let best = Infinity
    for (let column = 0; column < isIn.length; column++) {
      if (isIn[column]) continue
      const along = this.weigh(inverse, row, column)
      if (along >= -NO_PIVOT) continue
      const ratio = Math.max(0, costOf(column) - this.weigh(duals, 0, column)) / -along
      if (ratio < best) {
        best = ratio
        entering = column
      }
    }
    for (let other = 0; other < size; other++) {
      const along = -inverse[row + other]!
      if (along >= -NO_PIVOT || isSurplusIn[other]) continue
      const ratio = Math.max(0, duals[other]!) / -along
      if (ratio < best) {
        best = ratio
        entering = -1 - other
      }
    }
    if (entering === -Infinity) return false
    this.point(entering)
    this.enter(entering, place)
    return true
  }

  /** A step of the primal simplex, to the column that gains the most; whether there was one. */
  private gain(): boolean {
    const { taken, basis, duals, way, isIn, isSurplusIn } = this
    let entering = -Infinity
    let best = NO_GAIN
    for (let column = 0; column < isIn.length; column++) {
      if (isIn[column]) continue
      const gained = this.weigh(duals, 0, column) - costOf(column)
      if (gained > best) {
        best = gained
        entering = column
      }
    }
    for (let row = 0; row < basis.length; row++) {
      if (isSurplusIn[row] || -duals[row]! <= best) continue
      best = -duals[row]!
      entering = -1 - row
    }
    this.steps += this.rows.length
    if (entering === -Infinity) return false
    this.point(entering)
    let place = -1
    let least = Infinity
    for (let at = 0; at < basis.length; at++) {
      if (way[at]! <= NO_PIVOT) continue
      const ratio = Math.max(0, taken[at]!) / way[at]!
      if (ratio < least || (ratio === least && way[at]! > way[place]!)) {
        least = ratio
        place = at
      }
    }
    if (place < 0) return false
    this.enter(entering, place)
    return true
  }

  /** The sum of a column's numbers, each times what stands at its row from `from` on. */
  private weigh(numbers: Float64Array, from: number, column: number): number {
    const { starts, rows, counts } = this
    let sum = 0
    const end = starts[column + 1]!
    for (let at = starts[column]!; at < end; at++) sum += numbers[from + rows[at]!]! * counts[at]!
    return sum
  }

  /** Sets `way` to what a column takes from every place of the basis. */
  private point(entering: number): void {
    const { inverse, way, basis } = this
    const size = basis.length
    for (let place = 0; place < size; place++) {
      way[place] = entering < 0 ? -inverse[place * size - 1 - entering]! : this.weigh(inverse, place * size, entering)
    }
  }

  /** Lets the column that `way` points along take a place in the basis. */
  private enter(entering: number, place: number): void {
    const { inverse, way, basis, taken, duals, isIn, isSurplusIn, there } = this
    const size = basis.length
    const gained = entering < 0 ? -duals[-1 - entering]! : this.weigh(duals, 0, entering) - costOf(entering)
    const pivot = way[place]!
    const row = place * size
    const times = taken[place]! / pivot
    // Few numbers of a row are other than nothing.
    let some = 0
    for (let at = 0; at < size; at++) {
      if (inverse[row + at] === 0) continue
      inverse[row + at]! /= pivot
      duals[at]! -= gained * inverse[row + at]!
      there[some++] = at
    }
    for (let other = 0; other < size; other++) {
      const share = way[other]!
      if (other === place || share === 0) continue
      taken[other]! -= share * times
      const to = other * size
      for (let each = 0; each < some; each++) inverse[to + there[each]!]! -= share * inverse[row + there[each]!]!
      this.steps += some
    }
    taken[place] = times
    const leaving = basis[place]!
    if (leaving < 0) isSurplusIn[-1 - leaving] = 0
    else isIn[leaving] = false
    if (entering < 0) isSurplusIn[-1 - entering] = 1
    else isIn[entering] = true
    basis[place] = entering
    if (++this.pivots % PIVOTS_TRUSTED === 0) this.renew()
  }

  /** Makes the inverse anew from the basis, and what follows from it. */
  private renew(): void {
    const { basis, inverse, taken, duals, demand } = this
    const size = basis.length
    const matrix = new Float64Array(size * size)
    for (let place = 0; place < size; place++) {
      const column = basis[place]!
      if (column < 0) matrix[(-1 - column) * size + place] = -1
      else {
        const { starts, rows, counts } = this
        for (let at = starts[column]!; at < starts[column + 1]!; at++) matrix[rows[at]! * size + place] = counts[at]!
      }
    }
    invert(matrix, inverse, size)
    this.steps += size * size * size
    duals.fill(0)
    for (let place = 0; place < size; place++) {
      let sum = 0
      for (let at = 0; at < size; at++) {
        sum += inverse[place * size + at]! * demand[at]!
        if (basis[place]! >= 0) duals[at]! += costOf(basis[place]!) * inverse[place * size + at]!
      }
      taken[place] = sum
    }
  }
}

/** What is not wanted at all is wanted a little less than that, so that it costs nothing. */
function toldApart(demand: number, row: number): number {
  return demand > 0 ? demand + apart(row) : -apart(row)
}

function costOf(column: number): number {
  return 1 + apart(column)
}

function apart(number: number): number {
  return APART * (0.5 + ((number * 0.6180339887) % 1))
}
