import { bad, good, type Result } from './result'

/** What a text of JSON is made of; whatever else stands there is a token of its own, up to the next sign. */
const TOKEN = /"(?:[^"\\\n]|\\.)*"|[{}[\],:]|[^\s{}[\],:"]+|"[^\n]*/g
const NUMBER = /^-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?$/

/** Who nests deeper than this has no job in mind. */
const LONGEST_PATH = 2000

interface Token {
  readonly text: string
  /** From 1. */
  readonly line: number
}

/**
 * A text of JSON as what it says, or one line that names the line, the field and what stands there instead. Lines count
 * from `firstLine`, for a text that is a part of a file.
 */
export function readJson(text: string, firstLine = 1): Result<unknown> {
  const json = text.replace(/^\uFEFF/, '')
  try {
    return good(JSON.parse(json))
  } catch (error) {
    return bad(whereBroken(json, firstLine) ?? (error as Error).message.split('\n')[0]!)
  }
}

/** `line 3, parts[0].length: NaN is no number`; null where nothing is found. */
function whereBroken(text: string, firstLine: number): string | null {
  const tokens = tokensOf(text)
  const end: Token = { text: '', line: text.trimEnd().split('\n').length }
  let at = 0
  const next = () => tokens[at] ?? end

  function value(path: string): string | null {
    const { text: sign } = next()
    if (path.length > LONGEST_PATH) return broken(path.slice(0, 60), 'this lies too deep to be read')
    if (sign === '{') return list(path, '}', field)
    if (sign === '[') return list(path, ']', (inner, count) => value(`${inner}[${count}]`))
    if (!isPlain(sign)) return broken(path, wordsFor(sign))
    at++
    return null
  }

  function field(path: string): string | null {
    const { text: name } = next()
    if (!isText(name)) return broken(path, `a field's name in double quotes is missing before ${shown(name)}`)
    const inner = `${path === '' ? '' : `${path}.`}${JSON.parse(name)}`
    at++
    return step(inner, ':') ?? value(inner)
  }

  function list(path: string, last: '}' | ']', item: (path: string, count: number) => string | null): string | null {
    at++
    if (next().text !== last) {
      for (let count = 0; ; count++) {
        const wrong = item(path, count)
        if (wrong) return wrong
        if (next().text !== ',') break
        at++
      }
    }
    return step(path, last)
  }

  function step(path: string, sign: string): string | null {
    if (next().text !== sign) return broken(path, `${sign} is missing before ${shown(next().text)}`)
    at++
    return null
  }

  function broken(path: string, words: string): string {
    return `line ${next().line + firstLine - 1}${path === '' ? '' : `, ${path}`}: ${words}`
  }

  return value('') ?? (at < tokens.length ? broken('', `${shown(next().text)} stands behind the end`) : null)
}

function tokensOf(text: string): Token[] {
  return text.split('\n').flatMap((row, at) => (row.match(TOKEN) ?? []).map((token) => ({ text: token, line: at + 1 })))
}

function isPlain(sign: string): boolean {
  return isText(sign) || NUMBER.test(sign) || ['true', 'false', 'null'].includes(sign)
}

function isText(sign: string): boolean {
  try {
    return typeof JSON.parse(sign) === 'string'
  } catch {
    return false
  }
}

function wordsFor(sign: string): string {
  if (/^[+-]?(nan|infinity|inf)$/i.test(sign))
    return `the value is ${sign}, which is no JSON number; it must be a number that has an end`
  return sign === '' || '}],:'.includes(sign)
    ? `a value is missing before ${shown(sign)}`
    : `${shown(sign)} is no JSON value; a text must stand in double quotes`
}

function shown(sign: string): string {
  return sign === '' ? 'the end' : sign.slice(0, 40)
}
