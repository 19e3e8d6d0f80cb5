import type { Box } from '../geometry/box'
import type { BuildMethod } from '../project/method'
import { type Mm, settle } from '../units/length'
import { dimensionOf } from './frame'
import type { Notch } from './operation'
import { LIES, type Piece } from './piece'

/** Of a method, what settles how dados end at the front. */
export type DadoEnds = Pick<BuildMethod, 'dadoFront' | 'banding'>

/** A joint that ends at the front edge of the board that receives, or behind it; in the cabinet's frame. */
export interface EndedJoint {
  /** What is cut in the board that receives; null where nothing is left of it. */
  readonly housed: Box | null
  /** What goes of the other board, so that it passes before the end of that; null where the joint runs out. */
  readonly off: Box | null
}

/**
 * A room that a board has in another, ended as dados end at the front edge of that one:
 *
 *      |        |                 |        |
 *      |    ####|  housed         |    ####|
 *      |    ####|                 |    ####|
 *      +--------+ front edge      |....    |  the board that goes in is notched here
 *       runs out                  +--------+  stopped, or as far behind as the band is thick
 *
 * A band that is glued on after the dado is cut covers its end. The band of the board that goes in is then left off over
 * its tongue, and lies flush with it: the wood of both ends in one plane (common practice, no source). Where sizes are
 * without their banding there is nothing to leave off, for the band lies before both boards.
 *
 * The front edge of a board under or over a diagonal slants. What a side stands in ends where that edge, or the wood behind
 * its band, leaves the end of the board, so that nothing opens in the slant:
 *
 *      |::::::|\         ::  the room, as long as the end of the board
 *      |::::::| \
 *      +------|  \ front edge
 *       \     |
 */
export function endedAtFront(shared: Box, house: Piece, mate: Piece, ends: DadoEnds): EndedJoint {
  const front = frontFor(house, shared)
  const behind = front ? behindFront(house, ends) * (ends.dadoFront?.kind === 'covered' ? front.slant : 1) : 0
  if (!front || behind <= 0) return { housed: shared, off: null }
  const { dimension, sign } = front
  const limit = settle(front.at - sign * behind)
  const reach = sign > 0 ? shared.max[dimension] : shared.min[dimension]
  if (sign * settle(reach - limit) <= 0) return { housed: shared, off: null }
  const isNothingLeft = sign * settle(limit - (sign > 0 ? shared.min[dimension] : shared.max[dimension])) <= 0
  const [near, far] = sign > 0 ? (['min', 'max'] as const) : (['max', 'min'] as const)
  const at = (box: Box, end: 'min' | 'max', place: Mm): Box => ({ ...box, [end]: { ...box[end], [dimension]: place } })
  const before = isNothingLeft ? shared : at(shared, near, limit)
  return {
    housed: isNothingLeft ? null : at(shared, far, limit),
    // Of a corner that is cut off straight, what is left of the tongue farther in front would be a hook.
    off: isClipped(mate) ? at(before, far, mate.box[far][dimension]) : before,
  }
}

/** What a corner is cut off for: a band that is left off there, or a dado that is stopped, or ends at a slanting band. */
export function offFor(house: Piece, mate: Piece, { dadoFront }: DadoEnds): NonNullable<Notch['for']> {
  return dadoFront?.kind === 'covered' && !isClipped(mate) && !isClipped(house) ? 'band' : 'stop'
}

function isClipped({ away }: Piece): boolean {
  return away?.outline === 'clipped'
}

function behindFront({ banded }: Piece, { dadoFront, banding }: DadoEnds): Mm {
  if (dadoFront?.kind === 'stopped') return dadoFront.behind
  return dadoFront?.kind === 'covered' && banding.isInFinishedSize ? banded.thickness : 0
}

/** A plane square to one direction, and which way of it the room is. */
interface Front {
  readonly dimension: 'x' | 'y' | 'z'
  readonly sign: 1 | -1
  readonly at: Mm
  /** How far that way it is through what lies square to the front edge, for each of its thickness: 1 where it does not slant. */
  readonly slant: number
}

/** The front edge of the board that receives; null where that is not seen. */
function frontFor(house: Piece, shared: Box): Front | null {
  if (house.banded.edges !== 'inside') return frontOf(house)
  return house.away ? frontOfLeg(house.away, house.box, shared) : null
}

function frontOf({ banded: { edges }, lie, box }: Piece): Front | null {
  const width = dimensionOf(LIES[lie].width)
  const named: readonly string[] = typeof edges === 'string' ? [edges] : edges
  const isHigh = named.includes('high') || (named.includes('front') && LIES[lie].width === '+z')
  if (!isHigh && !named.includes('low') && !named.includes('front')) return null
  const sign = isHigh === width.sign > 0 ? 1 : -1
  return { dimension: width.dimension, sign, at: box[sign > 0 ? 'max' : 'min'][width.dimension], slant: 1 }
}

/**
 * Of a board through a corner, where the front edge leaves the end of the leg that the joint is at; null for a joint along
 * both legs, as of a back.
 */
function frontOfLeg({ box: away, outline }: NonNullable<Piece['away']>, { min }: Box, shared: Box): Front | null {
  const [x, z] = [away.max.x - away.min.x, away.max.z - away.min.z]
  const slanting = (along: Mm) => (outline === 'clipped' ? Math.hypot(x, z) / along : 1)
  if (shared.min.x >= away.min.x && shared.max.x <= away.max.x)
    return { dimension: 'z', sign: 1, at: away.min.z, slant: slanting(x) }
  if (shared.min.z < away.min.z) return null
  const isAtLeft = away.min.x > min.x
  return { dimension: 'x', sign: isAtLeft ? 1 : -1, at: isAtLeft ? away.min.x : away.max.x, slant: slanting(z) }
}
