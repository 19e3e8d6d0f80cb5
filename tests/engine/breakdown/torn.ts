import type { PartId } from '../../../engine/basics/id'
import { type BreakdownInput, worksOf } from '../../../engine/breakdown/steps'
import type { Left, Work } from '../../../engine/breakdown/work'
import type { CutRow } from '../../../engine/cutlist/row'
import { settle } from '../../../engine/units/length'

export function worksIn(input: BreakdownInput): Work[] {
  return [...worksOf(input).values()].flat()
}

/** Where every part came off the saw, in the order of the works; what the last cut leaves is one too. */
export function freed(input: BreakdownInput): ReadonlyMap<PartId, Left> {
  const left = worksIn(input).flatMap(({ leaves }) => leaves.filter(({ part }) => part !== null))
  return new Map(left.map((piece) => [piece.part!, piece]))
}

/** Boards of one bank that do not lie in its order, a kerf apart, where they were cut out. */
export function tornApart(input: BreakdownInput): string[] {
  const where = freed(input)
  const banks = new Map<string, CutRow[]>()
  for (const row of input.cutList.rows) if (row.bank) banks.set(row.bank.id, [...(banks.get(row.bank.id) ?? []), row])
  return [...banks].flatMap(([id, rows]) => {
    const pieces = rows.sort((a, b) => a.bank!.place - b.bank!.place).map(({ parts }) => where.get(parts[0]!)!)
    const isBeside = (along: 'length' | 'width', axis: 'x' | 'y') =>
      pieces.slice(1).every((piece, at) => {
        const before = pieces[at]!
        return settle(piece[axis] - before[axis] - before[along] - input.job.kerf) === 0
      })
    const isInOrder = isBeside('length', 'x') || isBeside('width', 'y')
    return isInOrder ? [] : [`${id}: ${pieces.map(({ name, x, y }) => `${name} at ${x}, ${y}`).join('; ')}`]
  })
}
