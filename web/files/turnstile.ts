import type { ProjectId } from '../../engine/index'

/** Lets one tab at a time write a project. */
export interface Turnstile {
  /** Whether this tab may now write the project; it lets go of the one before. */
  enter(id: ProjectId): Promise<boolean>
  /** Asks the other tab to save and takes its place. */
  takeOver(id: ProjectId): Promise<void>
}

interface Listener {
  /** Another tab has taken this tab's place. */
  onPushedOut(): void
  /** Another tab is about to take this tab's place: what is not saved should be now. */
  onAskedToSave(): Promise<void>
}

/** So long another tab is given to save before its place is taken. */
const PATIENCE_MS = 600

/** By the browser's locks. Where there are none, every tab writes. */
export function createTurnstile(listener: Listener): Turnstile {
  let letGo: (() => void) | null = null
  let held: ProjectId | null = null
  const channel = 'BroadcastChannel' in globalThis ? new BroadcastChannel('casewright') : null
  let heardSaved: (() => void) | null = null
  channel?.addEventListener('message', async ({ data }: MessageEvent<{ kind: string; id: string }>) => {
    if (data.kind === 'save' && data.id === held) {
      await listener.onAskedToSave()
      channel.postMessage({ kind: 'saved', id: data.id })
    }
    if (data.kind === 'saved') heardSaved?.()
  })

  function request(id: ProjectId, options: LockOptions): Promise<boolean> {
    letGo?.()
    return new Promise((resolve) => {
      navigator.locks
        .request(`casewright ${id}`, options, (lock) => {
          if (!lock) return resolve(false)
          held = id
          resolve(true)
          return new Promise<void>((done) => {
            letGo = () => {
              held = null
              letGo = null
              done()
            }
          })
        })
        .catch(() => {
          if (held !== id) return resolve(false)
          held = null
          letGo = null
          listener.onPushedOut()
        })
    })
  }

  return {
    enter: async (id) => (navigator.locks ? id === held || request(id, { ifAvailable: true }) : true),
    async takeOver(id) {
      if (!navigator.locks) return
      const saved = new Promise<void>((resolve) => {
        heardSaved = resolve
      })
      channel?.postMessage({ kind: 'save', id })
      await Promise.race([saved, new Promise((resolve) => setTimeout(resolve, PATIENCE_MS))])
      await request(id, { steal: true })
    },
  }
}
