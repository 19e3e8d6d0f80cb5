import {
  demonstrationKitchen,
  newProject,
  type Project,
  type ProjectId,
  readProject,
  writeProject,
} from '../../engine/index'
import { download, fileNameOf } from '../files/chooser'
import { createKeeper, type Kept, shelvedOf } from '../files/keeper'
import { nameBeside } from '../files/names'
import { openShelf, type Shelf, type Shelved } from '../files/shelf'
import { createTurnstile } from '../files/turnstile'
import { useStore } from './store'

/** What the list of projects shows. */
export type ProjectCard = Pick<Shelved, 'id' | 'name' | 'cabinets' | 'at'>

let opening: Promise<Shelf> | null = null

/** The shelf; when it is lost or cannot be opened it is tried anew the next time. */
export function shelf(): Promise<Shelf> {
  opening ??= openShelf(() => {
    opening = null
  }).catch((reason: unknown) => {
    opening = null
    throw reason
  })
  return opening
}

const keeper = createKeeper(shelf, showKept)

const turnstile = createTurnstile({
  onPushedOut() {
    keeper.stop()
    useStore.setState({ isElsewhere: true })
  },
  onAskedToSave: () => keeper.flush(),
})

function showKept(kept: Kept) {
  const { saving } = useStore.getState()
  const at = kept.state === 'saved' ? kept.at : saving.at
  const why = kept.state === 'failed' ? kept.why : null
  useStore.setState({ saving: { state: kept.state, at, why } })
}

/**
 * Brings back the project last at work, or opens the demonstration kitchen, and only then begins to save. Resolves when
 * there is something to show.
 */
export function startKeeping(): Promise<void> {
  started ??= bringBack()
  return started
}

/** Nothing is opened over what has not been read yet. */
let started: Promise<void> | null = null

async function bringBack(): Promise<void> {
  let last: Shelved | null = null
  try {
    last = await (await shelf()).last()
  } catch (reason) {
    showKept({ state: 'failed', why: reason instanceof Error ? reason.message : String(reason) })
  }
  const read = last ? readProject(last.text) : null
  await bring(read?.ok ? { ...read.value, id: last!.id } : { ...demonstrationKitchen(), id: freshId() }, !read?.ok)
  if (read && !read.ok) useStore.getState().actions.say('stop', `${last!.name} could not be read: ${read.message}`)
  useStore.subscribe((state, before) => {
    if (state.history.present === before.history.present || state.isElsewhere) return
    if (state.history.present.id === before.history.present.id) keeper.keep(state.history.present)
  })
  const saveNow = () => void keeper.flush()
  addEventListener('pagehide', saveNow)
  document.addEventListener('visibilitychange', saveNow)
}

/**
 * Opens a project in this window: what was open is saved first, and this tab asks for the right to write. A project that
 * lies on the shelf is noted as the one at work before it is shown, so that whatever is seen comes back after a reload.
 */
async function bring(project: Project, isNew: boolean): Promise<void> {
  await keeper.flush()
  keeper.stop()
  const isOurs = await turnstile.enter(project.id)
  if (isOurs && !isNew) await remember(project.id)
  useStore.getState().actions.open(project)
  useStore.setState({ isElsewhere: !isOurs })
  if (!isOurs) return
  keeper.start()
  if (isNew) keeper.keep(project)
}

async function remember(id: ProjectId) {
  try {
    await (await shelf()).setLast(id)
  } catch (reason) {
    showKept({ state: 'failed', why: reason instanceof Error ? reason.message : String(reason) })
  }
}

/** A name that no other project has, on this machine or another. */
function freshId(): ProjectId {
  return `p-${crypto.randomUUID()}` as ProjectId
}

/**
 * Opens the text of a project file as a project of its own, which is told where there is one of its name already; a file
 * that cannot be read changes nothing.
 */
export async function openText(text: string): Promise<void> {
  await startKeeping()
  const { actions } = useStore.getState()
  const read = readProject(text)
  if (!read.ok) return actions.say('stop', read.message)
  const { name } = read.value
  const own = nameBeside(name, await namesHere())
  await bring({ ...read.value, id: freshId(), name: own }, true)
  if (own === name) actions.hush()
  else
    actions.say('know', `There is a project ${name} in this browser already. The file was opened beside it as ${own}.`)
}

/** Of all projects in this browser and the one that is open; of that one alone where the browser keeps none. */
async function namesHere(): Promise<string[]> {
  const { name } = useStore.getState().history.present
  try {
    return [name, ...(await listProjects()).map((card) => card.name)]
  } catch {
    return [name]
  }
}

export async function startNew(unit: 'mm' | 'in'): Promise<void> {
  const fresh = newProject(unit)
  await bring({ ...fresh, id: freshId(), name: nameBeside(fresh.name, await namesHere()) }, true)
}

export async function listProjects(): Promise<ProjectCard[]> {
  await keeper.flush()
  return (await shelf()).list()
}

export async function openShelved(id: ProjectId): Promise<void> {
  if (id === useStore.getState().history.present.id) return
  await keeper.flush()
  const kept = await (await shelf()).get(id)
  if (!kept) return useStore.getState().actions.say('stop', 'That project is no longer there.')
  const read = readProject(kept.text)
  if (!read.ok) return useStore.getState().actions.say('stop', `${kept.name} could not be read: ${read.message}`)
  await bring({ ...read.value, id }, false)
}

/** Puts a copy beside a project without opening it. */
export async function duplicateShelved(id: ProjectId): Promise<void> {
  const kept = await (await shelf()).get(id)
  const read = kept && readProject(kept.text)
  if (!read) return
  if (!read.ok) return useStore.getState().actions.say('stop', `${kept.name} could not be read: ${read.message}`)
  const name = nameBeside(`${read.value.name.slice(0, 73)} copy`, await namesHere())
  const copy = { ...read.value, id: freshId(), name }
  await (await shelf()).put(shelvedOf(copy, new Date()))
  await (await shelf()).setLast(useStore.getState().history.present.id)
}

/** Takes a project off the shelf. The one that is open cannot be. */
export async function removeShelved(id: ProjectId): Promise<void> {
  if (id !== useStore.getState().history.present.id) await (await shelf()).remove(id)
}

/** Makes this tab the one that writes, from what the other tab saved last. */
export async function takeOver(): Promise<void> {
  const { id } = useStore.getState().history.present
  await turnstile.takeOver(id)
  const kept = await (await shelf()).get(id)
  const read = kept && readProject(kept.text)
  if (read?.ok) useStore.getState().actions.open({ ...read.value, id })
  useStore.setState({ isElsewhere: false })
  keeper.start()
}

/** Hands the project to the browser as a file. */
export function saveFile(): void {
  const { present } = useStore.getState().history
  download(fileNameOf(present.name), writeProject(present), 'application/json')
}
