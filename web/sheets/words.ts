import {
  counted,
  formatLength,
  formatWithUnit,
  type LengthDisplay,
  type Mm,
  type Step,
  type StepPiece,
} from '../../engine/index'

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

/** `1 h 25 min`. */
export function timeWords(minutes: number): string {
  const whole = Math.round(minutes)
  return whole < 60 ? `${whole} min` : `${Math.floor(whole / 60)} h ${whole % 60} min`
}
