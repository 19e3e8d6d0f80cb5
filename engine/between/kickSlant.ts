import type { CabinetId, WallId } from '../basics/id'
import { forward, WAYS } from '../cabinets/apart'
import type { Board } from '../cabinets/board'
import { stoodIn } from '../cabinets/facePlane'
import type { Bevel } from '../cabinets/operation'
import { boardOf, type Piece, room, UNBANDED } from '../cabinets/piece'
import type { Cabinet, Project, Side, Wall } from '../project/document'
import { rightEdge } from '../runs/lane'
import { meetingsOf } from '../runs/reach'
import { type Mm, settle } from '../units/length'
import { type KickMitres, type KickStep, kickOf } from './kick'
import { cabinetsAt } from './runsAlong'
import { spliced } from './splice'
import { slantEnds } from './trimCorner'
import { halfTangent, slantOf } from './trimEnds'

/** The kick before the slanting front of a diagonal on legs, and whether those of the runs beside it meet it. */
export interface SlantKick {
  readonly cabinet: Cabinet
  readonly kick: Pick<KickStep, 'height' | 'material' | 'thickness'>
  readonly setback: Mm
  readonly ends: { readonly own: { readonly isMet: boolean }; readonly other: { readonly isMet: boolean } }
}

/** A run of kicks, gone on under the diagonals beside it until its face meets theirs. */
export interface MetKick {
  readonly steps: readonly KickStep[]
  readonly mitres: KickMitres
}

/** Where the kick of a diagonal ends at a wall, as that of a run there sees it. */
interface SlantEnd {
  readonly cabinet: CabinetId
  readonly of: 'own' | 'other'
  /** The end of the run. */
  readonly side: Side
  readonly at: Mm
  readonly face: Mm
  readonly kick: SlantKick['kick']
  readonly setback: Mm
  readonly tangent: number
}

/**
 * Before legs nothing ends the kicks at the sides of their cabinets, so that beside a diagonal they are mitred with half of the
 * angle each. As the face of a kick stands behind the fronts, they meet under the diagonal:
 *
 *      |     \
 *      |      \   front of the diagonal
 *       \   \  \___________
 *        \   \_____________   kick of the run
 *         \________________
 */
export function slantKicks(
  project: Project,
  runs: ReadonlyMap<WallId, readonly (readonly KickStep[])[]>,
  walls: readonly Wall[],
): { readonly met: ReadonlyMap<WallId, readonly MetKick[]>; readonly slants: readonly SlantKick[] } {
  const isMet = new Set<string>()
  const met = walls.map((wall): [WallId, readonly MetKick[]] => {
    const ends = slantEndsAt(project, wall)
    return [wall.id, (runs.get(wall.id) ?? []).map((steps) => metAt(steps, ends, isMet))]
  })
  const slants = walls.flatMap((wall) =>
    cabinetsAt(project, wall).flatMap((cabinet): SlantKick[] => {
      const own = slantKickOf(cabinet, project)
      const meets = (of: SlantEnd['of']) => ({ isMet: isMet.has(`${cabinet.id} ${of}`) })
      return own ? [{ cabinet, ...own, ends: { own: meets('own'), other: meets('other') } }] : []
    }),
  )
  return { met: new Map(met), slants }
}

function slantKickOf(cabinet: Cabinet, project: Project): Pick<SlantKick, 'kick' | 'setback'> | null {
  const { corner } = cabinet
  if (corner?.kind !== 'diagonal') return null
  const { along, out } = slantOf(cabinet, corner)
  const kick = kickOf(cabinet, project)
  return kick?.floor === 'legs' && along > 0 && out > 0 ? { kick, setback: kick.setback } : null
}

/** Of the diagonals at a wall and at those that meet it, the ends of their kicks at this wall. */
function slantEndsAt(project: Project, wall: Wall): SlantEnd[] {
  const endsOf = (cabinet: Cabinet, of: SlantEnd['of'], side: Side, at: Mm): SlantEnd[] => {
    const own = slantKickOf(cabinet, project)
    const { corner } = cabinet
    if (!own || !corner) return []
    const { along, out, long } = slantOf(cabinet, corner)
    const front = of === 'own' ? cabinet.depth : corner.otherDepth
    const tangent = of === 'own' ? halfTangent(long, along, out) : halfTangent(long, out, along)
    return [{ cabinet: cabinet.id, of, side, at, face: settle(front - own.setback), ...own, tangent }]
  }
  const own = cabinetsAt(project, wall).flatMap((cabinet) => {
    const hand = cabinet.corner?.hand
    return hand ? endsOf(cabinet, 'own', hand, hand === 'left' ? rightEdge(cabinet) : cabinet.left) : []
  })
  const others = meetingsOf(project, wall).flatMap((meeting) =>
    cabinetsAt(project, meeting.wall).flatMap((cabinet) => {
      const { corner } = cabinet
      // The corner at the left end of this wall is at the right end of the other.
      if (!corner || corner.hand === meeting.side || !isInCorner(cabinet, meeting.wall)) return []
      const at = meeting.side === 'left' ? corner.other : settle(wall.length - corner.other)
      return endsOf(cabinet, 'other', meeting.side, at)
    }),
  )
  return [...own, ...others]
}

function isInCorner(cabinet: Cabinet, wall: Wall): boolean {
  return cabinet.corner?.hand === 'left' ? cabinet.left === 0 : rightEdge(cabinet) === wall.length
}

function metAt(steps: readonly KickStep[], ends: readonly SlantEnd[], isMet: Set<string>): MetKick {
  const [first, last] = [steps[0]!, steps.at(-1)!]
  const meetingAt = (side: Side, at: Mm, step: KickStep) =>
    ends.find((end) => {
      const { kick } = end
      const isLevel = end.face === step.face && kick.height === step.height && kick.material === step.material
      return end.side === side && end.at === at && isLevel
    })
  const [left, right] = [meetingAt('left', first.from, first), meetingAt('right', last.to, last)]
  for (const end of [left, right]) if (end) isMet.add(`${end.cabinet} ${end.of}`)
  const mitre = (end: SlantEnd | undefined) => (end ? settle(end.kick.thickness * end.tangent) : 0)
  const mitres = { left: mitre(left), right: mitre(right) }
  const past = (end: SlantEnd | undefined) => (end ? settle(end.setback * end.tangent) : 0)
  const from = settle(first.from - past(left) - mitres.left)
  const to = settle(last.to + past(right) + mitres.right)
  const on = steps.map((step, at): KickStep => {
    return { ...step, ...(at === 0 ? { from } : {}), ...(at === steps.length - 1 ? { to } : {}) }
  })
  return { steps: on, mitres }
}

/** The boards in the frame of the cabinet: mitred against those beside them, or in line with the ends of the cabinet. */
export function slantKickBoards({ cabinet: size, kick, setback, ends }: SlantKick, longest: Mm): Board[] {
  const corner = size.corner!
  const { along, out, long } = slantOf(size, corner)
  const { own, other } = slantEnds({ size, corner, ends }, settle(0 - setback))
  const by = (isMet: boolean, beside: Mm, across: Mm) =>
    settle(kick.thickness * (isMet ? halfTangent(long, beside, across) : across / beside))
  const [byOwn, byOther] = [by(ends.own.isMet, along, out), by(ends.other.isMet, out, along)]
  const isLeft = corner.hand === 'left'
  const [byLeft, byRight] = isLeft ? [byOther, byOwn] : [byOwn, byOther]
  const face = settle(Math.hypot(own.x - other.x, other.z - own.z))
  if (own.x <= other.x) return []
  const length = settle(byLeft + face + byRight)
  const start = isLeft ? other : { x: settle(size.width - own.x), z: own.z }
  const plane = { ...start, turn: { cos: along / long, sin: ((isLeft ? 1 : -1) * out) / long } }
  return spliced([0, length], longest).map(({ from, to }, at) => {
    const bevels: Bevel[] = [
      ...(to === length ? [{ kind: 'bevel', edge: 'start', face: 'outside', by: byRight } as const] : []),
      ...(from === 0 ? [{ kind: 'bevel', edge: 'end', face: 'outside', by: byLeft } as const] : []),
    ]
    const piece: Piece = {
      ...{ role: 'longKick', number: at + 1, material: kick.material, lie: 'onEdgeLookingIn', banded: UNBANDED },
      box: room([from - byLeft, to - byLeft], [0, kick.height], [-kick.thickness, 0]),
      ...{ bevels, explode: forward(WAYS.kick) },
    }
    return stoodIn(boardOf(piece), plane)
  })
}
