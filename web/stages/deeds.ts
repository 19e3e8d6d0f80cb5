import type { Deed } from '../input/commands'
import { useStore } from '../store/store'

/** Makes the edit of a command and selects what it is about, or says why not. */
export function doDeed(deed: Deed): void {
  const { actions } = useStore.getState()
  if (deed.kind === 'refuse') {
    actions.say('stop', `${deed.why}.`)
    return
  }
  actions.commit(deed.edit, deed.label)
  actions.select(deed.select.length > 0 ? { kind: 'cabinets', ids: deed.select } : { kind: 'nothing' })
}
