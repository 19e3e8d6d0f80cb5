import {
  type BreakdownInput,
  counted,
  formatLength,
  formatWithUnit,
  isSheetName,
  type LayoutNow,
  type LengthDisplay,
  type LyingNow,
  type Mm,
  priceIn,
  type Rect,
  type SheetJob,
  type Step,
  type StepPiece,
  stockFor,
  type Taken,
  takenBy,
} from '../../engine/index'
import type { Layout } from '../store/state'

export const TOOLS: Record<Step['tool'], string> = { guides: 'guides', bench: 'bench', rail: 'rail' }

/** `2 strips`, `1 piece to cut further`, `2 pieces of waste`. */
export function piecesWords({ kind, count }: Pick<StepPiece, 'kind' | 'count'>): string {
  switch (kind) {
    case 'strip':
    case 'part':
      return counted(count, kind)
    case 'piece':
      return `${counted(count, 'piece')} to cut further`
    case 'offcut':
      return `${counted(count, 'offcut')} to keep`
    case 'waste':
      return count === 1 ? 'waste' : `${count} pieces of waste`
  }
}

/** `2440 × 1220 mm`. */
export function sizeWords(length: Mm, width: Mm, display: LengthDisplay): string {
  return `${formatLength(length, display)} × ${formatWithUnit(width, display)}`
}

/** `2440 × 551.6 mm, clean 2420 × 541.6 mm`; of a sheet as it came, and of a piece without factory edges, its size alone. */
export function roughWords(
  { width: length, height: width }: Pick<Rect, 'width' | 'height'>,
  clean: { readonly length: Mm; readonly width: Mm },
  isWhole: boolean,
  display: LengthDisplay,
): string {
  const size = sizeWords(length, width, display)
  const isClean = clean.length === length && clean.width === width
  return isWhole || isClean ? size : `${size}, clean ${sizeWords(clean.length, clean.width, display)}`
}

/** `1 h 25 min`. */
export function timeWords(minutes: number): string {
  const whole = Math.round(minutes)
  return whole < 60 ? `${whole} min` : `${Math.floor(whole / 60)} h ${whole % 60} min`
}

/** `9 sheets and 1 offcut`. */
export function takenWords({ sheets, offcuts }: Taken): string {
  const words = [
    ...(sheets > 0 || offcuts === 0 ? [counted(sheets, 'sheet')] : []),
    ...(offcuts > 0 ? [counted(offcuts, 'offcut')] : []),
  ]
  return words.join(' and ')
}

/** Counts what is cut, and says whether less would do and what is still looked for. */
export function countWords(layout: Pick<Layout, 'job' | 'answer' | 'isSettled' | 'isStopped'>): string {
  const { job, answer, isSettled, isStopped } = layout
  const taken = takenBy(job, answer)
  const words = takenWords(taken)
  const left = leftCount(answer)
  if (left > 0) {
    // What no sheet can give is looked for by nobody.
    const isHopeless = answer.unplaced.every(({ part }) => stockFor(job, part).length === 0)
    const room = isHopeless
      ? ''
      : isStopped
        ? ' Looking for room was stopped.'
        : isSettled
          ? ''
          : ' Still looking for room.'
    return `${words}; ${onNoSheetWords(left)}.${room}`
  }
  const looking = answer.mayCostLess ? `; ${dearerWords(layout)}` : lookingWords(layout)
  if (answer.proved) return `${words}, and no layout ${ofPartsWords(job)} needs fewer${directionWords(job)}${looking}.`
  const least = `any layout ${ofPartsWords(job)} needs at least ${boundOf(answer)}${taken.offcuts > 0 ? ', offcuts counted' : ''}${directionWords(job)}`
  const keeping = keepingWords(job)
  if (answer.provedWithLocked) return `${words}, and no layout that ${keeping} needs fewer; ${least}${looking}.`
  const less = `${lessWords(job, taken)}${keeping === '' ? '' : ` that ${keeping}`}`
  const found = isStopped ? 'was found before looking was stopped' : 'was found'
  return `${words}; ${least}. ${isSettled ? `None ${less} ${found}` : `Still looking for one ${less}`}.`
}

/** Whether a sheet is chosen for some board. */
export function isPinned({ parts }: SheetJob): boolean {
  return parts.some(({ from, sheet }) => from !== undefined || sheet !== undefined)
}

/** Where boards are pinned, layouts that do not mind it are not spoken of. */
export function ofPartsWords(job: SheetJob): string {
  return `of these parts${isPinned(job) ? ', cut from the sheets chosen for them,' : ''}`
}

/** `, cut in three directions with the rip first`: what a proof is of, where directions are limited; nothing where not. */
export function directionWords({ stages = 3, firstCut = 'rip' }: SheetJob): string {
  if (stages === null) return ''
  const first = firstCut === 'any' ? '' : ` with the ${firstCut} first`
  return `, cut in ${stages === 2 ? 'two' : 'three'} directions${first}`
}

/** `keeps the 3 kept sheets`; nothing where none is kept. */
export function keepingWords({ locked = [] }: SheetJob): string {
  const kept = locked.reduce((sum, { copies }) => sum + copies, 0)
  return kept === 0 ? '' : `keeps the ${kept === 1 ? 'kept sheet' : `${kept} kept sheets`}`
}

/** The least that any layout needs, over all materials. */
export function boundOf({ bounds }: Pick<Layout['answer'], 'bounds'>): number {
  return Object.values(bounds).reduce((sum, least) => sum + least, 0)
}

/** What the packer looks for first: what costs less, where an offcut costs nothing and every sheet of a kind is alike. */
function lessWords(job: SheetJob, { offcuts }: Taken): string {
  if (isMixed(job) && !job.isCountFirst) return 'that costs less'
  return offcuts > 0 ? 'with fewer new sheets' : 'with fewer'
}

/** Whether some board has sheets at several prices. */
function isMixed(job: SheetJob): boolean {
  const bought = job.stock.filter(({ offcut, excluded }) => !offcut && !excluded)
  return bought.some((stock) => {
    return bought.some((other) => other.material === stock.material && priceIn(job, other) !== priceIn(job, stock))
  })
}

/** Fewer sheets are not to be had, but what they cost is a matter of its own. */
function dearerWords({ job, isSettled, isStopped }: Pick<Layout, 'job' | 'isSettled' | 'isStopped'>): string {
  const less = isMixed(job) ? 'that costs less' : 'with fewer new sheets'
  if (isStopped) return `looking for one ${less} was stopped`
  return isSettled ? `whether there is one ${less} is not known, and none was found` : `still looking for one ${less}`
}

/** What becomes of the sheets before this plan; nothing where it is the first. */
export function begunBeforeWords({ firstSheet = 1 }: Pick<BreakdownInput, 'firstSheet'>): string | null {
  if (firstSheet === 1) return null
  return 'Sheets that were begun before this plan are known by their pieces: choose the piece that is damaged, and tell a part that was cut before as spoiled.'
}

/** `3 boards are on no sheet`. */
export function onNoSheetWords(count: number): string {
  return `${counted(count, 'board is', 'boards are')} on no sheet`
}

/** How many boards are on no sheet. */
export function leftCount({ unplaced }: Pick<Layout['answer'], 'unplaced'>): number {
  return unplaced.reduce((sum, { quantity }) => sum + quantity, 0)
}

const GOALS = { leftover: 'a larger offcut', settings: 'fewer settings' } as const

/** What is looked for once no layout needs fewer sheets; nothing where the maker wants no more. */
function searchWords({ goals = ['leftover', 'settings'] }: SheetJob): string {
  return goals.map((goal) => GOALS[goal]).join(' and ')
}

/** `At hand: 7 sheets and 14 pieces, 16 of them still to be cut; to be bought: 1`. */
export function handWords(hand: readonly Pick<LyingNow, 'isWhole' | 'isToBuy' | 'isToCut'>[]): string {
  const there = hand.filter(({ isToBuy }) => !isToBuy)
  const whole = there.filter(({ isWhole }) => isWhole).length
  const pieces = there.length - whole
  const things = [...(whole > 0 ? [counted(whole, 'sheet')] : []), ...(pieces > 0 ? [counted(pieces, 'piece')] : [])]
  const left = there.filter(({ isToCut }) => !isToCut).length
  const toCut = there.length - left
  const which = left === 0 ? '' : toCut === 0 ? ', left over' : `, ${toCut} of them still to be cut`
  const toBuy = hand.length - there.length
  return `At hand: ${things.join(' and ') || 'nothing'}${which}${toBuy > 0 ? `; to be bought: ${toBuy}` : ''}`
}

/** `; still looking for a larger offcut`, where no layout needs fewer sheets; nothing when that is over. */
export function lookingWords({ job, isSettled, isStopped }: Pick<Layout, 'job' | 'isSettled' | 'isStopped'>): string {
  const search = searchWords(job)
  if (search === '' || (isSettled && !isStopped)) return ''
  return isStopped ? `; looking for ${search} was stopped` : `; still looking for ${search}`
}

/** What the layouts on screen are while something is being cut, and how far it has come. */
export function cuttingWords(
  now: readonly Pick<LayoutNow, 'name' | 'sheet' | 'state' | 'isToBuy'>[],
  before: number,
): string {
  const sheets = now.filter(({ name, sheet }) => isSheetName(name, sheet)).length
  const pieces = now.length - sheets
  const what = [...(sheets > 0 ? [counted(sheets, 'sheet')] : []), ...(pieces > 0 ? [counted(pieces, 'piece')] : [])]
  const count = (state: LayoutNow['state']) => now.filter((one) => one.state === state).length
  const toBuy = now.filter(({ isToBuy }) => isToBuy).map(({ name }) => name)
  const buy = toBuy.length > 0 ? ` Still to be bought: ${toBuy.join(', ')}.` : ''
  const earlier =
    before > 0
      ? ` ${counted(before, 'part')} ${before === 1 ? 'was' : 'were'} cut before this plan and ${before === 1 ? 'is' : 'are'} on none of them.`
      : ''
  return `What is being cut, as the steps have it: ${what.join(' and ') || 'nothing'}, ${count('cut')} cut and ${count('begun')} begun. A part that is cut is struck through.${earlier}${buy}`
}

/** What the search has done by its own count, which is neither steps at the saw nor layouts. */
export function roundsWords(rounds: number): string {
  return `${counted(rounds, 'round')} of looking so far`
}
