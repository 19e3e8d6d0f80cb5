import { cleanName, LONGEST_NAME } from '../../engine/index'

/** The name itself where none of the others has it; otherwise with the first number that is free: `Kitchen (2)`. */
export function nameBeside(name: string, others: readonly string[]): string {
  const taken = new Set(others)
  for (let number = 1; ; number++) {
    const end = number === 1 ? '' : ` (${number})`
    const tried = `${cleanName(name.slice(0, LONGEST_NAME - end.length))}${end}`
    if (!taken.has(tried)) return tried
  }
}
