import type { MaterialId, PartId, RowKey } from '../basics/id'
import { remember } from '../basics/remember'
import type { BoardRole } from '../cabinets/board'
import { isMitre } from '../cabinets/operation'
import { ROLE_NAMES } from '../cabinets/role'
import { isCutLate } from '../parts/late'
import type { Part } from '../parts/part'
import { type CutLate, NOTHING_LATE } from '../project/late'
import { type Mm, settle } from '../units/length'
import type { CutRow } from './row'

/** The equal boards of one cabinet. */
export interface Group {
  readonly key: RowKey
  readonly names: readonly string[]
  readonly material: MaterialId
  readonly length: Mm
  readonly width: Mm
  readonly thickness: Mm
  readonly isGrainBound: boolean
  readonly bank: CutRow['bank']
  readonly from: CutRow['from']
  readonly sheet?: number
  readonly bandedEdges: CutRow['bandedEdges']
  readonly outline: CutRow['outline']
  readonly isMitred?: CutRow['isMitred']
  readonly insideBand: Mm
  readonly parts: readonly PartId[]
  /** Whether they are cut when the carcasses stand. */
  readonly isLate: boolean
  /** Those of them that are made to a measured opening. */
  readonly measured: readonly PartId[]
  /** Along the banded edges of all of them. */
  readonly banding: Mm
}

/** Worked out once as long as the cabinet's parts stay the same, and the choice of what is cut late. */
export function groupsOf(parts: readonly Part[], late: CutLate = NOTHING_LATE): readonly Group[] {
  const { fronts, drawerBoxes, fitted } = late
  const choice = `${fronts} ${drawerBoxes} ${fitted}`
  const known = grouped.get(choice) ?? remember((all: readonly Part[]) => grouping(all, late))
  grouped.set(choice, known)
  return known(parts)
}

const grouped = new Map<string, (parts: readonly Part[]) => readonly Group[]>()

function grouping(parts: readonly Part[], late: CutLate): readonly Group[] {
  const groups = new Map<RowKey, Group>()
  for (const part of parts) {
    const bandedEdges = bandedEdgesOf(part)
    const isLate = isCutLate(part.role, late)
    const plain = isLate ? lateKey(rowKey(part, bandedEdges)) : rowKey(part, bandedEdges)
    const key = part.sheet === undefined ? plain : sheetKey(plain, part.sheet)
    const before = groups.get(key)
    groups.set(key, before ? withPart(before, part) : { ...groupOf(part, key, bandedEdges), isLate })
  }
  return [...groups.values()]
}

/** Equal boards that are cut at different times are on rows of their own. */
function lateKey(key: RowKey): RowKey {
  return `${key}${LATE}` as RowKey
}

const LATE = ' late'

/** Equal boards that must come from different sheets are on rows of their own. */
export function sheetKey(key: RowKey, sheet: number): RowKey {
  return `${key} sheet ${sheet}` as RowKey
}

/** The row of equal boards that may come from any sheet. */
export function anySheetKey(key: RowKey): RowKey {
  return key.replace(/ sheet \d+$/, '') as RowKey
}

/** The row of equal boards, from any sheet, that are cut at the other time: late, or with all others. */
export function otherTimeKey(key: RowKey): RowKey {
  return key.endsWith(LATE) ? (key.slice(0, -LATE.length) as RowKey) : lateKey(key)
}

/**
 * What makes boards equal to the saw. It names no cabinet and no mark, so it stays while those change; but every board of
 * a bank has its own place and row.
 */
export function rowKey(part: Part, { long, ends, thickness }: CutRow['bandedEdges']): RowKey {
  const size = `${part.cutLength}x${part.cutWidth}x${part.thickness}`
  const grain = part.isGrainBound ? ' grain' : ''
  const bank = part.bank ? ` ${part.bank.id} ${part.bank.place}` : ''
  const from = part.from ? ` from ${part.from}` : ''
  const outline = part.outline ? ` ${outlineKey(part)}` : ''
  const mitred = isMitred(part) ? ' mitred' : ''
  return `${part.material} ${size} ${long}+${ends}x${thickness}${grain}${bank}${from}${outline}${mitred}` as RowKey
}

/** Whether an end is cut with the blade tilted, once the board is as long as its long points. */
function isMitred({ operations }: Part): boolean {
  return operations.some((one) => one.kind === 'bevel' && isMitre(one))
}

/** What is sawn out of boards of one size must be alike too: `L 308x308`, at whichever corner, with its band. */
function outlineKey({ outline, operations, insideBanding }: Part): string {
  const [away] = operations
  const size = away?.kind === 'notch' || away?.kind === 'clip' ? `${away.length}x${away.width}` : ''
  return `${outline} ${size} ${insideBanding?.thickness ?? 0}`
}

function bandedEdgesOf({ banding: { low, high, start, end } }: Part): CutRow['bandedEdges'] {
  return {
    long: Number(low > 0) + Number(high > 0),
    ends: Number(start > 0) + Number(end > 0),
    thickness: Math.max(low, high, start, end),
  }
}

function groupOf(part: Part, key: RowKey, bandedEdges: CutRow['bandedEdges']): Group {
  return {
    key,
    names: [sawName(part.role)],
    material: part.material,
    length: part.cutLength,
    width: part.cutWidth,
    thickness: part.thickness,
    isGrainBound: part.isGrainBound,
    bank: part.bank,
    from: part.from,
    ...(part.sheet === undefined ? {} : { sheet: part.sheet }),
    bandedEdges,
    outline: part.outline ?? null,
    ...(isMitred(part) ? { isMitred: true } : {}),
    insideBand: part.insideBanding?.thickness ?? 0,
    isLate: false,
    parts: [part.id],
    measured: part.isMeasured ? [part.id] : [],
    banding: bandLength(part),
  }
}

function withPart(group: Group, part: Part): Group {
  const name = sawName(part.role)
  return {
    ...group,
    names: group.names.includes(name) ? group.names : [...group.names, name],
    parts: [...group.parts, part.id],
    measured: part.isMeasured ? [...group.measured, part.id] : group.measured,
    banding: settle(group.banding + bandLength(part)),
  }
}

/** To the saw a left side is a side, of a carcass and of a drawer box. */
function sawName(role: BoardRole): string {
  return role === 'leftSide' || role === 'rightSide' ? 'side' : ROLE_NAMES[role]
}

function bandLength({ banding: { low, high, start, end }, length, width, insideBanding }: Part): Mm {
  const inside = insideBanding?.length ?? 0
  return settle(inside + (Number(low > 0) + Number(high > 0)) * length + (Number(start > 0) + Number(end > 0)) * width)
}
