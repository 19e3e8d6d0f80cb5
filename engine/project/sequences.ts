import {
  type ById,
  type CabinetId,
  entriesOf,
  isRunId,
  type OwnerId,
  type PartId,
  type SequenceId,
  valuesOf,
} from '../basics/id'
import type { Project } from './document'
import { find, isThere } from './references'
import { BOARD_NAME, MOST_IN_SEQUENCE, type Sequence } from './sequence'
import { isSame } from './settled'

/**
 * Boards go to the end of a sequence, which begins with them where it is not there yet; with null they are cut by
 * themselves. A board is in one sequence at most.
 */
export function putInSequence(
  project: Project,
  parts: readonly PartId[],
  to: Omit<Sequence, 'boards'> | null,
): Project {
  const own = parts.filter((part, at) => isOwned(project, part) && parts.indexOf(part) === at)
  const before = to ? find(project.sequences ?? {}, to.id) : undefined
  const others = (before?.boards ?? []).filter((part) => !own.includes(part))
  const boards = [...others, ...own]
  const isSaid = to !== null && isSame(before?.boards, boards)
  if (own.length === 0 || boards.length > MOST_IN_SEQUENCE || isSaid) return project
  const rest = withoutBoards(project.sequences ?? {}, (part) => own.includes(part))
  return withSequences(project, to ? { ...rest, [to.id]: { ...(before ?? to), boards } } : rest)
}

/** Without what was said of boards of cabinets, and of runs that are named after them: their names may be given anew. */
export function withoutSequencesOf(project: Project, ids: readonly CabinetId[]): Project {
  if (!project.sequences) return project
  const gone = new Set<string>(ids)
  return withSequences(
    project,
    withoutBoards(project.sequences, (part) => gone.has(cabinetOf(part))),
  )
}

/** The sequence that a board is in. */
export function sequenceOf({ sequences }: Pick<Project, 'sequences'>, part: PartId): Sequence | undefined {
  return valuesOf(sequences ?? {}).find(({ boards }) => boards.includes(part))
}

/** The same sequences where nothing is taken out of them; where no more than one board is left of one it is none. */
function withoutBoards(sequences: Sequences, isOut: (part: PartId) => boolean): Sequences {
  if (!valuesOf(sequences).some(({ boards }) => boards.some(isOut))) return sequences
  const left = entriesOf(sequences).flatMap(([id, one]) => {
    const boards = one.boards.filter((part) => !isOut(part))
    if (boards.length === one.boards.length) return [[id, one] as const]
    return boards.length > 1 ? [[id, { ...one, boards }] as const] : []
  })
  return Object.fromEntries(left) as Sequences
}

type Sequences = ById<SequenceId, Sequence>

function withSequences(project: Project, sequences: Sequences): Project {
  const { sequences: before, ...rest } = project
  const isEmpty = Object.keys(sequences).length === 0
  if (sequences === before || (isEmpty && !before)) return project
  return isEmpty ? rest : { ...rest, sequences }
}

function isOwned({ cabinets }: Project, part: PartId): boolean {
  return BOARD_NAME.test(part) && isThere(cabinets, cabinetOf(part) as CabinetId)
}

/** The cabinet that a board stands in, or the first that its run goes over. */
function cabinetOf(part: PartId): string {
  const [owner = ''] = part.split('/')
  return isRunId(owner as OwnerId) ? owner.slice(owner.indexOf('-') + 1) : owner
}
