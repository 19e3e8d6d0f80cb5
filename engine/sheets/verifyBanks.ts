import { ticks } from '../units/length'
import type { JobPart, SheetJob } from './job'
import type { Placement2D, SheetAnswer } from './layout'

/** What is wrong with the banks of an answer: each lies whole on one sheet, in its order, with one kerf between boards. */
export function wrongInBanks(job: SheetJob, { sheets }: SheetAnswer): string[] {
  const wrong: string[] = []
  const parts = new Map(job.parts.map((part) => [part.id, part]))
  for (const id of new Set(job.parts.flatMap(({ bank }) => (bank ? [bank.id] : [])))) {
    const named = sheets.flatMap(({ copies, placements }) => {
      const own = placements.filter(({ part }) => parts.get(part)?.bank?.id === id)
      return own.length > 0 ? [{ copies, own }] : []
    })
    if (named.length === 0) continue
    const [{ copies, own }] = named as [(typeof named)[0]]
    if (named.length > 1 || copies > 1) wrong.push(`bank ${id} comes from more than one sheet`)
    else wrong.push(...wrongInRow(id, own, job, parts))
  }
  return wrong
}

function wrongInRow(id: string, own: Placement2D[], job: SheetJob, parts: ReadonlyMap<string, JobPart>): string[] {
  const members = job.parts.filter(({ bank }) => bank?.id === id)
  const turned = own[0]!.rotated
  const runsInX = (members[0]!.bank!.along === 'length') !== turned
  const starts = ({ x, y }: Placement2D) => ticks(runsInX ? x : y)
  const beside = ({ x, y }: Placement2D) => ticks(runsInX ? y : x)
  const row = [...own].sort((a, b) => starts(a) - starts(b))
  const order = members.flatMap((part) => new Array<string>(part.quantity).fill(part.id))
  if (JSON.stringify(row.map(({ part }) => part)) !== JSON.stringify(order)) return [`bank ${id} is not in its order`]
  let at = starts(row[0]!)
  for (const board of row) {
    const isInRow = starts(board) === at && beside(board) === beside(row[0]!) && board.rotated === turned
    if (!isInRow) return [`${board.part} does not lie beside the board before it in bank ${id}`]
    const { bank, length, width } = parts.get(board.part)!
    at += ticks(bank!.along === 'length' ? length : width) + ticks(job.kerf)
  }
  return []
}
