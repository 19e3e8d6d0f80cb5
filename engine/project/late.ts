/** Kinds of part that are made to what was built, and not to the drawing. */
export interface CutLate {
  /** Doors, flaps, drawer fronts, false fronts and the panels of blind corners. */
  readonly fronts: boolean
  readonly drawerBoxes: boolean
  /** Fillers, ends, long kicks, countertops, rails and crowns: what is fitted where the cabinets stand. */
  readonly fitted: boolean
}

export const NOTHING_LATE: CutLate = { fronts: false, drawerBoxes: false, fitted: false }
