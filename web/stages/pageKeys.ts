import { pageCommand } from '../input/keys'
import { saveFile } from '../store/keeping'
import { proposalOf } from '../store/proposing'
import { useStore } from '../store/store'
import { openPickedFile } from './openFile'

/** What Escape closes before it lets a selection go. */
const LAYERS = 'dialog[open], [role=dialog], [role=menu], [role=listbox]'

/** Escape that closes nothing else lets go what is selected, wherever the keys are. A field that was typed in keeps it to itself. */
function letGo(event: KeyboardEvent): void {
  if (event.defaultPrevented || document.querySelector(LAYERS)) return
  const state = useStore.getState()
  if (state.isAtBench || proposalOf(state)) return
  if (state.placing) state.actions.place(null)
  else if (state.selection.kind !== 'nothing') state.actions.select({ kind: 'nothing' })
}

/**
 * Undo, redo, open and save work wherever the keys are, but a field keeps its own undo. Escape lets go what is selected.
 */
export function listenToPageKeys(): void {
  addEventListener('keydown', (event) => {
    if (event.key === 'Escape') return letGo(event)
    const command = pageCommand({
      key: event.key,
      hasShift: event.shiftKey,
      hasCtrl: event.ctrlKey || event.metaKey,
      hasAlt: event.altKey,
    })
    if (!command) return
    const { actions } = useStore.getState()
    const isTyping = event.target instanceof Element && event.target.matches('input:not([type=range], [type=checkbox])')
    if (isTyping && (command.kind === 'undo' || command.kind === 'redo')) return
    event.preventDefault()
    if (command.kind === 'undo') actions.undo()
    if (command.kind === 'redo') actions.redo()
    if (command.kind === 'openFile') void openPickedFile()
    if (command.kind === 'saveFile') saveFile()
  })
}
