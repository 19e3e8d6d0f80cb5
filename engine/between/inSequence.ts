import { valuesOf } from '../basics/id'
import { isCutLate } from '../parts/late'
import type { Part, PartBank } from '../parts/part'
import type { Project } from '../project/document'
import { isRoomFor, type WithParts, withBanks } from './banked'

/** A board that was marked to lie in sequence and cannot, since it differs from the first of those that do. */
export interface Apart {
  readonly along: PartBank['along']
  readonly board: Part
  readonly first: Part
  readonly why: 'run' | 'material' | 'size' | 'late'
}

/** Boards in sequence that no one sheet has room for, and over how many of them the grain runs on at most. */
export interface Parted {
  readonly along: PartBank['along']
  readonly boards: readonly Part[]
  readonly most: number
}

interface Sequenced<Cabinet, Run> {
  readonly cabinets: readonly Cabinet[]
  readonly runs: readonly Run[]
  readonly apart: readonly Apart[]
  readonly parted: readonly Parted[]
}

/**
 * Puts the boards that the maker marked into banks, in the marked order: those of one material with grain, one size across
 * and one time to be cut, as many to a sheet as it has room for. What nothing is different for is the same object.
 */
export function inSequence<Cabinet extends WithParts, Run extends WithParts>(
  cabinets: readonly Cabinet[],
  runs: readonly Run[],
  project: Project,
): Sequenced<Cabinet, Run> {
  const { sequences, shop } = project
  const marked = valuesOf(sequences ?? {})
  if (marked.length === 0) return { cabinets, runs, apart: [], parted: [] }
  const partOf = new Map([...cabinets, ...runs].flatMap(({ parts }) => parts.map((part) => [part.id, part] as const)))
  const banks = new Map<Part, PartBank>()
  const apart: Apart[] = []
  const parted: Parted[] = []
  for (const { along, boards } of marked) {
    const there = boards.flatMap((name) => partOf.get(name) ?? []).filter(({ isGrainBound }) => isGrainBound)
    const first = likeMost(there, along, shop)
    const alike: Part[] = []
    for (const board of there) {
      const why = differenceOf(board, first, along, shop)
      if (why === null) alike.push(board)
      else apart.push({ along, board, first, why })
    }
    const shares = sharesOf(alike, along, project)
    const most = Math.max(0, ...shares.map(({ length }) => length))
    if (shares.length > 1) parted.push({ along, boards: alike, most })
    for (const share of shares.filter(({ length }) => length > 1)) {
      const name = `${share[0]!.mark} to ${share.at(-1)!.mark}`
      for (const [at, board] of share.entries()) banks.set(board, { id: name, along, place: at + 1 })
    }
  }
  const given = <T extends WithParts>(owners: readonly T[]) => owners.map((one) => withBanks(one, banks))
  return { cabinets: given(cabinets), runs: given(runs), apart, parted }
}

/** The first of those that most of the others may lie beside. */
function likeMost(boards: readonly Part[], along: PartBank['along'], shop: Project['shop']): Part {
  const alike = (board: Part) => boards.filter((other) => differenceOf(other, board, along, shop) === null).length
  const counts = boards.map((board) => (board.bank ? 0 : alike(board)))
  return boards[counts.indexOf(Math.max(...counts))]!
}

/** As many as one sheet has room for, in their order, then the next ones. */
function sharesOf(boards: readonly Part[], along: PartBank['along'], project: Project): Part[][] {
  const shares: Part[][] = []
  for (const board of boards) {
    const last = shares.at(-1)
    if (last && isRoomFor([...last, board], along, project)) last.push(board)
    else shares.push([board])
  }
  return shares
}

/** What keeps a board from lying in sequence with the first; null when nothing does. */
export function differenceOf(
  board: Part,
  first: Part,
  along: PartBank['along'],
  { late }: Project['shop'],
): Apart['why'] | null {
  if (board.bank) return 'run'
  if (board.material !== first.material) return 'material'
  if (acrossOf(board, along) !== acrossOf(first, along)) return 'size'
  return isCutLate(board.role, late) === isCutLate(first.role, late) ? null : 'late'
}

/** The size that boards of a sequence have in common. */
export function acrossOf({ cutLength, cutWidth }: Part, along: PartBank['along']): number {
  return along === 'length' ? cutWidth : cutLength
}
