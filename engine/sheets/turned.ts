import type { MaterialId } from '../basics/id'
import { valuesOf } from '../basics/id'
import { ROLE_NAMES } from '../cabinets/role'
import type { CutRow } from '../cutlist/row'
import type { Cabinet, Project } from '../project/document'
import type { BuildMethod } from '../project/method'
import { ticks } from '../units/length'
import type { JobPart, SheetJob } from './job'
import { fits, partKind, stockKind } from './lot'

/**
 * The job with the backs turned that no sheet gives as they stand, with the grain up, but some sheet gives lying. A back
 * is hidden behind what is in the cabinet; one of the material of the fronts is not, and stays as it is.
 */
export function withBacksTurned(job: SheetJob, rows: readonly CutRow[], project: Project): SheetJob {
  const fronts = frontMaterials(project)
  const hidden = rows.filter(({ name, material }) => name === ROLE_NAMES.back && !fronts.has(material))
  const keys = new Set<string>(hidden.map(({ key }) => key))
  if (keys.size === 0) return job
  const parts = job.parts.map((part) => (keys.has(part.id) && mustTurn(part, job) ? { ...part, rotate: true } : part))
  return parts.every((part, at) => part === job.parts[at]) ? job : { ...job, parts }
}

function frontMaterials({ methods, cabinets }: Project): ReadonlySet<MaterialId> {
  const own = valuesOf<Cabinet>(cabinets).flatMap(({ overrides }) => overrides.frontMaterial ?? [])
  return new Set([...valuesOf<BuildMethod>(methods).map(({ frontMaterial }) => frontMaterial), ...own])
}

function mustTurn(part: JobPart, job: SheetJob): boolean {
  if (part.rotate || part.bank) return false
  const own = job.stock.filter(({ material, excluded }) => material === part.material && !excluded)
  const kinds = own.map((one) => stockKind(one, job))
  const isGiven = (rotate: boolean) => kinds.some((one) => fits(partKind({ ...part, rotate }, ticks(job.kerf)), one))
  return !isGiven(false) && isGiven(true)
}

/** Rows that are turned in a job although their grain runs one way. */
export function turnedRows({ parts }: Pick<SheetJob, 'parts'>, rows: readonly CutRow[]): CutRow[] {
  const turned = new Set(parts.flatMap(({ id, rotate }) => (rotate ? [id] : [])))
  return rows.filter(({ key, isGrainBound }) => isGrainBound && turned.has(key))
}
