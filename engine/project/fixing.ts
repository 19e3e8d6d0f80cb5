import type { Mm } from '../units/length'

/** How often a joint is held along its length; two at least, wherever they fit. */
interface Spaced {
  /** From the front edge, and from the rear one, to the middle of the first. */
  readonly fromEdge: Mm
  /** From one to the next at most. */
  readonly spacing: Mm
}

/** What goes half into the face of one board and half into the end of the other. */
interface Inserted extends Spaced {
  /** Of the bit: a dowel is as thick, and so is a loose tenon. */
  readonly diameter: Mm
  /** Of the dowel or the tenon itself. */
  readonly length: Mm
  readonly inFace: Mm
  readonly inEnd: Mm
}

/** What holds the corners of a carcass besides glue. */
export type Fixing =
  | { readonly kind: 'none' }
  | ({
      readonly kind: 'screws'
      /** Of the screw itself, and of its head. */
      readonly diameter: Mm
      readonly head: Mm
      /** Of the hole that its thread bites in. */
      readonly pilot: Mm
      readonly length: Mm
    } & Spaced)
  | ({ readonly kind: 'dowels' } & Inserted)
  | ({
      readonly kind: 'looseTenons' /** From round end to round end of the mortise. */
      readonly across: Mm
    } & Inserted)
  | ({
      readonly kind: 'biscuits'
      readonly size: BiscuitSize
      /** Of the slot along the joint, as the cutter leaves it. */
      readonly across: Mm
    } & Inserted)
  /** Bored aslant in the board that is butted, by the pocket rules of the build method. */
  | ({ readonly kind: 'pocketScrews' } & Spaced)

/** As they are called where they are sold. */
export type BiscuitSize = '0' | '10' | '20'

/** How a face frame is held on its carcass, besides the glue. */
export type FrameFixing = { readonly kind: 'glue' } | ({ readonly kind: 'pocketScrews' } & Spaced)

/** How pocket holes are bored, and what is screwed in them. */
export interface PocketRules {
  /** Between the axis of the hole and the face that it is bored in, in degrees. */
  readonly angle: number
  /** Of the pocket that takes the head. */
  readonly diameter: Mm
  /** Along the axis, from the bottom of the pocket to the end of the board: what the head draws against. */
  readonly underHead: Mm
  readonly screwDiameter: Mm
  readonly screwLength: Mm
  /** Across the members of a face frame: from either edge to the first hole, and from one to the next at most. */
  readonly fromEdge: Mm
  readonly spacing: Mm
}

/** What a door is pulled by. */
export type DoorPull =
  | { readonly kind: 'none' }
  | { readonly kind: 'knob'; readonly diameter: Mm; readonly fromEdge: Mm; readonly fromCorner: Mm }
  | {
      readonly kind: 'bar'
      readonly diameter: Mm
      /** Between its two screws. */
      readonly spread: Mm
      /** From the free edge of the door to its screws. */
      readonly fromEdge: Mm
      /** From the nearer end of the door to the nearer screw. */
      readonly fromCorner: Mm
    }

/** What a drawer front is pulled by, in the middle of its height; two of them from a width up, 0 for never. */
export type DrawerPull =
  | { readonly kind: 'none' }
  | { readonly kind: 'knob'; readonly diameter: Mm; readonly twoFrom: Mm }
  | { readonly kind: 'bar'; readonly diameter: Mm; readonly spread: Mm; readonly twoFrom: Mm }

/** What a drawer front is drawn to its box with, from inside; nothing is bored where it is left out. */
export type FrontScrews =
  | { readonly kind: 'none' }
  | ({
      readonly kind: 'screws'
      /** Of the screw itself, of its head, and of the hole in the box, wide enough that the front can be set. */
      readonly diameter: Mm
      readonly head: Mm
      readonly hole: Mm
      /** Of the spot in the front that its point begins in. */
      readonly pilot: Mm
      readonly length: Mm
    } & Spaced)

/** The legs under a carcass and how their plates are screwed to its bottom. */
export interface LegRules {
  /** From one to the next at most, along the width. */
  readonly spacing: Mm
  /** From the sides of the carcass to the middle of the first, and from its rear edge. */
  readonly fromEdge: Mm
  /** Between the screws of a plate, each way; 0 where none are bored for. */
  readonly plateSpread: Mm
  readonly screwDiameter: Mm
  readonly screwDepth: Mm
}

/** Six under what is wider than 900, four under what is not. Common practice, no source. */
export const USUAL_LEGS: LegRules = { spacing: 800, fromEdge: 50, plateSpread: 0, screwDiameter: 3, screwDepth: 10 }

/** What goes with a fixing that is chosen for the first time. Common practice, no source. */
const SPACED = { fromEdge: 50, spacing: 200 } as const

/**
 * Biscuits are 4 thick, and 15, 19 and 23 wide for #0, #10 and #20 (source: Wikipedia, 'Biscuit joiner', for #10 and #20; #0 from
 * memory). Each half of the slot is half a millimetre and more deeper than half the biscuit; how deep is from memory. A cutter of
 * 100 (same source) set so deep leaves a slot of 2 x sqrt(50^2 - (50 - depth)^2) along the face.
 */
const BISCUITS: Readonly<Record<BiscuitSize, { readonly length: Mm; readonly depth: Mm; readonly across: Mm }>> = {
  0: { length: 15, depth: 8, across: 54.3 },
  10: { length: 19, depth: 10, across: 60 },
  20: { length: 23, depth: 12, across: 65 },
}

/** A biscuit of a size, as it is usually set. */
export function biscuits(size: BiscuitSize): Extract<Fixing, { readonly kind: 'biscuits' }> {
  const { length, depth, across } = BISCUITS[size]
  return { kind: 'biscuits', size, diameter: 4, across, length, inFace: depth, inEnd: depth, ...SPACED }
}

/**
 * An angle of 15 degrees (source: jlconline.com, 'A builder's guide to pocket-hole joinery'), and two holes at each end of a
 * rail (source: woodmagazine.com, 'Five-minute face frames'); more in a wider one. Pocket, screw and the wood under the head
 * for boards of some 19 mm are from memory.
 */
export const USUAL_POCKETS: PocketRules = {
  angle: 15,
  diameter: 9.5,
  underHead: 16,
  screwDiameter: 4,
  screwLength: 32,
  fromEdge: 12,
  spacing: 80,
}

export function pocketsOf({ pockets }: { readonly pockets?: PocketRules }): PocketRules {
  return pockets ?? USUAL_POCKETS
}

export const USUAL_FRAME_FIXINGS: {
  readonly [kind in FrameFixing['kind']]: Extract<FrameFixing, { readonly kind: kind }>
} = { glue: { kind: 'glue' }, pocketScrews: { kind: 'pocketScrews', ...SPACED } }
export const USUAL_FIXINGS: { readonly [kind in Fixing['kind']]: Extract<Fixing, { readonly kind: kind }> } = {
  none: { kind: 'none' },
  screws: { kind: 'screws', diameter: 4, head: 8.5, pilot: 3, length: 50, ...SPACED },
  dowels: { kind: 'dowels', diameter: 8, length: 30, inFace: 12, inEnd: 20, ...SPACED },
  looseTenons: { kind: 'looseTenons', diameter: 5, across: 19, length: 30, inFace: 12, inEnd: 20, ...SPACED },
  biscuits: biscuits('20'),
  pocketScrews: { kind: 'pocketScrews', ...SPACED },
}

/** Common practice, no source. */
export const USUAL_DOOR_PULLS: { readonly [kind in DoorPull['kind']]: Extract<DoorPull, { readonly kind: kind }> } = {
  none: { kind: 'none' },
  knob: { kind: 'knob', diameter: 5, fromEdge: 40, fromCorner: 60 },
  bar: { kind: 'bar', diameter: 5, spread: 128, fromEdge: 40, fromCorner: 60 },
}

/** Common practice, no source. */
export const USUAL_DRAWER_PULLS: {
  readonly [kind in DrawerPull['kind']]: Extract<DrawerPull, { readonly kind: kind }>
} = {
  none: { kind: 'none' },
  knob: { kind: 'knob', diameter: 5, twoFrom: 700 },
  bar: { kind: 'bar', diameter: 5, spread: 128, twoFrom: 0 },
}

/** Of 25 in a box of 12 and a front of 18. Common practice, no source. */
export const USUAL_FRONT_SCREWS: {
  readonly [kind in FrontScrews['kind']]: Extract<FrontScrews, { readonly kind: kind }>
} = {
  none: { kind: 'none' },
  screws: { kind: 'screws', diameter: 4, head: 10, hole: 6, pilot: 2.5, length: 25, fromEdge: 30, spacing: 300 },
}
