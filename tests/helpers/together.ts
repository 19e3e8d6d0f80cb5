import { buildCabinet } from '../../engine/cabinets/buildCabinet'
import { interferences } from '../../engine/solids/interference'
import { unseatedJoints } from '../../engine/solids/seating'
import { outside } from './envelope'
import type { Law } from './judge'

/** The most play that any groove of theirs is made with, but for solid panels, which have as much as they are wide. */
const PLAY = 2

/** No two boards are in one place. */
export const sharesNoRoom: Law = ({ boards }) =>
  interferences(boards).map(({ a, b, volume }) => `${a.role} ${a.number} in ${b.role} ${b.number}: ${volume} mm3`)

/** No joint stays partly empty. */
export const isSeated: Law = ({ cabinet, rules, boards }) => {
  const { method } = rules
  const hasSolid = method.panelWood.kind === 'solid' && method.frontBuild.kind === 'fivePart'
  const sheet = { ...rules, method: { ...method, panelWood: { kind: 'sheet' } as const } }
  const seated = hasSolid ? buildCabinet(cabinet, sheet).boards : boards
  return unseatedJoints(seated, PLAY).map(({ board, recess, empty }) => {
    return `${recess.kind} in ${board.role} ${board.number} has ${empty} mm3 empty`
  })
}

/** Nothing stands out of the cabinet's room but what its method lets out. */
export const staysInItsRoom: Law = ({ cabinet, rules, boards }) =>
  boards.flatMap((board) => outside(board, cabinet, rules))
