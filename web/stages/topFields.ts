const OVERHANG = { spoken: 'The overhang', least: 0, most: 300 } as const
const SPLASH = { spoken: 'The splash', least: 0, most: 1000 } as const
const BAND = { spoken: 'The band', least: 0, most: 10 } as const

/** The measures of a countertop, of all of them or of one alone, with what they are called and can be. */
export const TOP_FIELDS = [
  ['overhang', 'Past the fronts', OVERHANG],
  ['ends', 'Past free ends', OVERHANG],
  ['splash', 'Splash, or 0', SPLASH],
  ['banding', 'Edge band, or 0', BAND],
] as const
