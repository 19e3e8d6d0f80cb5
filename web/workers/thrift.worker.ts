import { savingsOf } from '../../engine/index'
import type { ThriftLetter, ThriftQuestion } from './letters'

/** So long it works before it tells how far it is. */
const CHUNK_MS = 100

addEventListener('message', ({ data: { project, freedoms } }: MessageEvent<ThriftQuestion>) => {
  const post = (letter: ThriftLetter) => postMessage(letter)
  const search = savingsOf(project, freedoms)
  for (let told = performance.now(); ; ) {
    const { done, value } = search.next()
    if (done) return post({ kind: 'found', thrift: value })
    if (performance.now() - told < CHUNK_MS) continue
    told = performance.now()
    post({ kind: 'atWork', progress: value })
  }
})
