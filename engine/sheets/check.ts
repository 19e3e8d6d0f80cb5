import { bad, good, type Result } from '../basics/result'
import { LIMITS } from '../project/limits'
import { RANGES } from '../project/ranges'
import { wrongBanks } from './bank'
import { wrongLayouts, wrongLocks } from './checkLayouts'
import type { JobPart, JobStock, SheetJob } from './job'

const LONGEST = 100_000
const LEAST = 0.01
/** No blade is thicker, on the page or here. */
const WIDEST_KERF = LIMITS.kerf.most
const MOST_KINDS = 10_000
const MOST_PARTS = 50_000

type Fields = Readonly<Record<string, unknown>>

/** A job from outside: the job itself, or the field and the value that make it none. */
export function checkJob(job: unknown): Result<SheetJob> {
  if (!isFields(job)) return bad('the job is not an object')
  const wrong = wrongIn(job) ?? wrongLayouts('locked', job.locked) ?? wrongPlaces(job) ?? wrongLayouts('near', job.near)
  if (wrong) return bad(wrong)
  const checked = job as unknown as SheetJob
  const unlockable = wrongBanks(checked) ?? wrongLocks(checked)
  return unlockable ? bad(unlockable) : good(checked)
}

function wrongIn(job: Fields): string | null {
  if (!Array.isArray(job.stock)) return `stock is ${shown(job.stock)}; it must be a list of sheets`
  if (!Array.isArray(job.parts)) return `parts is ${shown(job.parts)}; it must be a list of parts`
  if (job.parts.length > MOST_KINDS) return `parts has ${job.parts.length} entries; ${MOST_KINDS} is the most`
  const stages = [2, 3, null, undefined]
  if (!stages.includes(job.stages as null)) return `stages is ${shown(job.stages)}; it must be 2, 3 or null`
  const ways = ['rip', 'crosscut', 'any', undefined]
  if (!ways.includes(job.firstCut as string))
    return `firstCut is ${shown(job.firstCut)}; it must be rip, crosscut or any`
  const efforts = ['glance', 'quick', 'thorough', undefined]
  if (!efforts.includes(job.effort as string))
    return `effort is ${shown(job.effort)}; it must be glance, quick or thorough`
  const found =
    wrongKerf(job.kerf) ??
    (job.seconds === undefined ? null : notSize('seconds', job.seconds, 0)) ??
    (job.seed === undefined ? null : notCount('seed', job.seed)) ??
    (job.offcutLeast === undefined ? null : wrongLeast(job.offcutLeast)) ??
    (job.goals === undefined ? null : wrongGoals(job.goals)) ??
    notSwitch('isCountFirst', job.isCountFirst) ??
    firstWrong('stock', job.stock, wrongStock) ??
    firstWrong('parts', job.parts, wrongPart)
  if (found) return found
  const count = job.parts.reduce((sum: number, part: { quantity: number }) => sum + part.quantity, 0)
  const strayed = strayFrom(job.parts as readonly JobPart[], job.stock as readonly JobStock[])
  if (strayed) return strayed
  return count > MOST_PARTS ? `parts asks for ${count} boards in all; ${MOST_PARTS} is the most` : null
}

function wrongKerf(kerf: unknown): string | null {
  const isKerf = typeof kerf === 'number' && Number.isFinite(kerf) && kerf >= 0 && kerf <= WIDEST_KERF
  return isKerf ? null : `kerf is ${shown(kerf)}; it must be a number from 0 to ${WIDEST_KERF}`
}

function firstWrong(list: string, things: readonly unknown[], wrong: (thing: Fields, path: string) => string | null) {
  const ids = new Set<unknown>()
  for (const [at, thing] of things.entries()) {
    const path = `${list}[${at}]`
    if (!isFields(thing)) return `${path} is ${shown(thing)}; it must be an object`
    if (typeof thing.id !== 'string') return `${path}.id is ${shown(thing.id)}; it must be a text`
    if (typeof thing.material !== 'string') return `${path}.material is ${shown(thing.material)}; it must be a text`
    if (ids.has(thing.id)) return `${path}.id is ${shown(thing.id)}, which another has`
    ids.add(thing.id)
    const found =
      notLength(`${path}.length`, thing.length) ?? notLength(`${path}.width`, thing.width) ?? wrong(thing, path)
    if (found) return found
  }
  return null
}

function wrongStock(stock: Fields, path: string): string | null {
  const trim = stock.trim
  if (trim !== undefined && !isFields(trim)) return `${path}.trim is ${shown(trim)}; it must have a length and a width`
  return (
    (trim ? (notSize(`${path}.trim.length`, trim.length, 0) ?? notSize(`${path}.trim.width`, trim.width, 0)) : null) ??
    (stock.quantity === undefined ? null : notCount(`${path}.quantity`, stock.quantity)) ??
    (stock.price === undefined ? null : notSize(`${path}.price`, stock.price, 0)) ??
    notSwitch(`${path}.offcut`, stock.offcut) ??
    notSwitch(`${path}.excluded`, stock.excluded)
  )
}

/** What is wished from a stock that is not there, or is of another material. */
function strayFrom(parts: readonly JobPart[], stock: readonly JobStock[]): string | null {
  const at = parts.findIndex(
    ({ from, material }) => from !== undefined && !stock.some((one) => one.id === from && one.material === material),
  )
  return at < 0 ? null : `parts[${at}].from is ${shown(parts[at]!.from)}; it must be a stock of ${parts[at]!.material}`
}

function wrongLeast(least: unknown): string | null {
  if (!isFields(least)) return `offcutLeast is ${shown(least)}; it must have a length and a width`
  return notSize('offcutLeast.length', least.length, 0) ?? notSize('offcutLeast.width', least.width, 0)
}

function wrongPlaces({ locked, lockedAt }: Fields): string | null {
  if (lockedAt === undefined) return null
  const count = Array.isArray(locked) ? locked.length : 0
  if (!Array.isArray(lockedAt) || lockedAt.length !== count) {
    return `lockedAt is ${shown(lockedAt)}; it must be a list of ${count} numbers, one for each sheet of locked`
  }
  return lockedAt.reduce((wrong, at, place) => wrong ?? notCount(`lockedAt[${place}]`, at), null)
}

function wrongGoals(goals: unknown): string | null {
  if (!Array.isArray(goals)) return `goals is ${shown(goals)}; it must be a list`
  const at = goals.findIndex((goal, at) => !['leftover', 'settings'].includes(goal) || goals.indexOf(goal) < at)
  return at < 0 ? null : `goals[${at}] is ${shown(goals[at])}; it must be leftover or settings, each once`
}

function wrongPart(part: Fields, path: string): string | null {
  if (part.rotate !== undefined && typeof part.rotate !== 'boolean') {
    return `${path}.rotate is ${shown(part.rotate)}; it must be true or false`
  }
  const { bank } = part
  const isBank = isFields(bank) && typeof bank.id === 'string' && ['length', 'width'].includes(bank.along as string)
  if (bank !== undefined && !isBank)
    return `${path}.bank is ${shown(bank)}; it must have an id, and along: length or width`
  if (part.from !== undefined && typeof part.from !== 'string') {
    return `${path}.from is ${shown(part.from)}; it must be the id of a stock`
  }
  if (part.sheet !== undefined) {
    const wrong = notCount(`${path}.sheet`, part.sheet, 1, RANGES.sheet.most)
    if (wrong) return wrong
  }
  return notCount(`${path}.quantity`, part.quantity, 1, MOST_PARTS)
}

/** Less than half a tick of the length grid is nothing to the saw. */
function notLength(path: string, value: unknown): string | null {
  return notSize(path, value, LEAST)
}

function notSize(path: string, value: unknown, least: number): string | null {
  const isSize = typeof value === 'number' && Number.isFinite(value) && value >= least && value <= LONGEST
  return isSize ? null : `${path} is ${shown(value)}; it must be a number from ${least} to ${LONGEST}`
}

function notCount(path: string, value: unknown, least = 0, most = Number.MAX_SAFE_INTEGER): string | null {
  const isCount = typeof value === 'number' && Number.isInteger(value) && value >= least && value <= most
  return isCount ? null : `${path} is ${shown(value)}; it must be a whole number from ${least} to ${most}`
}

function notSwitch(path: string, value: unknown): string | null {
  return value === undefined || typeof value === 'boolean'
    ? null
    : `${path} is ${shown(value)}; it must be true or false`
}

function isFields(value: unknown): value is Fields {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

function shown(value: unknown): string {
  return value === undefined
    ? 'missing'
    : typeof value === 'number'
      ? String(value)
      : (JSON.stringify(value)?.slice(0, 40) ?? String(value))
}
