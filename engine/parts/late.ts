import type { BoardRole } from '../cabinets/board'
import type { CutLate } from '../project/late'

const LATE_ROLES: { readonly [kind in keyof CutLate]: readonly BoardRole[] } = {
  fronts: [
    ...(['door', 'flap', 'falseFront', 'blindPanel', 'drawerFront'] as const),
    ...(['doorStile', 'doorRail', 'doorPanel', 'drawerStile', 'drawerRail', 'drawerPanel'] as const),
  ],
  drawerBoxes: ['drawerSide', 'drawerBoxFront', 'drawerBoxBack', 'drawerBottom'],
  fitted: [
    ...(['filler', 'fillerReturn', 'cornerFiller', 'leftEnd', 'rightEnd', 'longKick', 'countertop', 'splash'] as const),
    ...(['lightRail', 'lightRailReturn', 'crown', 'crownReturn', 'valance'] as const),
  ],
}

const KINDS = ['fronts', 'drawerBoxes', 'fitted'] as const

/** Whether a board is cut when the carcasses stand and their openings are measured. */
export function isCutLate(role: BoardRole, late: CutLate): boolean {
  return KINDS.some((kind) => late[kind] && LATE_ROLES[kind].includes(role))
}
