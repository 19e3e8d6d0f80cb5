import type { PartId } from '../basics/id'
import type { Board, BoardRole } from '../cabinets/board'
import type { CabinetBuild, Rules } from '../cabinets/build'
import { ROLE_NAMES } from '../cabinets/role'
import { cutSize } from './cutSize'
import { ROLE_MARKS, SEVERAL } from './marks'
import type { Part } from './part'

/** The boards of a cabinet as parts: named, marked and with the size to cut. */
export function partsOf(build: CabinetBuild, { method, materials }: Rules): Part[] {
  const counts = new Map<BoardRole, number>()
  for (const { role } of build.boards) counts.set(role, (counts.get(role) ?? 0) + 1)
  return build.boards.map((board): Part => {
    const cut = cutSize(board, method.banding)
    return {
      ...board,
      id: partId(build, board),
      cabinet: build.cabinet.id,
      mark: `${build.mark}-${ROLE_MARKS[board.role]}${counts.get(board.role)! > 1 ? board.number : ''}`,
      name: ROLE_NAMES[board.role],
      cutLength: cut.length,
      cutWidth: cut.width,
      isGrainBound: materials[board.material]?.hasGrain ?? true,
    }
  })
}

/** `k3/left-side`, `k3/fixed-shelf-2`. */
function partId({ cabinet }: CabinetBuild, { role, number }: Board): PartId {
  const place = ROLE_NAMES[role].replaceAll(' ', '-')
  return `${cabinet.id}/${place}${SEVERAL.has(role) ? `-${number}` : ''}` as PartId
}
