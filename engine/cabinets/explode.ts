import type { Explode } from './board'

/**
 * The carcass is taken apart as it would be at the bench, so that no board passes through another: fronts and plinth
 * first; the sides draw off the ends of the horizontals; only when they are clear does the rest follow, up, down, back
 * and, for drawers, forward.
 */
const FRONTS = { from: 0, to: 0.35 }
const SIDES = { from: 0.1, to: 0.45 }
const REST = { from: 0.45, to: 0.9 }

/** Far enough that a drawer box taken out of the carcass and apart stays behind its front. */
export function frontGoes(farthestBox: number): Explode {
  return { by: { x: 0, y: 0, z: 280 + (farthestBox > 0 ? farthestBox + 320 : 0) }, ...FRONTS }
}

export function sideGoes(direction: -1 | 1): Explode {
  return { by: { x: direction * 420, y: 0, z: 0 }, ...SIDES }
}

/** A shelf in a bay beside a partition follows the side, half as far, and so leaves both. */
export function bayGoes(direction: -1 | 0 | 1): Explode {
  return { by: { x: direction * 160, y: 0, z: 0 }, ...SIDES }
}

export function upGoes(by: number): Explode {
  return { by: { x: 0, y: by, z: 0 }, ...REST }
}

export function backGoes(by: number): Explode {
  return { by: { x: 0, y: 0, z: -by }, ...REST }
}

export function plinthGoes(z: number): Explode {
  return { by: { x: 0, y: -340, z }, ...FRONTS }
}

export function kickGoes(): Explode {
  return { by: { x: 0, y: 0, z: 260 }, ...FRONTS }
}

/** Out of the carcass by the length of the box and more, its boards away from one another. */
export function drawerGoes(boxLength: number, x: number, z: number): Explode {
  return { by: { x, y: 0, z: boxLength + 160 + z }, ...REST }
}
