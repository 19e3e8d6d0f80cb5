import { z } from 'zod'

const ID_FORM = 'it must be an id of small letters, figures and hyphens, 40 at most'
/** The name of a thing in its map. */
export const id = z.string({ error: ID_FORM }).regex(/^[a-z][a-z0-9-]{0,39}$/, { error: ID_FORM })

/** An exact set of words, and what they are when a word is none of them. */
export function oneOf<const Words extends readonly [string, ...string[]]>(...words: Words) {
  return z.enum(words, { error: `it must be ${words.join(' or ')}` })
}

export const flag = z.boolean({ error: 'it must be true or false' })
