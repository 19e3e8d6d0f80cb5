import type { CabinetId, NewKind } from '../../engine/index'
import type { Edge, Held, Target } from '../input/hand'

/** What of the drawing an event is on; null for what answers presses itself, such as fields and buttons. */
export function targetOf(element: EventTarget | null): Target | null {
  if (!(element instanceof Element) || element.closest('[data-nohand]')) return null
  const tray = element.closest<HTMLElement>('[data-tray]')
  if (tray) return { kind: 'tray', cabinet: tray.dataset.tray as NewKind }
  const handle = element.closest<SVGElement>('[data-handle]')
  if (handle) {
    return { kind: 'handle', id: handle.dataset.of as CabinetId, edge: handle.dataset.handle as Edge }
  }
  const divider = element.closest<SVGElement>('[data-divider]')
  if (divider) return { kind: 'divider', id: divider.dataset.of as CabinetId, path: divider.dataset.divider! }
  const cabinet = element.closest<SVGElement>('[data-cabinet]')
  if (cabinet) return { kind: 'cabinet', id: cabinet.dataset.cabinet as CabinetId }
  return { kind: 'wall' }
}

export function heldIn(event: {
  readonly ctrlKey: boolean
  readonly metaKey: boolean
  readonly altKey: boolean
  readonly shiftKey: boolean
}): Held {
  return { isFree: event.ctrlKey || event.metaKey, isPushing: event.altKey, isAdding: event.shiftKey }
}
