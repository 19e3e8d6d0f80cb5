import type { PartPiece, Piece } from '../sheets/layout'

/** Where a board lies in its run of grain. */
export interface GrainPlace {
  readonly run: string
  /** From 1. */
  readonly place: number
}

/** Parts side by side over which the grain runs on. It is begun where the first of its boards are cut already. */
export interface Run {
  readonly pieces: readonly PartPiece[]
  readonly isBegun: boolean
}

/** For each of some pieces side by side the run that it lies in; null for one that has no neighbour of its run. */
export function runsIn(pieces: readonly Piece[], runOf: (piece: PartPiece) => GrainPlace | null): (Run | null)[] {
  const places = pieces.map((piece) => (piece.kind === 'part' ? runOf(piece) : null))
  const runs: (Run | null)[] = []
  for (let at = 0; at < pieces.length; ) {
    const place = places[at] ?? null
    let to = at + 1
    while (place && to < pieces.length && places[to]?.run === place.run) to++
    const own = pieces.slice(at, to) as PartPiece[]
    const isRun = place !== null && (own.length > 1 || place.place > 1)
    const run = isRun ? { pieces: own, isBegun: place.place > 1 } : null
    while (at < to) runs[at++] = run
  }
  return runs
}
