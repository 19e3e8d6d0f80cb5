import type { Random } from '../../engine/basics/random'
import { USUAL_FIVE_PART, USUAL_FRAME } from '../../engine/project/frames'
import type { FaceFrame, FrontBuild, MethodChoices, PanelWood } from '../../engine/project/method'
import { picker } from './dice'

/** The members of a frame by which a test names them; they differ from one another. */
export const FRAME: FaceFrame = {
  ...USUAL_FRAME,
  stile: 40,
  topRail: 45,
  bottomRail: 36,
  mullion: 38,
  pastLeft: 6,
  pastRight: 8,
}

/** As a third of all cabinets: a face frame of any kind, and doors of any make. */
export function anyFrames(dice: Random): Partial<MethodChoices> {
  const oneOf = picker(dice)
  const faceFrame = oneOf(true, false, false)
    ? {
        stile: oneOf(38, 44.45),
        topRail: oneOf(38, 60),
        bottomRail: oneOf(25, 38),
        mullion: oneOf(38, 50),
        pastLeft: oneOf(0, 6.35),
        pastRight: oneOf(0, 12.7),
        proud: oneOf(0, 3),
        joint: oneOf<FaceFrame['joint']>({ kind: 'pocketScrews' }, { kind: 'tenon', length: 15 }),
        fronts: oneOf<FaceFrame['fronts']>({ kind: 'inset' }, { kind: 'overlay', by: 12.7 }),
      }
    : null
  return { faceFrame, ...anyDoors(dice) }
}

function anyDoors(dice: Random): { readonly frontBuild: FrontBuild; readonly panelWood: PanelWood } {
  const oneOf = picker(dice)
  return {
    frontBuild: oneOf<FrontBuild>(
      { kind: 'slab' },
      { kind: 'slab' },
      { ...USUAL_FIVE_PART, areDrawersToo: oneOf(true, false), rail: oneOf(57, 70) },
    ),
    panelWood: oneOf<PanelWood>({ kind: 'sheet' }, { kind: 'solid', across: 0.00369, moisture: 4 }),
  }
}

/** The same method with what its face frame does at the left done at the right. */
export function mirroredFrame<Of extends Pick<MethodChoices, 'faceFrame'>>(method: Of): Of {
  const { faceFrame } = method
  if (!faceFrame) return method
  return { ...method, faceFrame: { ...faceFrame, pastLeft: faceFrame.pastRight, pastRight: faceFrame.pastLeft } }
}
