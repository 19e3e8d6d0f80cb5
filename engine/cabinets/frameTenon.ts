import { METHOD } from '../basics/source'
import type { FaceFrame } from '../project/method'
import { type Mm, settle } from '../units/length'
import type { Report } from './report'

/**
 * How far the members of a face frame sink into one another. Two tenons come into a mullion from its two sides and must not
 * meet in it; where they would, the members are butted.
 */
export function tenonIn({ joint, stile, topRail, bottomRail, mullion }: FaceFrame, report: Report): Mm {
  if (joint.kind === 'pocketScrews') return 0
  const length = settle(joint.length)
  const [narrowest, shared] = [Math.min(stile, topRail, bottomRail), mullion]
  if (length > 0 && length < narrowest && 2 * length < shared) return length
  const most = report.say(Math.min(narrowest, shared / 2))
  report.stop(
    `the tenons of its face frame would be ${report.say(length)} long; they must be shorter than ${most} in its members. The members are butted instead.`,
    { is: length, limit: `under ${most}`, source: METHOD, way: 'shorterTenon' },
  )
  return 0
}
