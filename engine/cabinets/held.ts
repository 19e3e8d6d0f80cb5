import { counted } from '../basics/counted'
import { pocketsOf } from '../project/fixing'
import type { Board } from './board'
import type { Carcass } from './carcass'
import type { Doors } from './cornerDoor'
import type { Legs } from './cornerLegs'
import { withCornerPockets } from './cornerPockets'
import { fixed } from './fixing'
import { withFramePockets } from './framePockets'
import type { Report } from './report'
import { withSlantPockets } from './slantPockets'
import type { FixedBoards } from './spacing'

/** The boards with what holds their corners, last of all that is bored, since it can best make way. */
export function held(boards: readonly Board[], { method }: Carcass, report: Report): readonly Board[] {
  const { boards: done, missing } = fixed(boards, method.fixing, pocketsOf(method))
  if (missing > 0) {
    report.mind(
      `${counted(missing, 'fixing')} of its corners find no place: other holes, grooves or a thin board are in the way. Nothing is bored for them.`,
      { is: `${missing} missing`, limit: 'none' },
    )
  }
  return done
}

/** The boards with the pocket screws of a face frame, in its members and behind it. */
export function frameHeld(boards: readonly Board[], carcass: Carcass, report: Report): readonly Board[] {
  return toldFrame(withFramePockets(boards, carcass), report)
}

/** The boards of a corner with the pocket screws of its face frames, but for those inside a slanting one. */
export function cornerFrameHeld(
  boards: readonly Board[],
  legs: Legs,
  doors: Pick<Doors, 'hand' | 'width'>,
  report: Report,
): readonly Board[] {
  const bored = legs.kind === 'L' ? withCornerPockets(boards, legs, doors) : withSlantPockets(boards, legs, doors)
  return toldFrame(bored, report)
}

function toldFrame({ boards, missing }: FixedBoards, report: Report): readonly Board[] {
  if (missing > 0) {
    report.mind(
      `${counted(missing, 'pocket screw')} of its face frame find no place: the members are too narrow, too short or too thin for them, or other holes are in the way. Nothing is bored for them.`,
      { is: `${missing} missing`, limit: 'none' },
    )
  }
  return boards
}
