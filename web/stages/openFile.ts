import { chooseFile } from '../files/chooser'
import { openText } from '../store/keeping'
import { useStore } from '../store/store'

/** More than this is no file of ours; it is not even read. */
const MOST_BYTES = 20_000_000

/** Opens a project file that the person picks. A file that cannot be read changes nothing. */
export async function openPickedFile(): Promise<void> {
  const text = await pickedText()
  if (text !== null) await openText(text)
}

/** The text of a file that the person picks; null when none is picked, or when it cannot be read, which is then said. */
export async function pickedText(): Promise<string | null> {
  const file = await chooseFile('.json,application/json')
  if (!file) return null
  const { actions } = useStore.getState()
  if (file.size > MOST_BYTES) {
    actions.say('stop', `${file.name} has ${file.size} bytes; ${MOST_BYTES} is the most.`)
    return null
  }
  try {
    return await file.text()
  } catch (reason) {
    actions.say('stop', `${file.name} could not be read: ${reason instanceof Error ? reason.message : String(reason)}`)
    return null
  }
}
