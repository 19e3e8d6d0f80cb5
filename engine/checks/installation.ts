import { isHung } from '../project/builtBy'
import type { Cabinet, House } from '../project/document'
import { markOf } from '../project/mark'
import { formatWithUnit } from '../units/format'
import { inch, type LengthDisplay, type Mm } from '../units/length'

/** What to mind when cabinets are fixed, and which cabinets it is about: none for what holds for all of them. */
export interface InstallCaution {
  readonly text: string
  readonly cabinets: readonly string[]
  /** Whether the checks find the same in each of these cabinets, with its measure. */
  readonly isFinding: boolean
}

/** A wider wall cabinet takes four screws. Source: thehonestcarpenter.com, on hanging wall cabinets. */
const FOUR_SCREWS_OVER: Mm = inch(12)

/**
 * The usual cautions for what hangs on the wall and for talls. They replace neither local codes nor the instructions of the
 * makers of fixings, nor a licensed trade.
 * Sources: thehonestcarpenter.com (studs, screws, top rail); EN 14749 by its published scope (walls and their fixings are
 * not tested with a cabinet); tall cabinets: common practice, no source.
 */
export function installCautions(
  cabinets: readonly Cabinet[],
  display: LengthDisplay,
  { studSpacing }: Pick<House, 'studSpacing'>,
): InstallCaution[] {
  if (cabinets.length === 0) return []
  const say = (length: Mm) => formatWithUnit(length, display)
  const hung = cabinets.filter(isHung)
  const talls = cabinets.filter(({ kind }) => kind === 'tall')
  const wide = hung.filter(({ width }) => width > FOUR_SCREWS_OVER)
  const narrow = hung.filter(({ width }) => studSpacing !== null && width < studSpacing)
  return [
    about(
      hung,
      'Hung on the wall: screws for cabinets, not drywall screws, through the nailer or the back rail into at least two studs or sound masonry. The top rail first: it takes the pull. A second person or a lift holds the cabinet until it is fixed.',
    ),
    about(wide, `Wider than ${say(FOUR_SCREWS_OVER)}: at least four screws.`),
    found(
      narrow,
      `Narrower than the ${say(studSpacing ?? 0)} from stud to stud, so one stud at most may lie behind it: put blocking in the wall or a rail across the studs first.`,
    ),
    about(
      hung,
      'A tested cabinet says nothing of the wall: furniture standards leave the wall and its fixings out. Where the wall is in doubt, ask someone who may judge it.',
    ),
    found(
      talls,
      'Tall: fix it to the wall at its top before anything is put into it, and keep what is heavy at the bottom. It can fall on whoever opens a drawer or climbs it.',
    ),
    about(talls, 'Carry and tilt a tall cabinet with two people, and see that its diagonal clears the ceiling.'),
    {
      text: 'Before a wall is drilled, find the cables and pipes in it. Electricity, gas and water are for licensed trades; local codes and the instructions of the makers come first.',
      cabinets: [],
      isFinding: false,
    },
  ].filter((caution): caution is InstallCaution => caution !== null)
}

function about(cabinets: readonly Cabinet[], text: string): InstallCaution | null {
  return cabinets.length > 0 ? { text, cabinets: cabinets.map(markOf), isFinding: false } : null
}

function found(cabinets: readonly Cabinet[], text: string): InstallCaution | null {
  const caution = about(cabinets, text)
  return caution && { ...caution, isFinding: true }
}
