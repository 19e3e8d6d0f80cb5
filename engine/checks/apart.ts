import { type CabinetId, isRunId, type PartId } from '../basics/id'
import type { About } from '../basics/problem'
import { lengthTogether } from '../between/banked'
import { type Apart, acrossOf, type Parted } from '../between/inSequence'
import type { Part } from '../parts/part'
import type { Project } from '../project/document'
import type { Edit } from '../project/edit'
import { isThere } from '../project/references'
import { sequenceOf } from '../project/sequences'
import type { Finding, Remedy } from './finding'
import { sayIn } from './say'

const MARKED = 'the sequences that boards were marked for'

/** A board that was marked to lie in sequence and is cut by itself, with the reason and what takes the mark back. */
export function apartFinding({ along, board, first, why }: Apart, { display, materials }: Project): Finding {
  const [own, other] = sayIn(display).apart(acrossOf(board, along), acrossOf(first, along))
  const across = along === 'length' ? 'wide' : 'long'
  const alone = `marked to be cut in sequence with ${first.mark}, and cut by itself, since`
  const words = {
    run: `marked to be cut in sequence, and its grain runs on with ${board.bank?.id} already`,
    material: `${alone} it is of ${materials[board.material]!.name}, and ${first.mark} of ${materials[first.material]!.name}`,
    size: `${alone} it is ${own} ${across}, and ${first.mark} ${other}`,
    late: `${alone} it is not cut at the time that ${first.mark} is`,
  }[why]
  const sized = why === 'size' ? { measure: own, limit: other } : {}
  return {
    ...{ weight: 'mind', about: aboutBoard(board), ...sized, source: MARKED },
    message: `${board.mark}: ${words}.`,
    remedy: {
      label: `Take ${board.mark} out of the sequence`,
      edit: { kind: 'putInSequence', parts: [board.id], sequence: null },
    },
  }
}

/** Boards in sequence over which the grain does not run on as marked, since no sheet has room for all of them. */
export function partedFinding({ along, boards, most }: Parted, { display, shop }: Project): Finding {
  const together = sayIn(display).length(lengthTogether(boards, along, shop.kerf))
  const lie = along === 'width' ? 'edge to edge' : 'end to end'
  const first = boards[0]!
  return {
    ...{ weight: 'know', about: aboutBoard(first), measure: together, source: MARKED },
    message: `${first.mark}: the ${boards.length} boards in sequence from it on take ${together} ${lie}, more than a sheet gives, so the grain runs on over ${most} of them at most.`,
  }
}

/** What cuts boards by themselves whose grain would run on, because they were marked or because their cabinet wishes it. */
export function cutApart(parts: readonly PartId[], project: Project): Remedy {
  const marked = parts.filter((part) => sequenceOf(project, part) !== undefined)
  const owners = parts.filter((part) => !marked.includes(part)).map((part) => part.split('/')[0] as CabinetId)
  const ids = [...new Set(owners)].filter((id) => isThere(project.cabinets, id))
  const edits: Edit[] = [
    ...(marked.length > 0 ? [{ kind: 'putInSequence', parts: marked, sequence: null } as const] : []),
    ...(ids.length > 0 ? [{ kind: 'letGrainRun', ids, way: 'none' } as const] : []),
  ]
  return { label: 'Cut these boards by themselves', edit: { kind: 'several', edits } }
}

function aboutBoard({ owner, id, material }: Part): About {
  if (isRunId(owner)) return { kind: 'material', material }
  return { kind: 'part', cabinet: owner as CabinetId, part: id }
}
