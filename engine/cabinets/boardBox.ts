import { type Box, boxAround } from '../geometry/box'
import { toCabinet } from '../geometry/placement'
import type { Board } from './board'

/** The whole blank that a board is worked from, in the cabinet's frame. */
export function boxOf({ placement, length, width, thickness }: Board): Box {
  return boxAround(toCabinet(placement, 0, 0, 0), toCabinet(placement, length, width, thickness))
}
