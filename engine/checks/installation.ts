import { isHung } from '../project/builtBy'
import type { Cabinet, House } from '../project/document'
import { markOf } from '../project/mark'
import { inch, type LengthDisplay, type Mm } from '../units/length'
import { sayIn } from './say'

/** What to mind when cabinets are fixed, and which cabinets it is about: none for what holds for all of them. */
export interface InstallCaution {
  readonly text: string
  readonly cabinets: readonly string[]
  /** Whether the checks find the same in each of these cabinets, with its measure. */
  readonly isFinding: boolean
}

/** What hangs is screwed on by. Source: trade pages on wall cabinets, '#8 or #10 cabinet screws, usually 2-1/2" to 3" long'. */
const SCREW_LENGTHS: readonly [Mm, Mm] = [inch(2.5), inch(3)]

/** A wider wall cabinet takes four screws. Source: thehonestcarpenter.com, on hanging wall cabinets. */
const FOUR_SCREWS_OVER: Mm = inch(12)

/**
 * The usual cautions for what hangs on the wall and for talls. They replace neither local codes nor the instructions of the
 * makers of fixings, nor a licensed trade.
 * Sources: thehonestcarpenter.com (studs, number of screws, top rail); trade pages (sizes of screws); a page on hanging wall
 * cabinets (three to join two); J. Korean Wood Sci. 2021 (plywood); a carpenters' handbook (end grain); EN 14749 by its published scope (walls and their fixings are
 * not tested with a cabinet); tall cabinets: common practice, no source.
 */
export function installCautions(
  all: readonly Cabinet[],
  display: LengthDisplay,
  { studSpacing }: Pick<House, 'studSpacing'>,
): InstallCaution[] {
  const cabinets = all.filter(({ space }) => !space)
  if (cabinets.length === 0) return []
  const say = sayIn(display).length
  const [short, long] = SCREW_LENGTHS.map(say)
  const hung = cabinets.filter(isHung)
  const talls = cabinets.filter(({ kind }) => kind === 'tall')
  const wide = hung.filter(({ width }) => width > FOUR_SCREWS_OVER)
  const narrow = hung.filter(({ width }) => studSpacing !== null && width < studSpacing)
  return [
    about(
      hung,
      `Hung on the wall: cabinet screws, number 8 or 10 with a washer under the head or on it, ${short} to ${long} long, not drywall screws, through the nailer or the back rail into at least two studs, a wide one into three, or into sound masonry. The top rail first: it takes the pull. A second person or a lift holds the cabinet until it is fixed.`,
    ),
    about(wide, `Wider than ${say(FOUR_SCREWS_OVER)}: at least four screws.`),
    found(
      narrow,
      `Narrower than the ${say(studSpacing ?? 0)} from stud to stud, so one stud at most may lie behind it: put blocking in the wall or a rail across the studs first.`,
    ),
    hung.length > 1
      ? about(
          hung,
          'Joined to the next: at least three screws through the sides of both, where the arms of hinges hide them, with the frames or front edges clamped flush.',
        )
      : null,
    about(
      hung,
      'What is let hang on a screw counts for the side grain of solid wood. Plywood holds less than that sum says, and end grain 60 % of it in an old table, none by the codes: screws in the edges of boards carry nothing here.',
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
