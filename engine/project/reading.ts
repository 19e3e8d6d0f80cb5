import type { z } from 'zod'
import { readJson } from '../basics/json'
import { bad, good, type Result } from '../basics/result'

/** What is kept in a file of its own. */
export type Kept = 'project' | 'build method'

const DEEPEST = 64
const ISSUES_SHOWN = 3

/** The fields of a file, before anything is known of them. */
export function fieldsIn(text: string, what: Kept, mostCharacters: number): Result<Record<string, unknown>> {
  if (text.length > mostCharacters) {
    return bad(`The file has ${text.length} characters; a ${what} has ${mostCharacters} at most.`)
  }
  if (isDeeper(text, DEEPEST)) {
    return bad(`The file is nested more than ${DEEPEST} deep; it is not a Casewright ${what}.`)
  }
  const json = readJson(text)
  if (!json.ok) {
    const where = `${json.message.charAt(0).toUpperCase()}${json.message.slice(1)}`
    return bad(`The file is not a Casewright ${what}: it is not JSON, or it is cut short. ${where}.`)
  }
  const { value } = json
  if (typeof value === 'object' && value !== null && !Array.isArray(value))
    return good(value as Record<string, unknown>)
  return bad(`The file is not a Casewright ${what}: it holds ${shown(value)}.`)
}

/** Deep nesting is refused before anything walks it; brackets inside texts do not count. */
function isDeeper(text: string, most: number): boolean {
  let depth = 0
  let isInText = false
  for (let at = 0; at < text.length; at++) {
    const sign = text[at]
    if (isInText && sign === '\\') at++
    else if (sign === '"') isInText = !isInText
    else if (isInText) continue
    else if (sign === '{' || sign === '[') depth++
    else if (sign === '}' || sign === ']') depth--
    if (depth > most) return true
  }
  return false
}

/** What is wrong with a file, by its first faults. */
export function issuesIn(issues: readonly z.core.$ZodIssue[], saved: unknown, what: Kept): string {
  const told = issues.slice(0, ISSUES_SHOWN).map((issue) => spoken(issue, saved, what))
  const more = issues.length > ISSUES_SHOWN ? ` And ${issues.length - ISSUES_SHOWN} more.` : ''
  return `The file cannot be read as a ${what}. ${told.join(' ')}${more}`
}

/** `cabinets.k3.width is -20; it must be between 1 and 20000 mm.` */
function spoken(issue: z.core.$ZodIssue, saved: unknown, what: Kept): string {
  const path = issue.path.map((key) => String(key).slice(0, 60)).join('.')
  if (issue.code === 'unrecognized_keys') {
    return `${path || `The ${what}`} has a field that is not known: ${issue.keys.join(', ').slice(0, 60)}.`
  }
  if (issue.code === 'invalid_key') return `${path} has a name that is no id: small letters, figures and hyphens.`
  const value = issue.path.reduce<unknown>((inner, key) => {
    const isHolder = typeof inner === 'object' && inner !== null && Object.hasOwn(inner, key)
    return isHolder ? (inner as Record<PropertyKey, unknown>)[key] : undefined
  }, saved)
  return `${path} is ${shown(value)}; ${limitIn(issue)}.`
}

const KINDS: Readonly<Record<string, string>> = {
  record: 'an object',
  object: 'an object',
  array: 'a list',
  string: 'a text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  null: 'null',
}

/** Our own words start with `it must`; the others are the library's, made to follow a semicolon. */
function limitIn(issue: z.core.$ZodIssue): string {
  const { code, message } = issue
  if (message.startsWith('it must')) return message
  if (code === 'invalid_union') return 'it must be one of the kinds that Casewright knows'
  const kind = code === 'invalid_type' ? KINDS[issue.expected] : undefined
  if (kind) return `it must be ${kind}`
  return `${message.charAt(0).toLowerCase()}${message.slice(1)}`
}

export function shown(value: unknown): string {
  if (value === undefined) return 'missing'
  if (typeof value === 'object' && value !== null) return Array.isArray(value) ? 'a list' : 'an object'
  const text = JSON.stringify(value)
  return text.length > 60 ? `${text.slice(0, 60)}...` : text
}
