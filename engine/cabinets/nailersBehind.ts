import type { MethodChoices } from '../project/method'

interface Built {
  readonly method: Pick<MethodChoices, 'nailers' | 'back'>
}

/** Nailers behind the back; without a back they are simply nailers between the sides. */
export function hasNailersBehind({ method: { nailers, back } }: Built): boolean {
  return nailers.where === 'behind' && back.kind !== 'none' && (nailers.top || nailers.bottom)
}

/**
 * Nailers behind a back in a groove, in notches of the sides flush with their rear edges: 3/4 x 4 in strips behind a back of
 * 1/4 in, two for uppers and one for bases. Source: baileylineroad.com, on building cabinets.
 */
export function areNailersLetIn(built: Built): boolean {
  const { nailers, back } = built.method
  return nailers.areLetIn === true && back.kind === 'groove' && hasNailersBehind(built)
}
