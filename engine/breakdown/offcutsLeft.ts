import type { MaterialId, StockId } from '../basics/id'
import { good, type Result } from '../basics/result'
import type { Project } from '../project/document'
import { usableOf } from './cutAway'
import type { Progress } from './floor'
import { atHandNow } from './mishap'
import type { BreakdownInput } from './steps'

/** Equal pieces that are left over. Of a piece with a factory edge, what is clean of it. */
export interface OffcutLeft {
  readonly material: MaterialId
  readonly length: number
  readonly width: number
  readonly quantity: number
  readonly names: readonly string[]
}

/**
 * What lies there and is large enough for the shop to keep, the largest first. Sheets and offcuts that lay there before
 * anything was cut and are still whole are counted in the shop already, and so left out.
 */
export function offcutsLeft(input: BreakdownInput, progress: Progress, stock: Project['stock']): Result<OffcutLeft[]> {
  const hand = atHandNow(input, progress)
  if (!hand.ok) return hand
  const least = input.shop.offcutLeast
  const isOnHand = (id: string) => {
    const own = stock[id as StockId]
    return own !== undefined && (own.isOffcut || own.quantity !== null)
  }
  const groups = new Map<string, OffcutLeft>()
  for (const { place, rough, material, name, isWhole, isToBuy, origin } of hand.value) {
    const { length, width } = usableOf(place, rough)
    if (isToBuy || (isWhole && isOnHand(origin)) || length < least.length || width < least.width) continue
    const key = JSON.stringify([material, length, width])
    const { quantity, names } = groups.get(key) ?? { quantity: 0, names: [] }
    const size = { material: material as MaterialId, length, width }
    groups.set(key, { ...size, quantity: quantity + 1, names: [...names, name] })
  }
  return good([...groups.values()].sort((a, b) => b.length * b.width - a.length * a.width))
}
