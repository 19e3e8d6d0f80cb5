import { counted } from '../basics/counted'
import { pocketsOf } from '../project/fixing'
import type { Board } from './board'
import type { Carcass } from './carcass'
import { fixed } from './fixing'
import { withFramePockets } from './framePockets'
import type { Report } from './report'

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
  const { boards: done, missing } = withFramePockets(boards, carcass)
  if (missing > 0) {
    report.mind(
      `${counted(missing, 'pocket screw')} of its face frame find no place: the members are too narrow or too thin for them, or other holes are in the way. Nothing is bored for them.`,
      { is: `${missing} missing`, limit: 'none' },
    )
  }
  return done
}
