import type { Mm } from '../../engine/index'

/** The damage begins on the piece; what of it hangs over is not counted. */
export function sidesOf({ length, width }: { readonly length: Mm; readonly width: Mm }) {
  const [along, across] = ['length of the damage', 'width of the damage']
  const from = { extent: null, least: 0 }
  const far = { least: 0, most: 60_000 }
  return [
    { side: 'left', label: 'From its first end', spoken: 'The distance from the first end', ...from, most: length },
    { side: 'bottom', label: 'From its first edge', spoken: 'The distance from the first edge', ...from, most: width },
    { side: 'width', label: 'Along it', spoken: `The ${along}`, extent: along, ...far },
    { side: 'height', label: 'Across it', spoken: `The ${across}`, extent: across, ...far },
  ] as const
}
