import { broughtIn, type MethodId, readMethod, writeMethod } from '../../engine/index'
import { download, fileNameOf } from '../files/chooser'
import { useStore } from '../store/store'
import { pickedText } from './openFile'

/** Hands a build method to the browser as a file. */
export function saveMethod(id: MethodId): void {
  const { present } = useStore.getState().history
  const text = writeMethod(present, id)
  if (text !== null) {
    download(fileNameOf(present.methods[id]!.name, 'casewright-method', 'Build method'), text, 'application/json')
  }
}

/** A method that was brought in, and what has to be said of its boards. */
export interface Arrival {
  readonly id: MethodId
  readonly told: readonly string[]
}

/** Brings in a build method from a file that the person picks. A file that cannot be read changes nothing. */
export async function bringInMethod(): Promise<Arrival | null> {
  const text = await pickedText()
  if (text === null) return null
  const { history, actions, isElsewhere } = useStore.getState()
  const read = readMethod(text)
  if (!read.ok) {
    actions.say('stop', read.message)
    return null
  }
  const { edit, told } = broughtIn(history.present, read.value)
  actions.commit(edit)
  if (isElsewhere) return null
  actions.say('know', `${edit.method.name} is there to be built by.`)
  return { id: edit.method.id, told }
}
