import { existsSync, mkdirSync, statSync, writeFileSync } from 'node:fs'
import { dirname, join, resolve } from 'node:path'
import { ASSEMBLY_CAUTIONS, assemblyOfCabinet } from '../assembly/assemblyOf'
import { assemblyOfRun } from '../assembly/assemblyOfRun'
import { readJson } from '../basics/json'
import { assignParts } from '../breakdown/assign'
import { cutNumbersOf } from '../breakdown/cutNumbers'
import { freedIn, sawnOutOf } from '../breakdown/sawnOut'
import { type BreakdownInput, breakdownOf } from '../breakdown/steps'
import { onOtherSheets } from '../checks/askedSheet'
import { installCautions } from '../checks/installation'
import { leftOut } from '../checks/leftOut'
import { partDrawing } from '../drawings/part'
import { sheetDrawing } from '../drawings/sheet'
import { buyList, costOfLines, inOrderOf, onHandList, sheetCost } from '../estimate/price'
import { cutListCsv } from '../export/csv'
import { svgOf } from '../export/svg'
import { boughtFor } from '../hardware/seamBolts'
import { alikeParts } from '../parts/alike'
import { type Derived, derive } from '../pipeline'
import type { Project } from '../project/document'
import { readProject } from '../project/schema'
import type { SheetJob } from '../sheets/job'
import type { SheetAnswer } from '../sheets/layout'
import { packSheets } from '../sheets/pack'
import { printedCabinet, printedRun } from './printed'
import { readText, whyNoFile } from './text'

/** `plan PROJECT.json [--out DIR]`: everything that follows from a project file, as one JSON object. */
export async function planCommand(args: readonly string[]): Promise<number> {
  const [file, option, folder] = args
  if (!file || (option && (option !== '--out' || !folder))) {
    return refuse('usage: npm run --silent plan -- PROJECT.json [--out DIR]')
  }
  const text = readText(file)
  if (!text.ok) return refuse(text.message)
  const json = readJson(text.value)
  if (!json.ok) return refuse(`${file}, ${json.message}`)
  const project = readProject(text.value)
  if (!project.ok) return refuse(project.message)
  // A folder that cannot be had is told before the sheets are laid out, which takes seconds.
  const none = folder ? whyNotWritten(folder, () => makeFolder(resolve(folder))) : null
  if (none) return refuse(none)
  const derived = derive(project.value)
  const answer = packSheets(derived.sheetJob)
  const plan = JSON.stringify(planOf(derived, answer))
  const wrong = folder ? whyNotWritten(folder, () => writeAll(folder, derived, answer, plan)) : null
  if (wrong) return refuse(wrong)
  console.log(plan)
  return 0
}

function toCut({ project, cutList, sheetJob: job, partOf }: Derived, answer: SheetAnswer): BreakdownInput {
  const { shop, materials, display } = project
  const marks = new Map([...partOf].map(([id, { mark }]) => [id, mark]))
  return { job, answer, shop, cutList, marks, materials, display }
}

function planOf(derived: Derived, answer: SheetAnswer) {
  const { project, cutList, sheetJob: job, partOf } = derived
  const { shop, display } = project
  const breakdown = breakdownOf(toCut(derived, answer))
  const asked = { project, rows: cutList.rows, job }
  const left = [...leftOut(asked, answer), ...onOtherSheets(asked, answer.sheets)].map(({ message }) => message)
  const known = derived.problems.map(({ message }) => message)
  return {
    cabinets: derived.cabinets.map((one) => printedCabinet(one, shop.late)),
    runs: derived.runs.map((run) => printedRun(run, shop.late)),
    cutList,
    sheets: answer,
    steps: breakdown.steps,
    cutting: { order: breakdown.order, proposed: breakdown.proposed, compared: breakdown.compared },
    sawnOut: sawnOutOf([...partOf.values()], shop, display),
    assembly: [
      ...derived.cabinets.map((one) => ({ cabinet: one.mark, steps: assemblyOfCabinet(one, project) })),
      ...derived.runs.map((run) => ({ cabinet: run.mark, steps: assemblyOfRun(run, project) })),
    ],
    hardware: [...derived.cabinets, ...boughtFor(derived.runs, project)].flatMap(({ mark, hardware }) =>
      hardware.map((row) => ({ cabinet: mark, ...row })),
    ),
    cost: printedCost(project, job, answer),
    warnings: [...new Set([...known, ...left]), ...breakdown.cautions, ...ASSEMBLY_CAUTIONS, ...fixing(derived)],
  }
}

/** `sheets` is what all sheets are worth; `toBuy` and `worthOnHand` are its two shares. */
function printedCost({ shop: { currency }, materials }: Project, job: SheetJob, answer: SheetAnswer) {
  const buy = inOrderOf(materials, buyList(job, answer))
  const onHand = inOrderOf(materials, onHandList(job, answer))
  const sums = { toBuy: costOfLines(buy), worthOnHand: costOfLines(onHand) }
  return { currency, sheets: sheetCost(job, answer), ...sums, buy, onHand }
}

/** What the checks find in a cabinet is among the problems, and is said once. */
function fixing({ cabinets, project }: Derived): string[] {
  const standing = cabinets.map(({ cabinet }) => cabinet)
  return installCautions(standing, project.display, project.house)
    .filter(({ isFinding }) => !isFinding)
    .map(({ text, cabinets: marks }) => [...marks, text].join(' '))
}

/** One line that says why a folder could not be written to, or nothing. */
function whyNotWritten(folder: string, write: () => void): string | null {
  try {
    write()
    return null
  } catch (error) {
    return `${folder} cannot be written to: ${whyNoFile(error)}`
  }
}

/** Step by step: asked for a whole path at once, some systems never give up on one that cannot be made. */
function makeFolder(folder: string): void {
  if (existsSync(folder)) {
    if (!statSync(folder).isDirectory()) throw new Error('it is a file')
    return
  }
  makeFolder(dirname(folder))
  mkdirSync(folder)
}

/** The drawing of every part that is not like another, by the mark of the first of them. */
function writeParts(folder: string, { cabinets, runs, project }: Derived): void {
  for (const [part, ...others] of alikeParts([...cabinets, ...runs].flatMap(({ parts }) => parts))) {
    const title = `${[part, ...others].map(({ mark }) => mark).join(' ')}, ${part.name}`
    const drawing = partDrawing({ part, display: project.display })
    writeFileSync(join(folder, `part-${part.mark}.svg`), svgOf(drawing, title))
  }
}

/** The cut list as CSV, each distinct sheet as SVG, and the plan as JSON. */
function writeAll(folder: string, derived: Derived, answer: SheetAnswer, plan: string): void {
  const { project, cutList, sheetJob } = derived
  writeParts(folder, derived)
  writeFileSync(join(folder, 'plan.json'), `${plan}\n`)
  writeFileSync(join(folder, 'cut-list.csv'), cutListCsv(cutList, project.materials, project.display))
  const marks = new Map<string, string>(cutList.rows.map(({ key, mark }) => [key, mark]))
  const runs = new Map<string, string>(cutList.rows.flatMap(({ key, bank }) => (bank ? [[key, bank.id]] : [])))
  const runOf = (row: string) => runs.get(row) ?? null
  const turns = cutNumbersOf(toCut(derived, answer))
  const placed = assignParts(cutList, answer)
  let sheet = 1
  for (const [at, layout] of answer.sheets.entries()) {
    const own = placed.filter((part) => part.sheet === sheet)
    const freed = own.map(({ part }) => freedIn(derived.partOf.get(part)!, project.shop))
    const numbers = turns.get(sheet)
    sheet += layout.copies
    const stock = sheetJob.stock.find(({ id }) => id === layout.stock)!
    const hasGrain = Object.values(project.materials).some((one) => one.id === stock.material && one.hasGrain)
    const markOf = (row: string) => marks.get(row) ?? row
    const { kerf } = sheetJob
    const { display } = project
    const drawing = sheetDrawing({ layout, stock, kerf, markOf, display, hasGrain, numbers, freed, runOf })
    writeFileSync(join(folder, `sheet-${at + 1}.svg`), svgOf(drawing, `Sheet ${at + 1}, ${layout.copies} alike`))
  }
}

function refuse(message: string): number {
  console.error(message)
  return 2
}

// Who reads the answer may have had enough of it.
process.stdout.on('error', () => process.exit(0))
process.exitCode = await planCommand(process.argv.slice(2))
