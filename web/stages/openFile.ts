import { chooseFile } from '../files/chooser'
import { openText } from '../store/keeping'
import { useStore } from '../store/store'

/** More than this is no project of ours; it is not even read. */
const MOST_BYTES = 20_000_000

/** Opens a project file that the person picks. A file that cannot be read changes nothing. */
export async function openPickedFile(): Promise<void> {
  const file = await chooseFile('.json,application/json')
  if (!file) return
  const { actions } = useStore.getState()
  if (file.size > MOST_BYTES) {
    return actions.say('stop', `${file.name} has ${file.size} bytes; a project has ${MOST_BYTES} at most.`)
  }
  try {
    await openText(await file.text())
  } catch (reason) {
    actions.say('stop', `${file.name} could not be read: ${reason instanceof Error ? reason.message : String(reason)}`)
  }
}
