import type { Front } from './document'
import { childrenOf, type FrontPath, frontAt } from './frontTree'
import type { AsBuilt } from './measured'

/** How an opening is called in the document: by its place in the front. */
export function openingKey(path: FrontPath): string {
  return path.length === 0 ? 'whole' : path.join('-')
}

function pathOf(key: string): FrontPath {
  return key === 'whole' ? [] : key.split('-').map(Number)
}

/** Whether a front closes its opening, so that it is made to it. */
export function isMadeToOpening({ kind }: Front): boolean {
  return kind === 'door' || kind === 'pair' || kind === 'drawer' || kind === 'pullOut' || kind === 'falseFront'
}

/** Whether the front has an opening of a key that something is made to. */
export function hasOpening(front: Front, key: string): boolean {
  const leaf = frontAt(front, pathOf(key))
  return leaf !== null && isMadeToOpening(leaf)
}

/** What was measured of openings that are still there: what they are in is divided as it was. */
export function stillThere(asBuilt: AsBuilt, before: Front, after: Front): AsBuilt {
  const kept = Object.entries(asBuilt).filter(
    ([key]) => hasOpening(after, key) && isDividedAlike(pathOf(key), before, after),
  )
  return kept.length === Object.keys(asBuilt).length ? asBuilt : Object.fromEntries(kept)
}

function isDividedAlike(path: FrontPath, before: Front, after: Front): boolean {
  return path.every((_, depth) => {
    const [was, is] = [before, after].map((front) => frontAt(front, path.slice(0, depth)))
    return was?.kind === is?.kind && childrenOf(was!).length === childrenOf(is!).length
  })
}
