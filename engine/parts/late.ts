import type { BoardRole } from '../cabinets/board'
import { DRAWER_BOX, FIVE_PARTS, INSERT, SLAB_FRONTS } from '../cabinets/role'
import type { CutLate } from '../project/late'

const LATE_ROLES: { readonly [kind in keyof CutLate]: readonly BoardRole[] } = {
  fronts: [...SLAB_FRONTS, ...FIVE_PARTS],
  drawerBoxes: [...DRAWER_BOX, ...INSERT],
  fitted: [
    ...([
      'filler',
      'fillerReturn',
      'cornerFiller',
      'leftEnd',
      'rightEnd',
      'longKick',
      'countertop',
      'seatBoard',
      'splash',
    ] as const),
    ...(['lightRail', 'lightRailReturn', 'crown', 'crownReturn', 'valance'] as const),
  ],
}

const KINDS = ['fronts', 'drawerBoxes', 'fitted'] as const

/** Whether a board is cut when the carcasses stand and their openings are measured. */
export function isCutLate(role: BoardRole, late: CutLate): boolean {
  return KINDS.some((kind) => late[kind] && LATE_ROLES[kind].includes(role))
}
