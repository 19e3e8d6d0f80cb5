/** A piece that is about to be cut. */
interface Named {
  readonly name: string
  /** Whether it is what was taken up: a sheet, or a piece of an earlier one. */
  readonly isTakenUp: boolean
}

/** Strips of sheet 3 are 3a, 3b; what comes of 3a is 3a1, 3a2; and so on in turn, in the order of the drawing. */
export function nameOf(held: Named, at: number, sheet: number): string {
  const stem = held.isTakenUp ? stemOf(held.name, sheet) : held.name
  return /\d$/.test(stem) ? `${stem}${letter(at)}` : `${stem}${at + 1}`
}

/**
 * What is cut of a piece of an earlier sheet is called after the piece: of 1c come 1c1, 1c2. Of the rest of 1 other names
 * were given already, so there come 1R1, 1R2; of a second piece of one name 1RR1.
 */
function stemOf(name: string, sheet: number): string {
  if (isSheetName(name, sheet)) return String(sheet)
  const [, rest = '', bare = name, count = '1'] = /^((?:rest of )*)(?:sheet )?(.*?)(?: \((\d+)\))?$/.exec(name) ?? []
  return bare + 'R'.repeat(rest.length / 'rest of '.length + Number(count) - 1)
}

export function letter(at: number): string {
  const last = String.fromCharCode(97 + (at % 26))
  return at < 26 ? last : letter(Math.floor(at / 26) - 1) + last
}

/** Whether a piece is called as the sheet is that it comes from. */
export function isSheetName(name: string, sheet: number): boolean {
  return name === `sheet ${sheet}`
}

/** Whether a piece has its name written on it when it is taken up: not a sheet, nor one of several pieces of one name. */
export function bearsItsName(name: string, sheet: number): boolean {
  return !isSheetName(name, sheet) && !/ \(\d+\)$/.test(name)
}
