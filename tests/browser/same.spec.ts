import { loadSolver } from '../../engine/cli/solver'
import { demonstrationKitchen, derive, type SheetJob } from '../../engine/index'
import { packSheets } from '../../engine/sheets/pack'
import { kitchenJob } from '../bench/jobs'
import { expect, test } from './shop'

const JOBS: readonly (readonly [string, SheetJob])[] = [
  ['the demonstration', derive(demonstrationKitchen()).sheetJob],
  ['a kitchen of 80 parts', kitchenJob(80, 2)],
]

for (const [name, job] of JOBS) {
  test(`a worker of the page lays out ${name} as the commands do, to the byte`, async ({ shop }) => {
    const solve = await loadSolver()
    const here = packSheets(job, undefined, () => solve)
    const there = await shop.evaluate(async (asked) => {
      const resources = performance.getEntriesByType('resource').map((entry) => entry.name)
      const address = resources.find((resource) => resource.includes('packing.worker'))!
      const worker = new Worker(address, { type: 'module' })
      return new Promise<string>((resolve) => {
        worker.onmessage = ({ data }: MessageEvent<string>) => {
          if (JSON.parse(data).isSettled) resolve(data)
        }
        worker.postMessage({ number: 1, job: asked })
      })
    }, job)
    const plain = JSON.stringify(here, (key, value) => (key === 'placements' ? undefined : value))
    expect(JSON.stringify(JSON.parse(there).answer)).toBe(plain)
  })
}
