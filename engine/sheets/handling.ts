import { remember } from '../basics/remember'
import { type Board, depthUsed, type Handling, listParts, RIP, type Twig } from './cutTree'
import { type Lot, partsIn } from './lot'
import { crowdingOf, type HandlingWeights, weightsFor } from './settings'
import type { Fuss } from './spot'

/** What these costs count beside the loss of a rest when a place is looked for; it changes from turn to turn. */
const MINDED = 0.03
const MOODS = 4

/** The numbers of sizes: one list for a lot, since boards keep the numbers that they were counted with. */
const numbersOf = remember((_: Lot) => new Map<number, number>())

/** Counts over all boards of a lot what it takes to cut them, and tells a search what is in use already. */
export class HandlingCount implements Fuss {
  private readonly numbers: Map<number, number>
  private readonly widthSeen: number[] = []
  private readonly lengthSeen: number[] = []
  private readonly trimSeen: number[] = []
  private readonly kindLength: number[]
  private readonly kindWidth: number[]
  private readonly isLate: readonly boolean[]
  private readonly parts: number
  private readonly weights: HandlingWeights
  private round = 0
  private length = 0
  private width = 0

  constructor(lot: Lot) {
    const { kinds } = lot
    this.numbers = numbersOf(lot)
    this.parts = partsIn(lot)
    this.weights = weightsFor(this.parts)
    this.kindLength = kinds.map(({ length }) => this.numberOf(length))
    this.kindWidth = kinds.map(({ width }) => this.numberOf(width))
    this.isLate = kinds.map(({ part, block }) => (block ? block[0]! : part).late === true)
  }

  /** The cost of all cuts and settings of these boards. */
  of(boards: readonly Board[]): number {
    const { widthSeen, lengthSeen, trimSeen, weights } = this
    const round = ++this.round
    const patterns = new Set<number>()
    let [cost, allTrimmed] = [0, 0]
    for (const board of boards) {
      board.handling ??= this.handlingOf(board)
      const { handling } = board
      const { widths, setups, lengths, trims, trimmed, mixed, pattern } = handling
      allTrimmed += trimmed
      cost += weights.mixed * mixed
      cost += weights.rips * widths.length + weights.setups * setups + weights.trimmed * trimmed
      cost += weights.ripWidths * fresh(widths, widthSeen, round)
      cost += weights.crosscutLengths * fresh(lengths, lengthSeen, round)
      cost += weights.trimSizes * fresh(trims, trimSeen, round)
      patterns.add(pattern)
    }
    return cost + crowdingOf(weights, allTrimmed, this.parts) + weights.patterns * patterns.size
  }

  ask(kind: number, turned: boolean): void {
    this.length = turned ? this.kindWidth[kind]! : this.kindLength[kind]!
    this.width = turned ? this.kindLength[kind]! : this.kindWidth[kind]!
  }

  cut(level: number, isRip: boolean): number {
    return (this.round % MOODS) * MINDED * this.costOf(isRip ? this.width : this.length, level, isRip)
  }

  /** What it costs to cut a piece of such a size out at a level, one way or the other, beside what is in use already. */
  costOfCut(size: number, level: number, isRip: boolean): number {
    return this.costOf(this.numberOf(size), level, isRip)
  }

  private costOf(size: number, level: number, isRip: boolean): number {
    const { weights } = this
    if (level > 2) return weights.trimmed + (this.trimSeen[size] === this.round ? 0 : weights.trimSizes)
    if (isRip) return weights.rips + (this.widthSeen[size] === this.round ? 0 : weights.ripWidths)
    return this.lengthSeen[size] === this.round ? 0 : weights.crosscutLengths
  }

  private handlingOf({ root }: Board): Handling {
    const widths: number[] = []
    const lengths: number[] = []
    const trims: number[] = []
    let trimmed = 0
    const list = (twig: Twig, level: number) => {
      for (const piece of twig.pieces) {
        if (level > 2) {
          trims.push(this.numberOf(twig.way === RIP ? piece.width : piece.length))
          trimmed += piece.kind >= 0 ? 1 : 0
        } else if (twig.way === RIP) widths.push(this.numberOf(piece.width))
        else lengths.push(this.numberOf(piece.length))
        if (piece.kind < 0) list(piece, level + 1)
      }
    }
    list(root, 1)
    const mixed = this.mixedIn(root)
    return { widths, setups: new Set(widths).size, lengths, trims, trimmed, mixed, pattern: patternOf(root) }
  }

  private mixedIn(root: Twig): number {
    if (!this.isLate.includes(true)) return 0
    return [root, ...root.pieces].reduce((sum, twig) => {
      const parts: number[] = []
      listParts(twig, parts)
      const late = parts.filter((kind) => this.isLate[kind]).length
      return sum + Math.min(late, parts.length - late)
    }, 0)
  }

  private numberOf(size: number): number {
    const known = this.numbers.get(size)
    if (known !== undefined) return known
    this.numbers.set(size, this.numbers.size)
    return this.numbers.size - 1
  }
}

/** How many of these were not seen in this round; they are now. */
function fresh(numbers: readonly number[], seen: number[], round: number): number {
  let count = 0
  for (const number of numbers) {
    if (seen[number] === round) continue
    seen[number] = round
    count++
  }
  return count
}

/** A number that is the same for pieces that are cut alike, in whatever order. */
export function patternOf(twig: Twig): number {
  if (twig.kind >= 0) return Math.imul(twig.kind + 1, 0x9e3779b1) >>> 0
  let sum = twig.way + 1
  for (const piece of twig.pieces) sum = (sum + Math.imul(patternOf(piece) ^ 0x5bd1e995, 0x85ebca6b)) >>> 0
  return sum
}

/** The largest share of a sheet that is left in one piece from end to end. */
export function mostLeft(boards: readonly Board[]): number {
  let most = 0
  for (const board of boards) {
    const { root, stock } = board
    const whole = root.way === RIP ? stock.width : stock.length
    const left = (whole - depthUsed(board)) / whole
    if (left > most) most = left
  }
  return most
}

/** How many offcuts are in use. One that serves spares a new sheet a piece, which no setting is worth. */
export function offcutsOn(boards: readonly Board[]): number {
  return boards.filter(({ stock, used }) => stock.offcut && used > 0).length
}
