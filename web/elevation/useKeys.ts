import { type KeyboardEvent, type RefObject, useCallback, useEffect, useRef } from 'react'
import { type Cabinet, type CabinetId, type Mm, valuesOf } from '../../engine/index'
import { addedFirst, type Deed, duplicated, nudged, removed } from '../input/commands'
import { type Command, wallCommand } from '../input/keys'
import { chosenCabinets } from '../store/selection'
import { useStore } from '../store/store'
import type { ViewHands } from './useView'

interface Nudging {
  readonly ids: readonly CabinetId[]
  dx: Mm
  dy: Mm
}

/** The keys of the wall. Arrows that are held are one step of undo: it is made when they are let go. */
export function useKeys(
  host: RefObject<HTMLElement | null>,
  views: ViewHands,
  isSpaceDown: RefObject<boolean>,
  announce: (text: string) => void,
  typeWidth: (id: CabinetId) => void,
) {
  const nudging = useRef<Nudging | null>(null)

  const settleNudge = useCallback(() => {
    const doing = nudging.current
    nudging.current = null
    if (!doing) return
    const { history, actions } = useStore.getState()
    const { edit, words } = nudged(history.present, doing.ids, doing.dx, doing.dy)
    if (!edit || !words?.fits) return actions.preview(null)
    actions.commit(edit)
    announce(words.text)
  }, [announce])

  const nudge = useCallback((ids: readonly CabinetId[], dx: Mm, dy: Mm) => {
    const { history, actions } = useStore.getState()
    const doing = nudging.current ?? { ids, dx: 0, dy: 0 }
    const outcome = nudged(history.present, doing.ids, doing.dx + dx, doing.dy + dy)
    if (!outcome.words?.fits) return actions.say('stop', `${outcome.words?.text ?? 'Nothing is selected'}.`)
    doing.dx += dx
    doing.dy += dy
    nudging.current = doing
    actions.preview(outcome.edit, { ...outcome.words, about: outcome.about })
  }, [])

  const onKeyDown = useCallback(
    (event: KeyboardEvent<HTMLElement>) => {
      if (event.target instanceof HTMLElement && event.target.closest('[data-nohand], [data-tray]')) return
      if (event.key === ' ') {
        isSpaceDown.current = true
        return event.preventDefault()
      }
      const focused = cabinetIn(event.target)
      if (event.key === 'Enter' && focused) {
        event.preventDefault()
        return typeWidth(focused)
      }
      const press = {
        key: event.key,
        hasShift: event.shiftKey,
        hasCtrl: event.ctrlKey || event.metaKey,
        hasAlt: event.altKey,
      }
      const command = wallCommand(press, useStore.getState().history.present)
      if (!command) return
      event.preventDefault()
      obey(command, focused)
    },
    [isSpaceDown, nudge, typeWidth, views],
  )

  function obey(command: Command, focused: CabinetId | null) {
    const { history, selection, actions, placing } = useStore.getState()
    const chosen = chosenCabinets(selection)
    const ids = focused && !chosen.includes(focused) ? [focused] : chosen
    switch (command.kind) {
      case 'nudge':
        if (focused && ids !== chosen) actions.select({ kind: 'cabinets', ids })
        return nudge(ids, command.dx, command.dy)
      case 'add':
        return doDeed(addedFirst(history.present, command.cabinet, useStore.getState().wall), announce, host.current)
      case 'duplicate':
        return doDeed(duplicated(history.present, ids), announce, host.current)
      case 'delete':
        return doDeed(removed(history.present, ids), announce, host.current)
      case 'selectAll':
        return actions.select({
          kind: 'cabinets',
          ids: valuesOf<Cabinet>(history.present.cabinets).map(({ id }) => id),
        })
      case 'drop':
        if (!placing) return actions.select({ kind: 'nothing' })
        host.current?.focus({ preventScroll: true })
        return actions.place(null)
      case 'fit':
        return views.fit()
      case 'zoom':
        return views.zoomMiddle(command.by)
      default:
        return
    }
  }

  const onKeyUp = useCallback(
    (event: KeyboardEvent<HTMLElement>) => {
      if (event.key.startsWith('Arrow')) settleNudge()
      if (event.key !== ' ') return
      isSpaceDown.current = false
      const focused = cabinetIn(event.target)
      if (focused) useStore.getState().actions.toggleCabinet(focused)
    },
    [isSpaceDown, settleNudge],
  )

  useEffect(() => {
    addEventListener('blur', settleNudge)
    return () => removeEventListener('blur', settleNudge)
  }, [settleNudge])

  return { onKeyDown, onKeyUp, onBlur: settleNudge }
}

/** Makes the edit of a command, selects what it is about and keeps the keys on the wall. */
export function doDeed(deed: Deed, announce: (text: string) => void, host: HTMLElement | null): void {
  const { actions } = useStore.getState()
  if (deed.kind === 'refuse') {
    actions.say('stop', `${deed.why}.`)
    return
  }
  actions.commit(deed.edit, deed.label)
  const [id] = deed.select
  actions.select(id ? { kind: 'cabinets', ids: deed.select } : { kind: 'nothing' })
  announce(deed.said)
  requestAnimationFrame(() => focusCabinet(host, deed.select.length === 1 ? (id ?? null) : null))
}

/** The keys go to a cabinet, or to the wall as a whole. */
export function focusCabinet(host: HTMLElement | null, id: CabinetId | null): void {
  const drawn = id && host?.querySelector<SVGElement>(`[data-cabinet="${CSS.escape(id)}"]`)
  if (drawn) drawn.focus({ preventScroll: true })
  else host?.focus({ preventScroll: true })
}

function cabinetIn(element: EventTarget): CabinetId | null {
  const found = element instanceof Element ? element.closest<SVGElement>('[data-cabinet]') : null
  return (found?.dataset.cabinet as CabinetId | undefined) ?? null
}
