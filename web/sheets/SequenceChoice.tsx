import {
  type Derived,
  differenceOf,
  freeId,
  MOST_IN_SEQUENCE,
  type Part,
  type PartId,
  type Sequence,
  type SequenceHead,
  type SequenceId,
  sequenceOf,
  valuesOf,
} from '../../engine/index'
import { useStore } from '../store/store'
import { Choice } from '../ui/Choice'

const ALONE = 'alone'
const APART = 'apart'
const NEW = { width: 'new width', length: 'new length' } as const
const LIE = { width: 'edge to edge', length: 'end to end' } as const

interface SequenceChoiceProps {
  readonly parts: readonly PartId[]
  readonly derived: Derived
}

/** Beside which other boards the chosen ones lie on their sheet, so that the grain runs on over them. */
export function SequenceChoice({ parts, derived }: SequenceChoiceProps) {
  const actions = useStore((state) => state.actions)
  const { project, partOf } = derived
  const boards = parts.flatMap((part) => partOf.get(part) ?? [])
  const [board] = boards
  const sequences = valuesOf(project.sequences ?? {})
  const own = parts.map((part) => sequenceOf(project, part))
  const isMixed = own.some((one) => one !== own[0])
  const current = own[0]
  // The fronts of a cabinet whose grain runs on have their place from there.
  if (!board || (!current && (!board.isGrainBound || board.bank))) return null
  const head = (choice: string): SequenceHead | null => {
    if (choice === ALONE || choice === APART) return null
    const along = (['width', 'length'] as const).find((way) => NEW[way] === choice)
    if (along) return { id: freeId<SequenceId>('g', project.sequences ?? {}), along }
    return project.sequences![choice as SequenceId]!
  }
  const options: [string, string][] = [
    [ALONE, 'cut by itself'],
    ...takenApart(current),
    ...newWays((boards.length > 1 || !current) && boards.length <= MOST_IN_SEQUENCE).map((way): [string, string] => [
      NEW[way],
      boards.length > 1 ? `these ${boards.length}, ${LIE[way]}` : `the first of more, ${LIE[way]}`,
    ]),
    ...sequences.flatMap((one): [string, string][] => {
      const words = one === current ? wordsOf(one, board, derived) : canFollow(boards, one, derived)
      return words === null ? [] : [[one.id, words]]
    }),
  ]
  return (
    <Choice
      label="Grain runs on"
      value={isMixed ? null : (current?.id ?? ALONE)}
      options={options}
      onChoice={(choice) => {
        if (choice === current?.id) return
        const boards = choice === APART ? current!.boards : parts
        actions.commit({ kind: 'putInSequence', parts: boards, sequence: head(choice) })
      }}
    />
  )
}

/** Of more than two, one alone does not take the others with it. */
function takenApart(sequence: Sequence | undefined): [string, string][] {
  if (!sequence || sequence.boards.length < 3) return []
  return [[APART, `all ${sequence.boards.length} cut by themselves`]]
}

/** A board of a sequence begins no other; several may. */
function newWays(mayBegin: boolean): readonly Sequence['along'][] {
  return mayBegin ? ['width', 'length'] : []
}

function boardsIn({ boards }: Sequence, { partOf }: Derived): Part[] {
  return boards.flatMap((name) => partOf.get(name) ?? [])
}

/** Those of a sequence that go with the boards which lie in it, or with the one that it begins with. */
function goingIn(boards: readonly Part[], { along }: Sequence, { project }: Derived): readonly Part[] {
  const first = boards.find(({ bank }) => bank) ?? boards[0]
  return boards.filter((part) => differenceOf({ ...part, bank: null }, first!, along, project.shop) === null)
}

/** `edge to edge after B3-LS`; null where one of the boards cannot lie there. */
function canFollow(boards: readonly Part[], sequence: Sequence, derived: Derived): string | null {
  const others = boardsIn(sequence, derived).filter((part) => !boards.includes(part))
  const before = goingIn(others, sequence, derived)
  const [first] = before
  if (!first) return null
  const isAlike = boards.every((part) => {
    const free = sequenceOf(derived.project, part.id) ? { ...part, bank: null } : part
    return differenceOf(free, first, sequence.along, derived.project.shop) === null
  })
  return isAlike ? `${LIE[sequence.along]} after ${before.at(-1)!.mark}` : null
}

/** `edge to edge, 2 of 4 from B3-LS on`; what is not so is said too. */
function wordsOf(sequence: Sequence, board: Part, derived: Derived): string {
  const boards = boardsIn(sequence, derived)
  const going = goingIn(boards, sequence, derived)
  const lie = LIE[sequence.along]
  if (!board.isGrainBound) return `${lie}, were there grain`
  if (boards.length < 2) return `${lie}, none follows yet`
  if (!going.includes(board)) return `${lie}, and cut by itself all the same`
  return `${lie}, ${going.indexOf(board) + 1} of ${going.length} from ${going[0]!.mark} on`
}
