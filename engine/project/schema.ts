import type { z } from 'zod'
import { bad, good, type Result } from '../basics/result'
import { type Project, VERSION } from './document'
import { migrate } from './migrate'
import { danglingIn } from './references'
import { savedProject } from './saved'

/** What reading a file may cost; anything beyond is no project of a small shop. */
const MOST_CHARACTERS = 20_000_000
const DEEPEST = 64
const MOST_CABINETS = 500
const ISSUES_SHOWN = 3

/** Reads a saved project. A message names what is wrong by its path in the file, its value and the limit. */
export function readProject(text: string): Result<Project> {
  if (text.length > MOST_CHARACTERS) {
    return bad(`The file has ${text.length} characters; a project has ${MOST_CHARACTERS} at most.`)
  }
  if (isDeeper(text, DEEPEST))
    return bad(`The file is nested more than ${DEEPEST} deep; it is not a Casewright project.`)
  const saved = parsed(text)
  if (!saved.ok) return saved
  const { version } = saved.value
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return bad(`The file is not a Casewright project: version is ${shown(version)}.`)
  }
  if (version > VERSION) {
    return bad(
      `The file is of version ${version}; this Casewright reads up to version ${VERSION}. Nothing was changed.`,
    )
  }
  return checked(migrate(saved.value, version))
}

/** The project as a file: keys in one order, so that equal projects are equal files. */
export function writeProject(document: Project): string {
  return `${JSON.stringify(inKeyOrder(document), null, 1)}\n`
}

function checked(saved: Record<string, unknown>): Result<Project> {
  const { cabinets } = saved
  const count = typeof cabinets === 'object' && cabinets !== null ? Object.keys(cabinets).length : 0
  if (count > MOST_CABINETS) return bad(`The file has ${count} cabinets; ${MOST_CABINETS} is the most.`)
  const outcome = savedProject.safeParse(saved)
  if (!outcome.success) return bad(issuesIn(outcome.error.issues, saved))
  const document = outcome.data as unknown as Project
  const dangling = danglingIn(document)
  return dangling ? bad(`The file cannot be read as a project. ${dangling}`) : good(document)
}

function inKeyOrder(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(inKeyOrder)
  if (typeof value !== 'object' || value === null) return value
  const entries = Object.entries(value).filter(([, inner]) => inner !== undefined)
  return Object.fromEntries(
    entries.sort(([a], [b]) => (a < b ? -1 : 1)).map(([key, inner]) => [key, inKeyOrder(inner)]),
  )
}

function parsed(text: string): Result<Record<string, unknown>> {
  try {
    const value: unknown = JSON.parse(text.replace(/^\uFEFF/, ''))
    if (typeof value === 'object' && value !== null && !Array.isArray(value))
      return good(value as Record<string, unknown>)
    return bad(`The file is not a Casewright project: it holds ${shown(value)}.`)
  } catch {
    return bad('The file is not a Casewright project: it is not JSON, or it is cut short.')
  }
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

function issuesIn(issues: readonly z.core.$ZodIssue[], saved: unknown): string {
  const told = issues.slice(0, ISSUES_SHOWN).map((issue) => spoken(issue, saved))
  const more = issues.length > ISSUES_SHOWN ? ` And ${issues.length - ISSUES_SHOWN} more.` : ''
  return `The file cannot be read as a project. ${told.join(' ')}${more}`
}

/** `cabinets.k3.width is -20; it must be between 1 and 20000 mm.` */
function spoken(issue: z.core.$ZodIssue, saved: unknown): string {
  const path = issue.path.map((key) => String(key).slice(0, 60)).join('.')
  if (issue.code === 'unrecognized_keys') {
    return `${path || 'The project'} has a field that is not known: ${issue.keys.join(', ').slice(0, 60)}.`
  }
  if (issue.code === 'invalid_key') return `${path} has a name that is no id: small letters, figures and hyphens.`
  const value = issue.path.reduce<unknown>((inner, key) => {
    const isHolder = typeof inner === 'object' && inner !== null && Object.hasOwn(inner, key)
    return isHolder ? (inner as Record<PropertyKey, unknown>)[key] : undefined
  }, saved)
  return `${path} is ${shown(value)}; ${limitIn(issue)}.`
}

/** Our own words start with `it must`; the others are the library's, made to follow a semicolon. */
function limitIn({ code, message }: z.core.$ZodIssue): string {
  if (message.startsWith('it must')) return message
  if (code === 'invalid_union') return 'it must be one of the kinds that Casewright knows'
  return `${message.charAt(0).toLowerCase()}${message.slice(1)}`
}

function shown(value: unknown): string {
  if (value === undefined) return 'missing'
  if (typeof value === 'object' && value !== null) return Array.isArray(value) ? 'a list' : 'an object'
  const text = JSON.stringify(value)
  return text.length > 60 ? `${text.slice(0, 60)}...` : text
}
