import { demonstrationKitchen, derive, type SheetJob } from '../../engine/index'
import { packSheets } from '../../engine/sheets/pack'
import { written } from '../../web/workers/letters'
import { kitchenJob } from '../bench/jobs'
import { expect, test } from './shop'

const JOBS: readonly (readonly [string, SheetJob])[] = [
  ['the demonstration', derive(demonstrationKitchen()).sheetJob],
  ['a kitchen of 80 parts', kitchenJob(80, 2)],
]

for (const [name, job] of JOBS) {
  test(`a worker of the page lays out ${name} as the commands do, to the byte`, async ({ shop }) => {
    const here = packSheets(job)
    // The page may still be about to fetch its worker.
    const found = await shop.waitForFunction(() => {
      const resources = performance.getEntriesByType('resource').map((entry) => entry.name)
      return resources.find((resource) => resource.includes('packing.worker'))
    })
    const address = (await found.jsonValue())!
    const there = await shop.evaluate(
      async ([address, asked]) => {
        const worker = new Worker(address, { type: 'module' })
        return new Promise<string>((resolve, reject) => {
          worker.onerror = ({ message }) => reject(new Error(`the worker failed: ${message}`))
          worker.onmessage = ({ data }: MessageEvent<string>) => {
            if (JSON.parse(data.split('\n')[0]!).isSettled) resolve(data)
          }
          worker.postMessage({ number: 1, job: asked })
        })
      },
      [address, job] as const,
    )
    expect(there).toBe(written({ kind: 'answer', number: 1, answer: here, isSettled: true }))
  })
}
