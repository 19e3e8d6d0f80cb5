import { fromTicks, ticks } from '../units/length'
import type { JobPart, SheetJob } from './job'

/** A bank and its boards, each part as often as there are boards of it, in the order in which they lie. */
export interface Bank {
  readonly id: string
  readonly along: 'length' | 'width'
  readonly boards: readonly JobPart[]
}

export function banksOf({ parts }: Pick<SheetJob, 'parts'>): Bank[] {
  const banks = new Map<string, { id: string; along: 'length' | 'width'; boards: JobPart[] }>()
  for (const part of parts) {
    if (!part.bank) continue
    const { id, along } = part.bank
    const bank = banks.get(id) ?? { id, along, boards: [] }
    banks.set(id, bank)
    for (let count = 0; count < part.quantity; count++) bank.boards.push(part)
  }
  return [...banks.values()].filter(({ boards }) => boards.length > 0)
}

/** The bank as one board, with the kerfs in it, mm. */
export function blockOf({ id, along, boards }: Bank, kerf: number): JobPart {
  const [first] = boards as [JobPart]
  const sum = boards.reduce((total, part) => total + ticks(part[along]), 0) + (boards.length - 1) * ticks(kerf)
  return { ...first, id: `bank ${id}`, quantity: 1, [along]: fromTicks(sum) }
}

/** What keeps boards from being a bank; null when nothing does. */
export function wrongBanks(job: SheetJob): string | null {
  for (const [at, part] of job.parts.entries()) {
    if (!part.bank) continue
    const { bank } = part
    const first = job.parts.find((other) => other.bank?.id === bank.id)!
    const across = bank.along === 'length' ? 'width' : 'length'
    const isAlike =
      first.bank!.along === bank.along &&
      first.material === part.material &&
      (first.rotate ?? false) === (part.rotate ?? false) &&
      first.from === part.from &&
      first.sheet === part.sheet &&
      ticks(first[across]) === ticks(part[across])
    if (!isAlike)
      return `parts[${at}].bank is "${bank.id}"; its boards must agree in along, material, rotate, from, sheet and ${across}`
  }
  return null
}
