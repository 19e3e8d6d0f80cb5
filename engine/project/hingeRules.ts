import type { Mm } from '../units/length'

/** What a number of hinges carries. */
export interface HingeRow {
  /** The highest door; along the hinges of a flap. */
  readonly height: Mm
  /** In kg: a door that weighs as much has one more. */
  readonly weight: number
}

/** Rows for 2 hinges, for 3 and so on, each above the one before it: as many as `CHART_ROWS` says. */
export type HingeChart = readonly HingeRow[]

/** How doors and flaps hang: what is bored for a hinge, and how far its door then covers the carcass. */
export interface HingeRules {
  readonly cupDiameter: Mm
  readonly cupDepth: Mm
  /** From the edge of the door to the edge of the cup. */
  readonly cupFromEdge: Mm
  /** Between the two screws or dowels of a cup. */
  readonly screwSpread: Mm
  /** From the middle of the cup further into the door. */
  readonly screwBehind: Mm
  readonly screwDiameter: Mm
  readonly screwDepth: Mm
  /** From each end of the door to the middle of its first cup, and to the last. */
  readonly firstFromEnd: Mm
  /** From the front edge of the carcass, or from the back of an inset front, to the line of the plate's holes. */
  readonly plateFromFront: Mm
  readonly plateSpread: Mm
  readonly plateDiameter: Mm
  readonly plateDepth: Mm
  /** What a plate covers along its board, where nothing else may be. */
  readonly plateLength: Mm
  /** How far the plate lifts the hinge off its board. */
  readonly plateHeight: Mm
  /** What a straight arm overlays with its cup at the very edge and no plate under it. */
  readonly fixedDistance: Mm
  /** How much less the arms of half overlay and of inset doors overlay than a straight one. */
  readonly halfCrank: Mm
  readonly fullCrank: Mm
  /** How far a hinge can be set to either side. */
  readonly sideAdjustment: Mm
  /**
   * Of the hinge between the two leaves of an inside corner: its cup is in the leaf that is pulled, and the line of its
   * plate's holes so far from the edge of the other leaf. What a method does not say is what is usual.
   */
  readonly foldFromEdge?: Mm
  /** How many hinges a door has by its height and its weight. `USUAL_CHART` where it is left out. */
  readonly chart?: HingeChart
}
