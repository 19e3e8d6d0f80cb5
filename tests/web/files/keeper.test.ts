import 'fake-indexeddb/auto'
import { IDBFactory } from 'fake-indexeddb'
import { beforeEach, describe, expect, it } from 'vitest'
import type { ProjectId } from '../../../engine/index'
import { readProject } from '../../../engine/index'
import { fileNameOf } from '../../../web/files/chooser'
import { createKeeper, type Kept } from '../../../web/files/keeper'
import { openShelf, type Shelf } from '../../../web/files/shelf'
import { aWall, base } from '../input/wall'

const AT = new Date(2026, 0, 5, 10, 42)
const project = { ...aWall(base('B1')), id: 'p-one' as ProjectId, name: 'One' }

beforeEach(() => {
  Object.assign(globalThis, { indexedDB: new IDBFactory() })
})

describe('the keeper', () => {
  it('writes nothing before it is started', async () => {
    const shelf = await openShelf()
    const keeper = createKeeper(
      async () => shelf,
      () => {},
      () => AT,
    )
    keeper.keep(project)
    await keeper.flush()
    expect(await shelf.list()).toEqual([])
    keeper.start()
    await keeper.flush()
    expect((await shelf.list()).map(({ name }) => name)).toEqual(['One'])
  })

  it('writes the newest of many edits, and reading gives it back', async () => {
    const shelf = await openShelf()
    const told: Kept[] = []
    const keeper = createKeeper(
      async () => shelf,
      (kept) => told.push(kept),
      () => AT,
    )
    keeper.start()
    keeper.keep(project)
    const renamed = { ...project, name: 'One, with a window' }
    keeper.keep(renamed)
    await keeper.flush()
    const kept = await shelf.last()
    expect(readProject(kept!.text)).toEqual({ ok: true, value: renamed })
    expect(told.at(-1)).toEqual({ state: 'saved', at: '10:42' })
  })

  it('tells a failure and keeps the edit for the next try', async () => {
    const shelf = await openShelf()
    const told: Kept[] = []
    let isFull = true
    const filling: Shelf = {
      ...shelf,
      put: (shelved) => (isFull ? Promise.reject(new Error('the disk is full')) : shelf.put(shelved)),
    }
    const keeper = createKeeper(
      async () => filling,
      (kept) => told.push(kept),
      () => AT,
    )
    keeper.start()
    keeper.keep(project)
    await keeper.flush()
    expect(told.at(-1)).toEqual({ state: 'failed', why: 'the disk is full' })
    isFull = false
    await keeper.flush()
    expect(told.at(-1)).toEqual({ state: 'saved', at: '10:42' })
    expect((await shelf.last())?.name).toBe('One')
  })

  it('writes nothing after it was stopped', async () => {
    const shelf = await openShelf()
    const keeper = createKeeper(
      async () => shelf,
      () => {},
      () => AT,
    )
    keeper.start()
    keeper.keep(project)
    keeper.stop()
    await keeper.flush()
    expect(await shelf.list()).toEqual([])
  })
})

describe('the shelf', () => {
  it('lists what was saved last first, and gives back the project last at work', async () => {
    const shelf = await openShelf()
    const shelved = { text: '{}', cabinets: 0, at: AT.toISOString() }
    await shelf.put({ ...shelved, id: 'p-one' as ProjectId, name: 'One' })
    await shelf.put({ ...shelved, id: 'p-two' as ProjectId, name: 'Two' })
    await shelf.setLast('p-one' as ProjectId)
    expect((await shelf.list()).map(({ name }) => name)).toEqual(['Two', 'One'])
    expect((await shelf.last())?.name).toBe('One')
    await shelf.remove('p-one' as ProjectId)
    expect((await shelf.last())?.name).toBe('Two')
  })
})

describe('the name of a project file', () => {
  it('has nothing in it that file systems refuse', () => {
    expect(fileNameOf('Orchard Lane: 1/2 "kitchen"')).toBe('Orchard Lane 1 2 kitchen.casewright.json')
    expect(fileNameOf('???')).toBe('Project.casewright.json')
    expect(fileNameOf('Sides: notched', 'casewright-method')).toBe('Sides notched.casewright-method.json')
  })
})
