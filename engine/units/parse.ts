import { bad, good, type Result } from '../basics/result'
import { inch, type LengthDisplay, type Mm, settle } from './length'

/**
 * Reads a length as people write it: `768`, `76.8cm`, `30 1/4"`, `30-1/4`, `23¾`, `2' 6 1/4"`, `2ft 6in`, `600/2 + 18`,
 * `=W-2*18`. A bare number is in the unit of the display; names stand for lengths in mm. What cannot be read gets a
 * message that says what was not understood. A rounded length that was shown as `about 1 1/4` is read as `1 1/4`.
 *
 * `30-1/4` and `30 1/4` are thirty and a quarter when the display is in inches or an inch mark follows; with a space
 * before the minus (`30 - 1/4`) it is a subtraction.
 */
export function parseLength(
  text: string,
  display: LengthDisplay,
  names: Readonly<Record<string, Mm>> = {},
): Result<Mm> {
  if (text.length > LONGEST) return bad(`That is ${text.length} characters long; a length has at most ${LONGEST}.`)
  const tokens = tokensOf(text.trim().replace(/^(=|about\b)\s*/i, ''), display, names)
  if (!tokens.ok) return tokens
  if (tokens.value.length === 0) return bad('A length is missing.')
  const reading: Reading = { tokens: tokens.value, at: 0, display }
  const sum = readSum(reading)
  if (!sum.ok) return sum
  const rest = reading.tokens[reading.at]
  if (rest) return bad(`"${rest.text}" is not understood in "${text.trim()}".`)
  const length = inMm(sum.value, display)
  return Number.isFinite(length) ? good(settle(length)) : bad(`"${text.trim()}" is not a length.`)
}

const LONGEST = 200
const MM_PER: Readonly<Record<string, Mm>> = { mm: 1, cm: 10, m: 1000 }
const INCH_MARK = /^(?:"|″|”|''|inches\b|inch\b|in\b)/i
const FOOT_MARK = /^(?:'|′|’|feet\b|foot\b|ft\b)/i
const METRIC_MARK = /^(mm|cm|m)\b/i
const VULGAR: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
}

/** A number that is a length already, or a bare one whose unit is still open. */
interface Quantity {
  readonly value: number
  readonly isLength: boolean
}

type Token =
  | { readonly kind: 'quantity'; readonly text: string; readonly quantity: Quantity }
  | { readonly kind: 'sign'; readonly text: string }

interface Reading {
  readonly tokens: readonly Token[]
  at: number
  readonly display: LengthDisplay
}

function tokensOf(text: string, display: LengthDisplay, names: Readonly<Record<string, Mm>>): Result<Token[]> {
  const tokens: Token[] = []
  let rest = spellFractions(text)
  for (;;) {
    rest = rest.trimStart()
    if (rest === '') return good(tokens)
    const isDivisor = tokens.at(-1)?.text === '/'
    const number = readNumber(rest, display, isDivisor)
    if (number) {
      if (!number.ok) return number
      tokens.push({ kind: 'quantity', text: number.value.text, quantity: number.value.quantity })
      rest = rest.slice(number.value.text.length)
      continue
    }
    const sign = /^[-+*/()×−÷]/.exec(rest)?.[0]
    const name = /^[A-Za-z_]\w*/.exec(rest)?.[0]
    if (sign) tokens.push({ kind: 'sign', text: PLAIN_SIGNS[sign] ?? sign })
    else if (name && Object.hasOwn(names, name)) {
      tokens.push({ kind: 'quantity', text: name, quantity: { value: names[name]!, isLength: true } })
    } else return bad(`"${(name ?? rest).slice(0, 20)}" is not understood.`)
    rest = rest.slice((sign ?? name)!.length)
  }
}

const PLAIN_SIGNS: Readonly<Record<string, string>> = { '×': '*', '−': '-', '÷': '/' }

/** `23¾` becomes `23 3/4`, and a fraction slash a plain one. */
function spellFractions(text: string): string {
  return text
    .replace(/(\d?)([½¼¾⅛⅜⅝⅞])/g, (_, whole, sign) => `${whole}${whole && ' '}${VULGAR[sign]}`)
    .replace(/⁄/g, '/')
}

/**
 * A number at the start of the text with the unit behind it; several in a row when feet, inches and a fraction follow
 * one another. Null where no number starts.
 */
function readNumber(
  text: string,
  display: LengthDisplay,
  isDivisor: boolean,
): Result<{ text: string; quantity: Quantity }> | null {
  const feet = /^(\d+(?:\.\d+)?)\s*/.exec(text)
  if (feet && FOOT_MARK.test(text.slice(feet[0].length)) && !/^''/.test(text.slice(feet[0].length))) {
    return readFeet(text, feet)
  }
  const plain = /^(?:\d+(?:[.,]\d+)?|\.\d+)/.exec(text)?.[0]
  if (!plain) return null
  if (plain.includes(','))
    return bad(`"${plain}" has a comma; write a point before decimals and nothing between thousands.`)
  const mixed = readMixed(text)
  if (mixed && isDivisor && mixed.isSpaced) return bad(`"/ ${mixed.text}" can be read two ways; write brackets.`)
  const isHyphenRead = (display.unit === 'in' || mixed?.hasMark) && !isDivisor
  if (mixed && (isHyphenRead || mixed.isSpaced)) {
    if (mixed.below === 0) return bad(`"${mixed.text}" divides by zero.`)
    if (mixed.isSpaced && mixed.above >= mixed.below)
      return bad(`"${mixed.text}" is not a whole number and a fraction.`)
    const value = mixed.whole + mixed.above / mixed.below
    return good({ text: mixed.text, quantity: mixed.hasMark ? ofInches(value) : { value, isLength: false } })
  }
  return good(withUnit(text, plain))
}

/** `30 1/4`, `30-1/4` or `1/4`, and the inch mark behind it if there is one. */
function readMixed(text: string) {
  const found = /^(?:(\d+)(\s+|-))?(\d+)\s*\/\s*(\d+)(?![\d.])(\s*)/.exec(text)
  if (!found) return null
  const [all, whole, between, above, below, space] = found
  const mark = INCH_MARK.exec(text.slice(all.length))?.[0]
  const isSpaced = whole !== undefined && between!.trim() === ''
  if (whole === undefined && !mark) return null
  // 600-300/2 and 12-3/2 are sums; only a proper fraction can hang on a whole number by its hyphen.
  if (between === '-' && Number(above) >= Number(below) && Number(below) !== 0) return null
  return {
    text: mark ? all + mark : all.slice(0, all.length - space!.length),
    whole: Number(whole ?? 0),
    above: Number(above),
    below: Number(below),
    hasMark: mark !== undefined,
    isSpaced,
  }
}

function readFeet(text: string, feet: RegExpExecArray): Result<{ text: string; quantity: Quantity }> {
  let used = feet[0] + FOOT_MARK.exec(text.slice(feet[0].length))![0]
  let inches = Number(feet[1]) * 12
  const behind = text.slice(used.length)
  const more = /^(?:-|\s*)(?=\d)/.exec(behind)
  if (more) {
    const rest = behind.slice(more[0].length)
    const mixed = readMixed(rest) ?? readProperFraction(rest)
    const plain = /^\d+(?:\.\d+)?/.exec(rest)![0]
    if (mixed?.below === 0) return bad(`"${mixed.text}" divides by zero.`)
    if (!mixed && /^\d+\s*\//.test(rest)) return bad(`"${rest}" is not understood behind feet; write brackets.`)
    if (mixed) inches += mixed.whole + mixed.above / mixed.below
    else inches += Number(plain)
    const mark = mixed ? '' : (/^\s*(?:"|″|”|''|inches\b|inch\b|in\b)/i.exec(rest.slice(plain.length))?.[0] ?? '')
    used += more[0] + (mixed ? mixed.text : plain + mark)
  }
  return good({ text: used, quantity: ofInches(inches) })
}

/** The `1/2` of `6' 1/2`, which is half an inch even without its mark. */
function readProperFraction(text: string) {
  const found = /^(\d+)\s*\/\s*(\d+)(?![\d.])/.exec(text)
  if (!found || Number(found[1]) >= Number(found[2])) return null
  return { text: found[0], whole: 0, above: Number(found[1]), below: Number(found[2]) }
}

function withUnit(text: string, plain: string): { text: string; quantity: Quantity } {
  const value = Number(plain)
  const behind = text.slice(plain.length)
  const space = /^\s*/.exec(behind)![0]
  const metric = METRIC_MARK.exec(behind.slice(space.length))?.[0]
  if (metric) {
    const quantity = { value: value * MM_PER[metric.toLowerCase()]!, isLength: true }
    return { text: plain + space + metric, quantity }
  }
  const mark = INCH_MARK.exec(behind.slice(space.length))?.[0]
  if (mark) return { text: plain + space + mark, quantity: ofInches(value) }
  return { text: plain, quantity: { value, isLength: false } }
}

function ofInches(inches: number): Quantity {
  return { value: inch(inches), isLength: true }
}

function inMm({ value, isLength }: Quantity, display: LengthDisplay): Mm {
  if (isLength) return value
  return display.unit === 'mm' ? value : inch(value)
}

/** sum: product, then plus or minus products. */
function readSum(reading: Reading): Result<Quantity> {
  const first = readProduct(reading)
  if (!first.ok) return first
  let total = first.value
  for (let sign = take(reading, '+-'); sign; sign = take(reading, '+-')) {
    const next = readProduct(reading)
    if (!next.ok) return next
    total = added(total, next.value, sign === '+' ? 1 : -1, reading.display)
  }
  return good(total)
}

/** A bare number beside a length counts in the display's unit; two bare ones stay bare. */
function added(a: Quantity, b: Quantity, sign: 1 | -1, display: LengthDisplay): Quantity {
  if (!a.isLength && !b.isLength) return { value: a.value + sign * b.value, isLength: false }
  return { value: inMm(a, display) + sign * inMm(b, display), isLength: true }
}

function readProduct(reading: Reading): Result<Quantity> {
  const first = readSigned(reading)
  if (!first.ok) return first
  let total = first.value
  for (let sign = take(reading, '*/'); sign; sign = take(reading, '*/')) {
    const next = readSigned(reading)
    if (!next.ok) return next
    const by = next.value
    if (sign === '*' && total.isLength && by.isLength) return bad('A length times a length is not a length.')
    if (sign === '/' && by.isLength && !total.isLength) return bad('A number cannot be divided by a length.')
    if (sign === '/' && by.value === 0) return bad('That divides by zero.')
    const value = sign === '*' ? total.value * by.value : total.value / by.value
    total = { value, isLength: sign === '*' ? total.isLength || by.isLength : total.isLength && !by.isLength }
  }
  return good(total)
}

function readSigned(reading: Reading): Result<Quantity> {
  const sign = take(reading, '+-')
  if (!sign) return readOne(reading)
  const next = readSigned(reading)
  if (!next.ok || sign === '+') return next
  return good({ ...next.value, value: -next.value.value })
}

function readOne(reading: Reading): Result<Quantity> {
  const token = reading.tokens[reading.at]
  if (!token) return bad('A number is missing at the end.')
  reading.at++
  if (token.kind === 'quantity') return good(token.quantity)
  if (token.text !== '(') return bad(`"${token.text}" is not understood where a number should be.`)
  const inner = readSum(reading)
  if (!inner.ok) return inner
  return take(reading, ')') ? inner : bad('A bracket is not closed.')
}

function take(reading: Reading, signs: string): string | null {
  const token = reading.tokens[reading.at]
  if (token?.kind !== 'sign' || !signs.includes(token.text)) return null
  reading.at++
  return token.text
}
