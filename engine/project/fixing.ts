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
export const USUAL_FIXINGS: { readonly [kind in Fixing['kind']]: Extract<Fixing, { readonly kind: kind }> } = {
  none: { kind: 'none' },
  screws: { kind: 'screws', diameter: 4, head: 8.5, pilot: 3, length: 50, ...SPACED },
  dowels: { kind: 'dowels', diameter: 8, length: 30, inFace: 12, inEnd: 20, ...SPACED },
  looseTenons: { kind: 'looseTenons', diameter: 5, across: 19, length: 30, inFace: 12, inEnd: 20, ...SPACED },
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
