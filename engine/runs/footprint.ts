import type { Rect } from '../geometry/rect'
import type { Beside, Cabinet, Project, Side } from '../project/document'
import { find } from '../project/references'
import { type Mm, settle } from '../units/length'
import { faceOf } from './lane'

type Boards = Pick<Project, 'materials'>

/** A filler takes its width of the wall; a finished end as much as its board is thick. */
export function widthBeside(beside: Beside, { materials }: Boards): Mm {
  if (beside.kind === 'none') return 0
  return beside.kind === 'filler' ? beside.width : (find(materials, beside.material)?.thickness ?? 0)
}

/** What stands beside a cabinet at one side, along the wall. */
export function roomBeside({ beside }: Pick<Cabinet, 'beside'>, side: Side, boards: Boards): Mm {
  return widthBeside(beside[side], boards)
}

/** What no other cabinet can stand in: the cabinet as it is seen, with what stands beside it. */
export function footprintOf(cabinet: Cabinet, boards: Boards): Rect {
  const face = faceOf(cabinet)
  const left = roomBeside(cabinet, 'left', boards)
  const right = roomBeside(cabinet, 'right', boards)
  if (left === 0 && right === 0) return face
  return { ...face, left: settle(face.left - left), width: settle(left + face.width + right) }
}
