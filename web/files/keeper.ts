import { type Cabinet, type Project, valuesOf, writeProject } from '../../engine/index'
import type { Shelf } from './shelf'

export type Kept =
  | { readonly state: 'saved'; readonly at: string }
  | { readonly state: 'saving' }
  | { readonly state: 'failed'; readonly why: string }

export interface Keeper {
  /** Notes a changed project; it is written a moment later. */
  keep(project: Project): void
  /** Writes now what is noted. */
  flush(): Promise<void>
  /** From now on nothing is written: another tab writes. */
  stop(): void
  /** From now on what is noted is written. */
  start(): void
}

const WAIT_MS = 200
/** After a failure it is tried again, ever more patiently. */
const RETRY_MS = [2000, 5000, 10_000]

/**
 * Writes the project to the shelf a moment after every edit, one write at a time, always the newest. It writes nothing
 * until it is started, so nothing is written before what was there has been read.
 */
export function createKeeper(shelf: () => Promise<Shelf>, tell: (kept: Kept) => void, now = () => new Date()): Keeper {
  let noted: Project | null = null
  let isStarted = false
  let writing: Promise<void> | null = null
  let failures = 0
  let timer: ReturnType<typeof setTimeout> | undefined

  function schedule(ms: number) {
    clearTimeout(timer)
    timer = setTimeout(() => void write(), ms)
  }

  function write(): Promise<void> {
    clearTimeout(timer)
    writing ??= writeAll().finally(() => {
      writing = null
    })
    return writing
  }

  async function writeAll() {
    while (isStarted && noted) {
      const project = noted
      const at = now()
      try {
        await (await shelf()).put(shelvedOf(project, at))
      } catch (reason) {
        tell({ state: 'failed', why: reason instanceof Error ? reason.message : String(reason) })
        return schedule(RETRY_MS[Math.min(failures++, RETRY_MS.length - 1)]!)
      }
      failures = 0
      if (noted === project) noted = null
      if (noted === null && isStarted) tell({ state: 'saved', at: clockOf(at) })
    }
  }

  return {
    keep(project) {
      noted = project
      if (!isStarted) return
      tell({ state: 'saving' })
      if (!writing) schedule(WAIT_MS)
    },
    flush: () => (noted && isStarted ? write() : Promise.resolve()),
    stop() {
      isStarted = false
      noted = null
      clearTimeout(timer)
    },
    start() {
      isStarted = true
      if (noted) schedule(0)
    },
  }
}

export function shelvedOf(project: Project, at: Date) {
  const cabinets = valuesOf<Cabinet>(project.cabinets).length
  return { id: project.id, name: project.name, text: writeProject(project), cabinets, at: at.toISOString() }
}

/** `10:42`. */
function clockOf(at: Date): string {
  return `${String(at.getHours()).padStart(2, '0')}:${String(at.getMinutes()).padStart(2, '0')}`
}
