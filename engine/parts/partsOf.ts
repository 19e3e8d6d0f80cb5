import type { PartId } from '../basics/id'
import type { Board, BoardRole } from '../cabinets/board'
import type { CabinetBuild, Rules } from '../cabinets/build'
import { boardName, ROLE_NAMES } from '../cabinets/role'
import { cutSize } from './cutSize'
import { ROLE_MARKS, SEVERAL } from './marks'
import type { Part, PartBank } from './part'

/** The boards of a cabinet as parts: named, marked and with the size to cut. */
export function partsOf(build: CabinetBuild, { method, materials }: Rules): Part[] {
  const counts = new Map<BoardRole, number>()
  for (const { role } of build.boards) counts.set(role, (counts.get(role) ?? 0) + 1)
  return build.boards.map((board): Part => {
    const cut = cutSize(board, method.banding)
    const isGrainBound = materials[board.material]?.hasGrain ?? true
    const place = placeOf(board)
    const sheet = build.cabinet.sheets?.[place]
    return {
      ...board,
      id: `${build.cabinet.id}/${place}` as PartId,
      owner: build.cabinet.id,
      mark: `${build.mark}-${ROLE_MARKS[board.role]}${counts.get(board.role)! > 1 ? board.number : ''}`,
      name: boardName(board),
      cutLength: cut.length,
      cutWidth: cut.width,
      ...(cut.sawnIn > 0 ? { sawnIn: cut.sawnIn } : {}),
      isGrainBound,
      bank: isGrainBound ? bankOf(build, board) : null,
      from: build.cabinet.pins[place] ?? null,
      ...(sheet === undefined ? {} : { sheet }),
    }
  })
}

/** `left-side`, `fixed-shelf-2`; of several partitions the first is `partition`, as where there is one. */
function placeOf({ role, number }: Board): string {
  const place = ROLE_NAMES[role].replaceAll(' ', '-')
  return `${place}${SEVERAL.has(role) || number > 1 ? `-${number}` : ''}`
}

function bankOf({ mark }: CabinetBuild, { run }: Board): PartBank | null {
  if (!run) return null
  const { number, along, place } = run
  return { id: `${mark} fronts${number > 1 ? ` ${number}` : ''}`, along, place }
}
