import { pageCommand } from '../input/keys'
import { saveFile } from '../store/keeping'
import { useStore } from '../store/store'
import { openPickedFile } from './openFile'

/** Undo, redo, open and save work wherever the keys are, but a field keeps its own undo. */
export function listenToPageKeys(): void {
  addEventListener('keydown', (event) => {
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
