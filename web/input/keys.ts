import type { CabinetKind, Mm, Project } from '../../engine/index'
import { nudgeOf } from './commands'

export interface KeyPress {
  readonly key: string
  readonly hasShift: boolean
  /** Ctrl, or the command key. */
  readonly hasCtrl: boolean
  readonly hasAlt: boolean
}

/** What a key asks for. */
export type Command =
  | { readonly kind: 'undo' | 'redo' | 'duplicate' | 'delete' | 'selectAll' | 'drop' | 'openFile' | 'saveFile' }
  | { readonly kind: 'add'; readonly cabinet: CabinetKind }
  | { readonly kind: 'nudge'; readonly dx: Mm; readonly dy: Mm }
  | { readonly kind: 'fit' }
  | { readonly kind: 'zoom'; readonly by: number }

const ADDS: Readonly<Record<string, CabinetKind>> = { b: 'base', u: 'upper', t: 'tall' }
const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
}

/** Commands that work anywhere on the page, unless a field has the keys. */
export function pageCommand({ key, hasShift, hasCtrl, hasAlt }: KeyPress): Command | null {
  if (!hasCtrl || hasAlt) return null
  switch (key.toLowerCase()) {
    case 'z':
      return { kind: hasShift ? 'redo' : 'undo' }
    case 'y':
      return { kind: 'redo' }
    case 'o':
      return { kind: 'openFile' }
    case 's':
      return { kind: 'saveFile' }
    default:
      return null
  }
}

/** Commands that work while the wall has the keys. */
export function wallCommand(press: KeyPress, project: Project): Command | null {
  const { key, hasShift, hasCtrl, hasAlt } = press
  if (hasAlt) return null
  if (hasCtrl) {
    if (key.toLowerCase() === 'd') return { kind: 'duplicate' }
    return key.toLowerCase() === 'a' ? { kind: 'selectAll' } : null
  }
  const arrow = ARROWS[key]
  if (arrow) {
    const step = nudgeOf(project, hasShift)
    return { kind: 'nudge', dx: arrow[0] * step, dy: arrow[1] * step }
  }
  const cabinet = ADDS[key.toLowerCase()]
  if (cabinet) return { kind: 'add', cabinet }
  switch (key) {
    case 'Delete':
    case 'Backspace':
      return { kind: 'delete' }
    case 'Escape':
      return { kind: 'drop' }
    case '0':
      return { kind: 'fit' }
    case '+':
    case '=':
      return { kind: 'zoom', by: 1.25 }
    case '-':
      return { kind: 'zoom', by: 0.8 }
    default:
      return null
  }
}
