import { bad, good, type Result } from '../basics/result'
import { type Project, VERSION } from './document'
import { migrate } from './migrate'
import { fieldsIn, issuesIn, shown } from './reading'
import { danglingIn } from './references'
import { METHOD_KIND, savedProject } from './saved'
import { fileText } from './writing'

/** What reading a file may cost; anything beyond is no project of a small shop. */
const MOST_CHARACTERS = 20_000_000
const MOST_CABINETS = 500

/** Reads a saved project. A message names what is wrong by its path in the file, its value and the limit. */
export function readProject(text: string): Result<Project> {
  const saved = fieldsIn(text, 'project', MOST_CHARACTERS)
  if (!saved.ok) return saved
  if (saved.value.kind === METHOD_KIND) {
    return bad('The file is a build method, not a project. Bring it in under Build method.')
  }
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
  return fileText(document)
}

function checked(saved: Record<string, unknown>): Result<Project> {
  const { cabinets } = saved
  const count = typeof cabinets === 'object' && cabinets !== null ? Object.keys(cabinets).length : 0
  if (count > MOST_CABINETS) return bad(`The file has ${count} cabinets; ${MOST_CABINETS} is the most.`)
  const outcome = savedProject.safeParse(saved)
  if (!outcome.success) return bad(issuesIn(outcome.error.issues, saved, 'project'))
  const document = outcome.data as unknown as Project
  const dangling = danglingIn(document)
  return dangling ? bad(`The file cannot be read as a project. ${dangling}`) : good(document)
}
