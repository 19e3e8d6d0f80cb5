import type { JobPart, JobStock, SheetJob } from './job'
import { fits, kindsOf, type PartKind, stockKind } from './lot'

export interface Size {
  readonly length: number
  readonly width: number
}

/** Why a sheet that would give a part cannot be cut: it is set aside, none of it is on hand, or kept sheets take it all. */
export type Lack = 'aside' | 'gone' | 'kept'

/** A sheet that would give the part, and why it does not. */
export interface Lacking {
  readonly why: Lack
  readonly stock: JobStock
}

/** What keeps a part off every sheet that it may come from, however empty the sheets are. */
export type Hindrance =
  | { readonly kind: 'none' }
  /** No sheet can be cut; all of them lack for the same reason, or the part is told of one that would give it. */
  | ({ readonly kind: 'lacking'; readonly isAll: boolean } & Lacking)
  /** The trim leaves nothing. */
  | { readonly kind: 'trimmed' }
  | {
      readonly kind: 'large'
      /** The sheet that comes closest, what it gives less its trim, and the largest part like this that it gives. */
      readonly stock: JobStock
      readonly usable: Size
      readonly best: Size
      /** Another sheet would give it. */
      readonly lacking: Lacking | null
    }

/** What can be mended most easily is told first. */
const LACKS: readonly Lack[] = ['kept', 'gone', 'aside']

/** Null where some sheet that is there gives the part. */
export function hindranceOf(kind: PartKind, job: SheetJob): Hindrance | null {
  const wished = job.stock
    .filter(({ id, material }) => isWished(kind, id) && material === kind.part.material)
    .map((stock) => ({ stock, why: lackOf(stock, job) }))
  if (wished.length === 0) return { kind: 'none' }
  const fitting = wished.filter(({ stock }) => fits(kind, stockKind(stock, job)))
  if (fitting.some(({ why }) => why === null)) return null
  const why = LACKS.find((lack) => fitting.some((one) => one.why === lack))
  const lacking = why ? { why, stock: fitting.find((one) => one.why === why)!.stock } : null
  const there = wished.filter((one) => one.why === null)
  if (there.length === 0 && lacking) {
    return { kind: 'lacking', ...lacking, isAll: wished.every((one) => one.why === lacking.why) }
  }
  // Where none is there and none is large enough, it is of no use to have one there.
  const near = nearest(
    kind.part,
    (there.length > 0 ? there : wished).map(({ stock }) => stock),
  )
  return near
    ? { kind: 'large', ...near, lacking }
    : lacking
      ? { kind: 'lacking', ...lacking, isAll: false }
      : { kind: 'trimmed' }
}

/** Null where there are sheets of it to be cut. */
function lackOf({ id, quantity = Infinity, excluded }: JobStock, { locked = [] }: SheetJob): Lack | null {
  if (excluded) return 'aside'
  if (quantity === 0) return 'gone'
  const kept = locked.reduce((sum, { stock, copies }) => sum + (stock === id ? copies : 0), 0)
  return kept >= quantity ? 'kept' : null
}

function isWished({ from }: PartKind, id: string): boolean {
  return from === undefined || from === id
}

interface Near {
  readonly stock: JobStock
  readonly usable: Size
  readonly best: Size
}

/** Null where the trim leaves nothing of them. */
function nearest(part: JobPart, stocks: readonly JobStock[]): Near | null {
  const ways = stocks.flatMap((stock): Near[] => {
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
  if (ways.length === 0) return null
  const area = ({ best }: Near) => best.length * best.width
  return ways.reduce((a, b) => (area(b) > area(a) ? b : a))
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
  return job.stock.filter((one) => one.material === kind.part.material && fits(free, stockKind(one, job)))
}
