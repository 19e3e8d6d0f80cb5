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
  const [across, up] = [settle(rect.width - 2 * stile), settle(rect.height - 2 * rail)]
  if (across <= 0) return `two stiles of ${say(stile)} leave nothing of its width of ${say(rect.width)}`
  return up > 0 ? null : `two rails of ${say(rail)} leave nothing of its height of ${say(rect.height)}`
}

interface Front {
  readonly of: keyof typeof FIVE_PART_ROLES
  readonly number: number
  readonly rect: Rect
  /** The rear of it, from the wall. */
  readonly rear: Mm
}

/**
 * The stiles, rails and panel of a front. Stiles run its whole height and have the groove along their inner edges; rails
 * have it too, and stub tenons as long as it is deep. The panel sits in the middle of the thickness.
 */
export function fivePartsOf(front: Front, build: FivePart, carcass: Carcass, common: Pick<Piece, 'explode'>): Piece[] {
  const { rect, rear, number } = front
  const { frontMaterial } = carcass.method
  const roles = FIVE_PART_ROLES[front.of]
  const [x, y] = [spanOf(rect.left, rightOf(rect), build.stile), spanOf(rect.bottom, topOf(rect), build.rail)]
  const z = { rear, front: settle(rear + carcass.frontThickness) }
  const low = settle(rear + (carcass.frontThickness - carcass.panelThickness) / 2)
  const middle = [low, low + carcass.panelThickness] as const
  const { groove } = build
  const seatX = [x.inner[0] - groove, x.inner[1] + groove] as const
  const seatY = [y.inner[0] - groove, y.inner[1] + groove] as const
  const deep = [z.rear, z.front] as const
  const member = { ...common, material: frontMaterial, banded: UNBANDED }
  const stile = (at: 0 | 1): Piece => {
    const side = at === 0 ? ([x.outer[0], x.inner[0]] as const) : ([x.inner[1], x.outer[1]] as const)
    const slot = at === 0 ? ([seatX[0], x.inner[0]] as const) : ([x.inner[1], seatX[1]] as const)
    return {
      ...member,
      role: roles.stile,
      number: 2 * number - 1 + at,
      box: room(side, y.outer, deep),
      cuts: [room(slot, y.outer, middle)],
      lie: 'uprightLookingIn',
    }
  }
  const rail = (at: 0 | 1): Piece => {
    const side = at === 0 ? ([y.outer[0], y.inner[0]] as const) : ([y.inner[1], y.outer[1]] as const)
    const slot = at === 0 ? ([seatY[0], y.inner[0]] as const) : ([y.inner[1], seatY[1]] as const)
    const cheeks = [[seatX[0], x.inner[0]] as const, [x.inner[1], seatX[1]] as const].flatMap((end): Box[] => [
      room(end, side, [z.rear, middle[0]]),
      room(end, side, [middle[1], z.front]),
    ])
    return {
      ...member,
      role: roles.rail,
      number: 2 * number - 1 + at,
      box: room(seatX, side, deep),
      cuts: [room(seatX, slot, middle), ...cheeks],
      lie: 'onEdgeLookingIn',
    }
  }
  const panel: Piece = {
    ...common,
    role: roles.panel,
    number,
    material: carcass.method.panelMaterial,
    box: panelRoom(front.of, { x: seatX, y: seatY, z: middle }, build, carcass),
    lie: front.of === 'door' ? 'uprightLookingIn' : 'onEdgeLookingIn',
    banded: UNBANDED,
  }
  return [stile(0), stile(1), rail(0), rail(1), panel]
}

/** From one outside of a front to the other, and from the inside of one member to that of the other. */
function spanOf(from: Mm, to: Mm, member: Mm) {
  return { outer: [from, to] as const, inner: [settle(from + member), settle(to - member)] as const }
}

type Span = readonly [Mm, Mm]

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
