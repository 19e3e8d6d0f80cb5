import type { Box } from '../geometry/box'
import { type Rect, rightOf, topOf } from '../geometry/rect'
import type { FrontBuild, PanelWood } from '../project/method'
import { type Mm, settle } from '../units/length'
import type { BoardRole } from './board'
import type { Carcass } from './carcass'
import { type Piece, room, UNBANDED } from './piece'

export type FivePart = Extract<FrontBuild, { readonly kind: 'fivePart' }>

/** A rail is as long as the door is wide, less both stiles, and longer by the two stub tenons in their grooves. */
export function doorRailLength(width: Mm, { stile, groove }: FivePart): Mm {
  return settle(width - 2 * stile + 2 * groove)
}

/** The panel and its play: the opening between two members, and the grooves of both. */
export function panelSeat(outside: Mm, member: Mm, { groove }: FivePart): Mm {
  return settle(outside - 2 * member + 2 * groove)
}

/** Whether a door is so high that a third rail parts its panel. Drawer fronts have none. */
export function hasMidRail(of: keyof typeof FIVE_PART_ROLES, { height }: Rect, { midRailFrom = 0 }: FivePart): boolean {
  return of === 'door' && midRailFrom > 0 && height > midRailFrom
}

/** Either panel of a door with a mid rail, and its play: half of what three rails leave, and the grooves of two of them. */
export function halfPanelSeat(outside: Mm, { rail, groove }: FivePart): Mm {
  return settle((outside - 3 * rail) / 2 + 2 * groove)
}

/**
 * How much a panel of solid wood grows and shrinks across its grain: its width, by what the wood moves for each percent, by
 * the percents that its moisture changes. Source: Wood Handbook FPL-GTR-190, table 13-5 (dW = W x C x dMC).
 */
export function woodMovement(width: Mm, wood: PanelWood): Mm {
  return wood.kind === 'sheet' ? 0 : settle(width * wood.across * wood.moisture)
}

/** The play of a panel across its grain: what is chosen, or what the wood asks for where that is more. */
export function playAcross(seat: Mm, { play }: FivePart, wood: PanelWood): Mm {
  return Math.max(play, woodMovement(seat, wood))
}

/** Doors are called and numbered apart from drawer fronts. */
export const FIVE_PART_ROLES = {
  door: { stile: 'doorStile', rail: 'doorRail', panel: 'doorPanel' },
  drawer: { stile: 'drawerStile', rail: 'drawerRail', panel: 'drawerPanel' },
} as const satisfies Record<string, Record<'stile' | 'rail' | 'panel', BoardRole>>

/** Why a front cannot be made of five parts; null where it can. Lengths are said by the caller's `say`. */
export function whyNotFivePart(
  of: keyof typeof FIVE_PART_ROLES,
  rect: Rect,
  build: FivePart,
  carcass: Carcass,
  say: (length: Mm) => string,
): string | null {
  const { panelThickness, frontThickness } = carcass
  const { stile, rail, groove } = build
  if (!(panelThickness < frontThickness)) {
    return `its panel is ${say(panelThickness)} thick, its stiles and rails ${say(frontThickness)}`
  }
  if (!(groove > 0 && groove < Math.min(stile, rail))) {
    return `a groove of ${say(groove)} does not fit in stiles of ${say(stile)} and rails of ${say(rail)}`
  }
  const rails = hasMidRail(of, rect, build) ? 3 : 2
  const [across, up] = [settle(rect.width - 2 * stile), settle(rect.height - rails * rail)]
  if (across <= 0) return `two stiles of ${say(stile)} leave nothing of its width of ${say(rect.width)}`
  return up > 0
    ? null
    : `${rails === 3 ? 'three' : 'two'} rails of ${say(rail)} leave nothing of its height of ${say(rect.height)}`
}

interface Front {
  readonly of: keyof typeof FIVE_PART_ROLES
  readonly number: number
  /** What its mid rail and the panel over that are numbered; null where it has none. */
  readonly over: { readonly rail: number; readonly panel: number } | null
  readonly rect: Rect
  /** The rear of it, from the wall. */
  readonly rear: Mm
}

/**
 * The stiles, rails and panel of a front, and of a high door its mid rail with a second panel over it. Stiles run its whole
 * height and have the groove along their inner edges; rails have it too, the mid rail in both, and stub tenons as long as it
 * is deep. Panels sit in the middle of the thickness.
 */
export function fivePartsOf(front: Front, build: FivePart, carcass: Carcass, common: Pick<Piece, 'explode'>): Piece[] {
  const { rect, number, over } = front
  const { groove, rail: wide } = build
  const [low, high] = [rect.bottom, topOf(rect)]
  const top = settle(high - wide)
  const inUpper = (from: Mm): Span => [settle(from + wide - groove), settle(from + wide)]
  const inLower = (from: Mm): Span => [from, settle(from + groove)]
  const between = (below: Mm, above: Mm): Span => [settle(below + wide - groove), settle(above + groove)]
  const { stile, rail, panel } = memberMakers(front, build, carcass, common)
  const outer = [
    ...[stile(rect.left, 'right', 2 * number - 1), stile(settle(rightOf(rect) - build.stile), 'left', 2 * number)],
    ...[rail(low, 2 * number - 1, [inUpper(low)]), rail(top, 2 * number, [inLower(top)])],
  ]
  if (!over) return [...outer, panel(between(low, top), number)]
  const mid = settle(low + (rect.height - wide) / 2)
  return [
    ...[...outer, rail(mid, over.rail, [inLower(mid), inUpper(mid)])],
    ...[panel(between(low, mid), number), panel(between(mid, top), over.panel)],
  ]
}

type Span = readonly [Mm, Mm]

/** What each member of a front is, wherever it stands in it. */
function memberMakers({ of, rect, rear }: Front, build: FivePart, carcass: Carcass, common: Pick<Piece, 'explode'>) {
  const roles = FIVE_PART_ROLES[of]
  const { groove } = build
  const inner: Span = [settle(rect.left + build.stile), settle(rightOf(rect) - build.stile)]
  const seat: Span = [settle(inner[0] - groove), settle(inner[1] + groove)]
  const deep: Span = [rear, settle(rear + carcass.frontThickness)]
  const behind = settle(rear + (carcass.frontThickness - carcass.panelThickness) / 2)
  const middle: Span = [behind, settle(behind + carcass.panelThickness)]
  const member = { ...common, material: carcass.method.frontMaterial, banded: UNBANDED }
  return {
    stile(from: Mm, groovedAt: 'left' | 'right', number: number): Piece {
      const to = settle(from + build.stile)
      const slot = groovedAt === 'left' ? ([from, from + groove] as const) : ([to - groove, to] as const)
      const y = [rect.bottom, topOf(rect)] as const
      const shape = { box: room([from, to], y, deep), cuts: [room(slot, y, middle)], lie: 'uprightLookingIn' } as const
      return { ...member, role: roles.stile, number, ...shape }
    },
    rail(from: Mm, number: number, slots: readonly Span[]): Piece {
      const side: Span = [from, settle(from + build.rail)]
      const ends: readonly Span[] = [
        [seat[0], inner[0]],
        [inner[1], seat[1]],
      ]
      const cheeks = ends.flatMap((end): Box[] => [
        room(end, side, [deep[0], middle[0]]),
        room(end, side, [middle[1], deep[1]]),
      ])
      const cuts = [...slots.map((slot) => room(seat, slot, middle)), ...cheeks]
      return { ...member, role: roles.rail, number, box: room(seat, side, deep), cuts, lie: 'onEdgeLookingIn' }
    },
    panel(seatY: Span, number: number): Piece {
      return {
        ...common,
        role: roles.panel,
        number,
        material: carcass.method.panelMaterial,
        box: panelRoom(of, { x: seat, y: seatY, z: middle }, build, carcass),
        lie: of === 'door' ? 'uprightLookingIn' : 'onEdgeLookingIn',
        banded: UNBANDED,
      }
    },
  }
}

/** The panel in the middle of its grooves: with its grain upright in a door, and from left to right in a drawer front. */
function panelRoom(
  of: keyof typeof FIVE_PART_ROLES,
  { x, y, z }: { readonly x: Span; readonly y: Span; readonly z: Span },
  build: FivePart,
  { method: { panelWood } }: Carcass,
): Box {
  const across = of === 'door' ? x : y
  const more = playAcross(settle(across[1] - across[0]), build, panelWood)
  const [playX, playY] = of === 'door' ? [more, build.play] : [build.play, more]
  const less = ([from, to]: Span, play: Mm): Span => {
    const start = settle(from + play / 2)
    return [start, settle(start + to - from - play)]
  }
  return room(less(x, playX), less(y, playY), z)
}
