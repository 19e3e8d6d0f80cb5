import type { Step, StepPiece } from '../../engine/index'

export const TOOLS: Record<Step['tool'], string> = { guides: 'guides', bench: 'bench', rail: 'rail' }

export const KINDS: Record<StepPiece['kind'], string> = {
  strip: 'strip',
  part: 'part',
  piece: 'to cut',
  offcut: 'offcut to keep',
  waste: 'waste',
}

/** `1 h 25 min`. */
export function timeWords(minutes: number): string {
  const whole = Math.round(minutes)
  return whole < 60 ? `${whole} min` : `${Math.floor(whole / 60)} h ${whole % 60} min`
}
