import type { Problem } from '../basics/problem'
import { buildCabinet } from '../cabinets/buildCabinet'
import { USUAL_TENON } from '../project/frames'
import { settle } from '../units/length'
import { type Changed, withChoices, withInside } from './changed'
import type { Checked, Remedy } from './finding'
import { sayIn } from './say'

type Way = Changed & { readonly label: string }

/** What cures a problem of the build by one choice of its cabinet, tried before it is offered; null where nothing does. */
export function builtWay(way: Problem['way'], checked: Checked): Remedy | null {
  const tried = wayFor(way, checked)
  if (!tried) return null
  const { cabinet, rules } = tried.changed
  const before = buildCabinet(checked.cabinet, checked.rules).problems
  const after = buildCabinet(cabinet, rules).problems
  const isCured = after.length < before.length && after.every((one) => one.way !== way)
  return isCured ? { label: tried.label, edit: tried.edit } : null
}

function wayFor(way: Problem['way'], checked: Checked): Way | null {
  if (way === 'flushFrame') return flushFrame(checked)
  if (way === 'shorterTenon') return shorterTenon(checked)
  return way === 'noShelves' ? withoutShelves(checked) : null
}

/** The frame ends with the carcass wherever a finished end stands. */
function flushFrame(checked: Checked): Way | null {
  const { faceFrame } = checked.rules.method
  const { beside } = checked.cabinet
  if (!faceFrame) return null
  const isEnd = (side: 'left' | 'right') => beside[side].kind === 'skin' || beside[side].kind === 'panel'
  const pasts = { ...(isEnd('left') && { pastLeft: 0 }), ...(isEnd('right') && { pastRight: 0 }) }
  const where = isEnd('left') && isEnd('right') ? 'both sides' : isEnd('left') ? 'its left' : 'its right'
  const label = `Let the face frame of ${checked.mark} end flush at ${where}`
  return { ...withChoices(checked, { faceFrame: { ...faceFrame, ...pasts } }), label }
}

/** As long as is usual, or a third of the narrowest member where that is shorter: two of them leave wood between. */
function shorterTenon(checked: Checked): Way | null {
  const { faceFrame } = checked.rules.method
  if (!faceFrame) return null
  const narrowest = Math.min(faceFrame.stile, faceFrame.topRail, faceFrame.bottomRail, faceFrame.mullion)
  const length = 2 * USUAL_TENON < narrowest ? USUAL_TENON : settle(narrowest / 3)
  const label = `Make the tenons of the face frame of ${checked.mark} ${sayIn(checked.display).length(length)} long`
  return { ...withChoices(checked, { faceFrame: { ...faceFrame, joint: { kind: 'tenon', length } } }), label }
}

function withoutShelves(checked: Checked): Way {
  const { interior } = checked.cabinet
  const { fixedAt: _, bays: __, dividers: ___, rollOuts: ____, ...others } = interior
  const label = `Leave the shelves and partitions out of ${checked.mark}`
  return { ...withInside(checked, { ...others, fixedShelves: 0, adjustableShelves: 0, partition: null }), label }
}
