import { type Mm, settle } from '../units/length'

/** What stands inside a cabinet. */
export interface Interior {
  readonly fixedShelves: number
  readonly adjustableShelves: number
  /**
   * Where its fixed shelves stand, from the bottom up: each from the upper face of the bottom to its underside. Null, or
   * nothing, for one that parts evenly what those beside it leave.
   */
  readonly fixedAt?: readonly (Mm | null)[]
  /** One upright; `at` is the share of the clear width to its left. Without effect where there are `bays`. */
  readonly partition: { readonly at: number } | null
  /** The rooms between its uprights from the left: a partition stands between each and the next. None where it is left out. */
  readonly bays?: readonly InteriorBay[]
  /** Drawer boxes behind doors, from the bottom up: how many, and how high each box is. None where it is left out. */
  readonly rollOuts?: RollOuts
  /** Uprights that stand close together, between trays. None where it is left out. */
  readonly dividers?: number
  /** A window in the back for pipes, in the middle of its width. None where it is left out. */
  readonly pipes?: PipeWindow
}

export interface InteriorBay {
  /** Its clear width, or a share of what the fixed ones and the partitions leave. */
  readonly size: { readonly kind: 'fixed'; readonly width: Mm } | { readonly kind: 'share'; readonly share: number }
  /** What stands in it; null for as much as the cabinet has. */
  readonly shelves: ColumnShelves | null
}

/** What stands between two uprights. */
export type ColumnShelves = Pick<Interior, 'fixedShelves' | 'adjustableShelves' | 'fixedAt' | 'rollOuts' | 'dividers'>

export interface RollOuts {
  readonly count: number
  readonly height: Mm
}

export interface PipeWindow {
  readonly width: Mm
  readonly height: Mm
  /** Its lower edge over the floor line of the cabinet. */
  readonly bottom: Mm
}

/** The bays that its partitions leave, however they are said; none where nothing parts it. */
export function baysOf({ bays, partition }: Interior): readonly InteriorBay[] {
  if (bays) return bays
  if (!partition) return []
  return [partition.at, 1 - partition.at].map((share) => ({ size: { kind: 'share', share }, shelves: null }))
}

/** The inside with so many partitions: a bay more shares the width with the others, and the last goes first. */
export function withPartitions(interior: Interior, count: number): Interior {
  const { bays: _, ...plain } = interior
  const rest = { ...plain, partition: null }
  if (count < 1) return rest
  const before = baysOf(interior)
  const shares = before.flatMap(({ size }) => (size.kind === 'share' ? [size.share] : []))
  const share = shares.length > 0 ? shares.reduce((sum, one) => sum + one, 0) / shares.length : 1
  const more: InteriorBay = { size: { kind: 'share', share }, shelves: null }
  const bays = Array.from({ length: count + 1 }, (__, at): InteriorBay => before[at] ?? more)
  return { ...rest, bays: bays.some(({ size }) => size.kind === 'share') ? bays : withSize(bays, count, null) }
}

/** The inside with a bay of a clear width, or, with null, with one that shares what is left. */
export function withBayWidth(interior: Interior, at: number, width: Mm | null): Interior {
  return { ...interior, partition: null, bays: withSize(baysOf(interior), at, width) }
}

function withSize(bays: readonly InteriorBay[], at: number, width: Mm | null): InteriorBay[] {
  const size: InteriorBay['size'] =
    width === null ? { kind: 'share', share: 1 } : { kind: 'fixed', width: settle(width) }
  return bays.map((bay, index) => (index === at ? { ...bay, size } : bay))
}

/** The inside with what stands in one of its bays; null for as much as the cabinet has. */
export function withBayShelves(interior: Interior, at: number, shelves: ColumnShelves | null): Interior {
  const bays = baysOf(interior).map((bay, index) => (index === at ? { ...bay, shelves } : bay))
  return { ...interior, partition: null, bays }
}

/** The shelves with so many fixed ones: the lower ones keep their heights. */
export function withFixedShelves<Shelves extends ColumnShelves>(shelves: Shelves, count: number): Shelves {
  const { fixedAt, ...rest } = shelves
  const kept = fixedAt?.slice(0, count) ?? []
  const isTyped = kept.some((height) => height !== null)
  return { ...rest, fixedShelves: count, ...(isTyped && { fixedAt: kept }) } as Shelves
}

/** The shelves with one of the fixed ones at a height, or, with null, evenly again. */
export function withFixedAt<Shelves extends ColumnShelves>(shelves: Shelves, at: number, height: Mm | null): Shelves {
  const all = Array.from({ length: shelves.fixedShelves }, (_, index) =>
    index === at ? height : (shelves.fixedAt?.[index] ?? null),
  )
  const { fixedAt: _, ...rest } = shelves
  return (all.every((one) => one === null) ? rest : { ...rest, fixedAt: all }) as Shelves
}
