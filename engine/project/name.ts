/** So long may the name of a project, wall, method or material be. */
export const LONGEST_NAME = 80

/**
 * A name as it is kept: without control signs and without the invisible ones that turn the direction of text, so that
 * it looks the same in every table and file.
 */
export function cleanName(text: string): string {
  return text.replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu, '').normalize('NFC')
}

/** A clean name that is not too long. */
export function shortName(text: string): string {
  return cleanName(cleanName(text).slice(0, LONGEST_NAME))
}
