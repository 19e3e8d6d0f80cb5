import { type Mm, settle } from '../units/length'
import type { Report } from './report'

type Size = { readonly fixed: Mm } | { readonly share: number; readonly more?: Mm }

/** What is shared out, and of what, as a message says it. */
interface Words {
  readonly one: string
  readonly long: string
  readonly between: string
  readonly of: string
}

/**
 * Lengths one after another, with something `between` each and the next: fixed ones are what they are, the others share
 * what is left of the whole, in mm. What does not come out is told.
 */
export function sharedOut(
  sizes: readonly Size[],
  whole: Mm,
  between: Mm,
  { one, long, between: gaps, of }: Words,
  report: Report,
): Mm[] {
  const fixed = sizes.reduce((sum, size) => sum + ('fixed' in size ? size.fixed : 0), 0)
  const more = sizes.reduce((sum, size) => sum + ('fixed' in size ? 0 : (size.more ?? 0)), 0)
  const shares = sizes.reduce((sum, size) => sum + ('share' in size ? size.share : 0), 0)
  const left = whole - between * (sizes.length - 1) - fixed - more
  const need = report.say(whole - left)
  if (shares === 0 && sizes.length > 0 && settle(left) !== 0) {
    const tell = left < 0 && one !== 'row' ? report.stop : report.mind
    tell(`its ${one}s with their ${gaps} are ${need} ${long} in all; the ${of} is ${report.say(whole)} ${long}.`, {
      is: need,
      limit: whole,
    })
  }
  if (shares > 0 && left <= 0 && whole > 0) {
    const taken = more > 0 ? (fixed > 0 ? `fixed ${one}s and the steps` : 'steps') : `fixed ${one}s`
    const others = more > 0 && fixed === 0 ? `topmost ${one}` : `other ${one}s`
    report.stop(
      `its ${taken} with the ${gaps} take ${need} of a ${of} that is ${report.say(whole)} ${long}; nothing is left for the ${others}.`,
      { is: need, limit: whole },
    )
  }
  return sizes.map((size) => settle('fixed' in size ? size.fixed : (left * size.share) / shares + (size.more ?? 0)))
}
