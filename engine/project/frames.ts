import { inch } from '../units/length'
import type { Cabinet } from './document'
import type { FaceFrame, FrontBuild, MethodChoices, PanelWood } from './method'

/**
 * The usual face frame: stiles and rails of 1 1/2 in (source: a homeownershub post on face frames, 'Base cabinet stiles:
 * 1 1/2" wide'), a quarter inch past the carcass each side (source: 'Cabinet Basics', J. Kroschel), inset fronts.
 */
export const USUAL_FRAME: FaceFrame = {
  stile: inch(1.5),
  topRail: inch(1.5),
  bottomRail: inch(1.5),
  mullion: inch(1.5),
  pastLeft: inch(0.25),
  pastRight: inch(0.25),
  proud: 0,
  joint: { kind: 'pocketScrews' },
  fronts: { kind: 'inset' },
}

/** The face frame of a method as it is made for a cabinet: uppers may have a top rail of their own. */
export function frameFor(
  { kind }: Pick<Cabinet, 'kind'>,
  { faceFrame }: Pick<MethodChoices, 'faceFrame'>,
): FaceFrame | null {
  const topRail = kind === 'upper' ? faceFrame?.upperTopRail : undefined
  return faceFrame && topRail !== undefined ? { ...faceFrame, topRail } : faceFrame
}

/** Half an inch over the frame, as overlay doors often are. Source: a forum, 'my 1/2 inch overlay doors'. */
export const USUAL_OVERLAY = inch(0.5)

/** An inch in members of an inch and a half would meet in a mullion. Common practice, no source. */
export const USUAL_TENON = inch(0.625)

/** Stiles and rails of 57 with a groove of 10, and 3 of play in all; a mid rail in doors of more than 1200. Common practice, no source. */
export const USUAL_FIVE_PART: Extract<FrontBuild, { readonly kind: 'fivePart' }> = {
  kind: 'fivePart',
  stile: 57,
  rail: 57,
  groove: 10,
  play: 3,
  areDrawersToo: false,
  midRailFrom: 1200,
}

/**
 * What flat-sawn boards move across their grain, for each percent of moisture, as a share of their width. Source: Wood
 * Handbook FPL-GTR-190, table 13-5 (6 to 14 percent).
 */
export const WOODS = [
  ['red oak', 0.00369],
  ['sugar maple', 0.00353],
  ['yellow birch', 0.00338],
  ['red maple', 0.00289],
  ['black walnut', 0.00274],
  ['white ash', 0.00274],
  ['black cherry', 0.00248],
] as const

/** Indoors wood moves between some 6 and 10 percent in a year. Common practice, no source. */
export const USUAL_MOISTURE = 4

export const NO_FRAMES: Pick<MethodChoices, 'faceFrame' | 'frontBuild' | 'panelWood'> = {
  faceFrame: null,
  frontBuild: { kind: 'slab' },
  panelWood: { kind: 'sheet' },
}

/** Flat-sawn red oak, the one of them that moves most. */
export const USUAL_SOLID: PanelWood = { kind: 'solid', across: WOODS[0][1], moisture: USUAL_MOISTURE }

/** A saved build method that says nothing yet of face frames and five-part fronts: it had none, and so needs no board for them. */
export function withNoFrames(method: Record<string, unknown>): Record<string, unknown> {
  const boards = { frameMaterial: method.frontMaterial, panelMaterial: method.backMaterial }
  return { ...NO_FRAMES, ...boards, ...method }
}
