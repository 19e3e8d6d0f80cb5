import type { CutRow } from '../cutlist/row'
import type { Project } from '../project/document'
import { wishedFrom } from '../project/materials'
import type { Finding } from './finding'
import { stockName } from './stockWords'

/** For each run of grain the board whose wish counts for all of it, as `jobParts` has it: the last that has one. */
function ledBy(rows: readonly CutRow[], hasWish: (row: CutRow) => boolean): Map<string, CutRow> {
  const led = new Map<string, CutRow>()
  for (const row of rows) {
    if (!row.bank || !hasWish(row)) continue
    const before = led.get(row.bank.id)
    if (!before || before.bank!.place < row.bank.place) led.set(row.bank.id, row)
  }
  return led
}

/** For boards that are led to another sheet by their run than they ask for by its number, the board that leads them. */
export function leadersOf(rows: readonly CutRow[]): ReadonlyMap<CutRow, CutRow> {
  const led = ledBy(rows, ({ sheet }) => sheet !== undefined)
  return new Map(
    rows.flatMap((row) => {
      const leader = row.bank && row.sheet !== undefined ? led.get(row.bank.id) : undefined
      return leader && leader.sheet !== row.sheet ? [[row, leader] as const] : []
    }),
  )
}

/** Boards that are cut from another kind of sheet than is chosen for them, since one of their run must come from it. */
export function strayWishes({
  project,
  rows,
}: {
  readonly project: Project
  readonly rows: readonly CutRow[]
}): Finding[] {
  const wishOf = ({ material, from }: CutRow) => wishedFrom(project.stock, material, from)
  const led = ledBy(rows, (row) => wishOf(row) !== null)
  return rows.flatMap((row): Finding[] => {
    const leader = row.bank && wishOf(row) ? led.get(row.bank.id) : undefined
    if (!leader || leader.from === row.from) return []
    const [wished, is] = [row, leader].map(({ from }) => stockName(project.stock[from!]!, project))
    return [
      {
        ...{ weight: 'mind', about: { kind: 'material', material: row.material } },
        message: `${row.mark} (${row.name}): to come from ${wished}, and cut from ${is}, which is chosen for ${leader.mark} of the same run of grain (${row.bank!.id}).`,
        ...{ measure: is!, limit: wished!, source: 'the sheets that were chosen for boards' },
        remedy: {
          label: 'Take these boards from the same sheet',
          edit: { kind: 'pin', parts: row.parts, stock: leader.from },
        },
      },
    ]
  })
}
