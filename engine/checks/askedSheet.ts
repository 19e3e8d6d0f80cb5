import type { MaterialId } from '../basics/id'
import type { CutRow } from '../cutlist/row'
import type { Project } from '../project/document'
import type { JobPart, SheetJob } from '../sheets/job'
import type { SheetLayout } from '../sheets/layout'
import { lockedSheets, pinKey } from '../sheets/pinned'
import { sheetCount } from '../sheets/tally'
import type { Finding } from './finding'
import { leadersOf } from './runWish'

/** What takes back that boards must come from one sheet, or from one kind of sheet. */
export const ANY_SHEET = 'Take these boards from any sheet'

/** How many sheets of other materials come before those of a material: its first has the number after that. */
export function sheetsBefore(material: string, { stock }: SheetJob, sheets: readonly SheetLayout[]): number {
  const own = new Set(stock.filter((one) => one.material === material).map(({ id }) => id))
  const first = sheets.findIndex((sheet) => own.has(sheet.stock))
  const before = first < 0 ? sheets : sheets.slice(0, first)
  return sheetCount({ sheets: before })
}

/** Why boards are not on the sheet that they must come from, which has room for one of them when it is empty. */
export function whyNotOnSheet(
  part: Pick<JobPart, 'material' | 'sheet'>,
  name: string,
  job: SheetJob,
  sheets: readonly SheetLayout[],
): string {
  const sheet = `sheet ${sheetsBefore(part.material, job, sheets) + part.sheet!} of ${name}, which they must come from,`
  return lockedSheets(job).has(pinKey(part))
    ? `${sheet} is kept as it is, without them. Let it go, or choose another sheet.`
    : `${sheet} has no room for them beside what else must come from it, or there is none left to open. Choose another sheet.`
}

/** Boards that must come from one sheet and lie on one of another number, since there are fewer or a kept one has it. */
export function onOtherSheets(
  { project, rows, job }: { readonly project: Project; readonly rows: readonly CutRow[]; readonly job: SheetJob },
  sheets: readonly SheetLayout[],
): Finding[] {
  const leaders = leadersOf(rows)
  const groups = new Map<string, CutRow[]>()
  for (const row of rows) {
    if (row.sheet === undefined) continue
    const leader = leaders.get(row)
    const name = leader ? `${pinKey(row)} ${leader.key}` : pinKey(row)
    groups.set(name, [...(groups.get(name) ?? []), row])
  }
  return [...groups.values()].flatMap((group): Finding[] => {
    const { material, sheet } = group[0]!
    const keys = new Set<string>(group.map(({ key }) => key))
    const at = sheets.findIndex(({ placements }) => placements.some(({ part }) => keys.has(part)))
    if (at < 0) return []
    const before = sheetsBefore(material, job, sheets)
    const own = new Set(job.stock.filter((one) => one.material === material).map(({ id }) => id))
    const count = sheetCount({ sheets: sheets.filter(({ stock }) => own.has(stock)) })
    const is = sheetCount({ sheets: sheets.slice(0, at) }) + 1
    const wished = before + sheet!
    if (is === wished) return []
    const name = project.materials[material]!.name
    const leader = leaders.get(group[0]!)
    const why = leader
      ? `their run of grain must come from sheet ${before + leader.sheet!}, which is chosen for ${leader.mark}`
      : wished > before + count
        ? `the last of ${name} is sheet ${before + count}`
        : 'a kept sheet has that number'
    return [findingOf(group, name, { wished, is, why })]
  })
}

function findingOf(
  rows: readonly CutRow[],
  name: string,
  { wished, is, why }: { readonly wished: number; readonly is: number; readonly why: string },
): Finding {
  const boards = rows.map(({ mark, name: what }) => `${mark} (${what})`).join(', ')
  return {
    ...{ weight: 'mind', about: { kind: 'material', material: rows[0]!.material as MaterialId } },
    message: `${boards}: to come from sheet ${wished} of ${name}, and on sheet ${is}, since ${why}. Choose the sheet anew.`,
    ...{ measure: `sheet ${is}`, limit: `sheet ${wished}`, source: 'the sheets that were chosen for boards' },
    remedy: { label: ANY_SHEET, edit: { kind: 'pinSheet', parts: rows.flatMap(({ parts }) => parts), sheet: null } },
  }
}
