/** A thing as the text of a file: keys in one order, so that equal things are equal files. */
export function fileText(thing: unknown): string {
  return `${JSON.stringify(inKeyOrder(thing), null, 1)}\n`
}

function inKeyOrder(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(inKeyOrder)
  if (typeof value !== 'object' || value === null) return value
  const entries = Object.entries(value).filter(([, inner]) => inner !== undefined)
  return Object.fromEntries(
    entries.sort(([a], [b]) => (a < b ? -1 : 1)).map(([key, inner]) => [key, inKeyOrder(inner)]),
  )
}
