import { valuesOf } from '../basics/id'
import { buildCabinet } from '../cabinets/buildCabinet'
import { partsOf } from '../parts/partsOf'
import type { ColumnShelves, Interior, Material } from '../project/document'
import { baysOf, withBayShelves } from '../project/interior'
import type { MethodChoices } from '../project/method'
import type { Checked, Remedy } from './finding'

/** A cabinet as it would be, and the edit that makes it so. */
export interface Changed {
  readonly changed: Checked
  readonly edit: Remedy['edit']
}

/** With other shelves or another partition. */
export function withInside(checked: Checked, interior: Interior): Changed {
  const { cabinet } = checked
  return {
    changed: { ...checked, cabinet: { ...cabinet, interior } },
    edit: { kind: 'setInterior', ids: [cabinet.id], interior },
  }
}

/** Built by other choices than its method has. */
export function withChoices(checked: Checked, choices: Partial<MethodChoices>): Changed {
  const { cabinet, rules } = checked
  return {
    changed: { ...checked, rules: { ...rules, method: { ...rules.method, ...choices } } },
    edit: { kind: 'override', ids: [cabinet.id], choices },
  }
}

/** With all its loose shelves fixed, or those of one of its bays, from 1 at the left. */
export function withShelvesFixed(checked: Checked, bay: number | null = null): Changed {
  const { interior } = checked.cabinet
  if (bay === null) return withInside(checked, allFixed(interior))
  const { bays, partition: _, pipes: __, ...common } = interior
  return withInside(checked, withBayShelves(interior, bay - 1, allFixed(bays?.[bay - 1]?.shelves ?? common)))
}

function allFixed<Shelves extends ColumnShelves>(shelves: Shelves): Shelves {
  return { ...shelves, fixedShelves: shelves.fixedShelves + shelves.adjustableShelves, adjustableShelves: 0 }
}

/** With a partition in its middle; null where there is one, or columns part it. */
export function withPartition(checked: Checked): Changed | null {
  const { interior, front } = checked.cabinet
  return baysOf(interior).length > 0 || front.kind === 'columns'
    ? null
    : withInside(checked, { ...interior, partition: { at: 0.5 } })
}

/** Of each board of the project that is thicker than its own, the thinnest first. */
export function ofThicker(checked: Checked, choice: 'carcassMaterial' | 'frontMaterial') {
  const { rules } = checked
  const before = rules.materials[rules.method[choice]]?.thickness ?? 0
  return valuesOf<Material>(rules.materials)
    .filter(({ thickness }) => thickness > before)
    .sort((a, b) => a.thickness - b.thickness || (a.id < b.id ? -1 : 1))
    .map(({ id, name }) => ({ name, ...withChoices(checked, { [choice]: id }) }))
}

/** The boards of a change; null where it cannot be built as well as before. */
export function builtWith({ changed }: Changed, { cabinet, rules }: Checked): Checked | null {
  const build = buildCabinet(changed.cabinet, changed.rules)
  if (build.problems.length > buildCabinet(cabinet, rules).problems.length) return null
  return { ...changed, parts: partsOf(build, changed.rules) }
}
