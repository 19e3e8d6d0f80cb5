import type { Box } from '../geometry/box'
import type { Cabinet, Interior } from '../project/document'
import { markOf } from '../project/mark'
import type { ApplianceSpace } from '../project/space'
import { settle } from '../units/length'
import { forward, WAYS } from './apart'
import { besideOf } from './beside'
import { areFrontsInset, type CabinetBuild, type Rules } from './build'
import { type Carcass, carcassOf, frontsRear, kickRear } from './carcass'
import { endNotch } from './finishedEnd'
import { joined } from './joinery'
import { type Piece, room, UNBANDED } from './piece'
import { type Report, reportOn } from './report'
import { canBeCut } from './sound'

const EMPTY: Interior = { fixedShelves: 0, adjustableShelves: 0, partition: null }

/**
 * A space for an appliance: no boards but the panels beside it, which stand as those of a cabinet in its place would, and
 * its kick board where each cabinet has its own.
 */
export function buildSpace(cabinet: Cabinet, space: ApplianceSpace, rules: Rules): CabinetBuild {
  const mark = markOf(cabinet)
  const report = reportOn(cabinet.id, mark, rules.display)
  const { method } = rules
  // Its door is in line with the fronts beside it.
  const stood: Cabinet = { ...cabinet, front: { kind: 'falseFront' }, interior: EMPTY, corner: null }
  const made = carcassOf(stood, { ...rules, method: { ...method, faceFrame: null } }, report)
  const nothing = { cabinet, mark, fronts: [], openings: [] }
  if (!made) return { ...nothing, boards: [], problems: report.problems }
  const carcass: Carcass = { ...made, isInset: areFrontsInset(method) }
  const pieces = [
    ...besideOf({ ...cabinet, beside: panelsOf(cabinet, report) }, carcass, rules.materials, report),
    ...kickOf(space, carcass),
  ]
  const boards = joined(pieces.filter((piece) => canBeCut(piece, report))).map((board) => {
    if (board.role !== 'leftEnd' && board.role !== 'rightEnd') return board
    const end = cabinet.beside[board.role === 'leftEnd' ? 'left' : 'right']
    return { ...board, operations: [...endNotch(board, end, carcass), ...board.operations] }
  })
  return { ...nothing, boards, problems: report.problems, bodies: applianceIn(space, carcass) }
}

/** Before a kick board an appliance has a recess of its own, so much deeper. Common practice, no source. */
const BEHIND_KICK = 10

/**
 * The appliance as its maker's sizes have it, in the middle of the width, with its door in line with the fronts beside it:
 * its body, and under that, behind a kick board, its foot.
 */
function applianceIn({ width, height, depth, isKickBefore }: ApplianceSpace, carcass: Carcass): Box[] {
  const x = [settle((carcass.width - width) / 2), settle((carcass.width + width) / 2)] as const
  const front = settle(frontsRear(carcass) + (carcass.isInset ? 0 : carcass.frontThickness))
  const rear = Math.max(0, settle(carcass.depth - depth))
  const foot = isKickBefore ? Math.min(carcass.floorHeight, height) : 0
  const body = room(x, [foot, height], [rear, front])
  const recess = settle(kickRear({ ...carcass, isKickLong: true }) - BEHIND_KICK)
  return foot > 0 && recess > rear ? [body, room(x, [0, foot], [rear, recess])] : [body]
}

/** A panel stands by itself; fillers and skins want a side, which an appliance has not. */
function panelsOf({ beside }: Cabinet, report: Report): Cabinet['beside'] {
  const panel = (side: 'left' | 'right') => {
    const one = beside[side]
    if (one.kind === 'none' || one.kind === 'panel') return one
    report.stop(
      `the ${one.kind} at its ${side} has no side to be screwed to: an appliance has none. Put it beside the next cabinet, or a panel here.`,
      { is: one.kind, limit: 'a panel' },
    )
    return { kind: 'none' } as const
  }
  return { left: panel('left'), right: panel('right') }
}

/** In line with those of the cabinets beside it; one in lengths is of the run. */
function kickOf({ isKickBefore }: ApplianceSpace, carcass: Carcass): Piece[] {
  const { method, floorHeight, depth, thickness, width, isKickLong } = carcass
  const { floor } = method
  if (!isKickBefore || isKickLong || floorHeight === 0 || floor.kind === 'none' || floor.kind === 'legs') return []
  const face = settle(depth - floor.setback)
  return [
    {
      ...{ role: 'kickBoard', number: 1, material: method.carcassMaterial, banded: UNBANDED },
      box: room([0, width], [0, floorHeight], [face - thickness, face]),
      lie: 'onEdgeLookingIn',
      explode: forward(WAYS.kick),
    },
  ]
}
