import { ticks } from '../units/length'
import type { JobPart, JobStock, SheetJob } from './job'
import { fits, kindsOf, type PartKind, stockKind } from './lot'

export interface Size {
  readonly length: number
  readonly width: number
}

/** What keeps a part off every sheet that it may come from, however empty the sheets are. */
export type Hindrance =
  | { readonly kind: 'none' }
  /** There are sheets, and all of them are excluded. */
  | { readonly kind: 'aside' }
  /** The trim leaves nothing. */
  | { readonly kind: 'trimmed' }
  | {
      readonly kind: 'large'
      /** The sheet that comes closest, what it gives less its trim, and the largest part like this that it gives. */
      readonly stock: JobStock
      readonly usable: Size
      readonly best: Size
    }

/** Null where some sheet gives the part. */
export function hindranceOf(kind: PartKind, { stock, kerf }: SheetJob): Hindrance | null {
  const wished = stock.filter(({ id, material }) => isWished(kind, id) && material === kind.part.material)
  const there = wished.filter(({ excluded }) => !excluded)
  if (there.some((one) => fits(kind, stockKind(one, ticks(kerf))))) return null
  if (there.length === 0) return { kind: wished.length === 0 ? 'none' : 'aside' }
  return nearest(kind.part, there)
}

function isWished({ from }: PartKind, id: string): boolean {
  return from === undefined || from === id
}

function nearest(part: JobPart, stocks: readonly JobStock[]): Hindrance {
  const ways = stocks.flatMap((stock) => {
    const usable = {
      length: stock.length - 2 * (stock.trim?.length ?? 0),
      width: stock.width - 2 * (stock.trim?.width ?? 0),
    }
    if (usable.length <= 0 || usable.width <= 0) return []
    const lying = { stock, usable, best: within(part.length, part.width, usable) }
    const turned = within(part.width, part.length, usable)
    const turn = { stock, usable, best: { length: turned.width, width: turned.length } }
    return part.rotate ? [lying, turn] : [lying]
  })
  if (ways.length === 0) return { kind: 'trimmed' }
  const area = ({ best }: (typeof ways)[number]) => best.length * best.width
  return { kind: 'large', ...ways.reduce((a, b) => (area(b) > area(a) ? b : a)) }
}

function within(length: number, width: number, sheet: Size): Size {
  return { length: Math.min(length, sheet.length), width: Math.min(width, sheet.width) }
}

/** The kind that a part of the job belongs to: itself, or its bank as one piece. */
export function kindOfPart(job: SheetJob, part: string): PartKind | undefined {
  return kindsOf(job).find((kind) => (kind.block ?? [kind.part]).some(({ id }) => id === part))
}

/** The sheets of its material that are large enough for a part of the job, or for the bank that it is cut in. */
export function stockFor(job: SheetJob, part: string): JobStock[] {
  const kind = kindOfPart(job, part)
  if (!kind) return []
  const free = { ...kind, from: undefined }
  return job.stock.filter((one) => one.material === kind.part.material && fits(free, stockKind(one, ticks(job.kerf))))
}
