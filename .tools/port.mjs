const USUAL = 4173
const MOST = 65_535

/** The port that PORT names, the usual one when it is not set; or a sentence that says what it may be. */
export function portFrom(text) {
  if (text === undefined || text.trim() === '') return { ok: true, value: USUAL }
  const port = Number(text)
  if (/^\d+$/.test(text.trim()) && port >= 1 && port <= MOST) return { ok: true, value: port }
  return { ok: false, message: `PORT is ${text}; it must be a whole number from 1 to ${MOST}.` }
}
