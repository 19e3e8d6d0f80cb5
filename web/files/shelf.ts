import { type DBSchema, type IDBPDatabase, openDB } from 'idb'
import type { ProjectId } from '../../engine/index'

/** A project as it lies on the shelf: the text of its file, and what the list of projects shows. */
export interface Shelved {
  readonly id: ProjectId
  readonly name: string
  readonly text: string
  readonly cabinets: number
  /** When it was saved, as the browser's clock had it; for people only. */
  readonly at: string
  /** Counts the saves of this browser, so that the order of saves hangs on no clock. */
  readonly turn: number
}

export interface Shelf {
  /** Saves a project and remembers it as the one that was last at work, in one transaction. */
  put(project: Omit<Shelved, 'turn'>): Promise<void>
  get(id: ProjectId): Promise<Shelved | null>
  /** The project last at work. */
  last(): Promise<Shelved | null>
  setLast(id: ProjectId): Promise<void>
  /** The one saved last comes first. */
  list(): Promise<Shelved[]>
  /** Takes a project off the shelf, and what was being cut of it. */
  remove(id: ProjectId): Promise<void>
  /** What is being cut of a project: anything that the browser can copy. */
  putCutting(id: ProjectId, cutting: unknown): Promise<void>
  getCutting(id: ProjectId): Promise<unknown>
  removeCutting(id: ProjectId): Promise<void>
  close(): void
}

interface Boards extends DBSchema {
  projects: { key: string; value: Shelved }
  notes: { key: string; value: string | number }
  cuttings: { key: string; value: unknown }
}

const NAME = 'casewright'

/** Opens the browser's own database. It throws where the browser keeps none. */
export async function openShelf(onLost: () => void = () => {}): Promise<Shelf> {
  const db = await openDB<Boards>(NAME, 2, {
    upgrade(fresh, before) {
      if (before < 1) {
        fresh.createObjectStore('projects', { keyPath: 'id' })
        fresh.createObjectStore('notes')
      }
      if (before < 2) fresh.createObjectStore('cuttings')
    },
    blocking: () => db.close(),
    terminated: onLost,
  })
  return shelfOn(db)
}

function shelfOn(db: IDBPDatabase<Boards>): Shelf {
  return {
    async put(project) {
      const deed = db.transaction(['projects', 'notes'], 'readwrite', { durability: 'strict' })
      const notes = deed.objectStore('notes')
      const turn = Number((await notes.get('turn')) ?? 0) + 1
      await Promise.all([
        deed.objectStore('projects').put({ ...project, turn }),
        notes.put(turn, 'turn'),
        notes.put(project.id, 'last'),
        deed.done,
      ])
    },
    get: async (id) => (await db.get('projects', id)) ?? null,
    async last() {
      const id = await db.get('notes', 'last')
      const named = id === undefined ? undefined : await db.get('projects', String(id))
      return named ?? newestFirst(await db.getAll('projects'))[0] ?? null
    },
    async setLast(id) {
      await db.put('notes', id, 'last')
    },
    list: async () => newestFirst(await db.getAll('projects')),
    async remove(id) {
      await db.delete('projects', id)
      await db.delete('cuttings', id)
    },
    async putCutting(id, cutting) {
      await db.put('cuttings', cutting, id)
    },
    getCutting: (id) => db.get('cuttings', id),
    removeCutting: (id) => db.delete('cuttings', id),
    close: () => db.close(),
  }
}

function newestFirst(all: Shelved[]): Shelved[] {
  return all.sort((a, b) => b.turn - a.turn)
}
