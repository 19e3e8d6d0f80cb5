/** How few sheets, how soon and how surely: on kitchens and the standard classes, made from seeds. */
import { boundOf } from '../../engine/sheets/bound'
import type { SheetJob } from '../../engine/sheets/job'
import type { SheetAnswer } from '../../engine/sheets/layout'
import { lotsOf } from '../../engine/sheets/lot'
import { packing } from '../../engine/sheets/pack'
import { settingsOf } from '../../engine/sheets/settings'
import { sheetCount } from '../../engine/sheets/tally'
import { verify } from '../../engine/sheets/verify'
import { median } from './engine'
import { classJob, kitchenJob } from './jobs'

/** Parts of a kitchen, and the seconds that it is given. */
const KITCHENS = [
  [30, 1],
  [80, 1],
  [150, 2],
  [300, 5],
  [600, 5],
] as const
const SEEDS = [1, 2, 3]
const CLASS_PARTS = [20, 60, 100]
const CLASS_SECONDS = 1

export function benchPacking() {
  return {
    kitchens: KITCHENS.map(([parts, seconds]) => kitchensOf(parts, seconds)),
    classesAnyDirections: classesOf({ stages: null, firstCut: 'any' }),
    classesThreeDirections: classesOf({ stages: 3, firstCut: 'rip' }),
  }
}

function kitchensOf(parts: number, seconds: number) {
  const runs = SEEDS.map((seed) => run({ ...kitchenJob(parts, seed), seconds }))
  return {
    parts,
    seconds,
    jobs: runs.length,
    ...summedUp(runs),
    settings: runs.map(({ answer }) => settingsOf(answer)),
  }
}

function classesOf(how: Pick<SheetJob, 'stages' | 'firstCut'>) {
  const runs = Array.from({ length: 10 }, (_, at) => at + 1).flatMap((which) =>
    CLASS_PARTS.map((parts, seed) => run({ ...classJob(which, parts, seed + 1), ...how, seconds: CLASS_SECONDS })),
  )
  return { jobs: runs.length, seconds: CLASS_SECONDS, ...summedUp(runs) }
}

function summedUp(runs: readonly Run[]) {
  const sum = (of: (run: Run) => number) => runs.reduce((total, each) => total + of(each), 0)
  return {
    firstMs: median(runs.map(({ firstMs }) => firstMs)),
    boundMs: median(runs.map(({ boundMs }) => boundMs)),
    firstSheets: sum(({ firstSheets }) => firstSheets),
    sheets: sum(({ answer }) => sheetCount(answer)),
    bound: sum(({ answer }) => Object.values(answer.bounds).reduce((all, one) => all + one, 0)),
    proved: runs.filter(({ answer }) => answer.proved).length,
    wrong: sum(({ wrong }) => wrong),
    mostOverBound: Math.max(...runs.map(({ answer }) => sheetCount(answer) - Object.values(answer.bounds)[0]!)),
    leftoverMm: runs.map(({ answer }) => leftover(answer)),
  }
}

interface Run {
  readonly answer: SheetAnswer
  readonly firstMs: number
  readonly firstSheets: number
  readonly boundMs: number
  /** What the verifier found wrong. */
  readonly wrong: number
}

function run(job: SheetJob): Run {
  const before = performance.now()
  boundOf(lotsOf(job)[0]!)
  const start = performance.now()
  let answer: SheetAnswer | null = null
  let first: Pick<Run, 'firstMs' | 'firstSheets'> | null = null
  for (const better of packing(job)) {
    const now = performance.now() - start
    answer = better ?? answer
    if (better) first ??= { firstMs: now, firstSheets: sheetCount(better) }
    if (answer && now > job.seconds! * 1000) break
  }
  return { answer: answer!, ...first!, boundMs: start - before, wrong: verify(job, answer!).length }
}

/** The widest strip from end to end of a sheet that no part was cut from, in mm. */
function leftover({ sheets }: SheetAnswer): number {
  const strips = sheets.flatMap(({ root }) => (root.kind === 'cut' && root.direction === 'rip' ? root.pieces : []))
  const free = strips.filter(({ kind }) => kind === 'offcut' || kind === 'waste')
  return Math.round(Math.max(0, ...free.map(({ width }) => width)))
}
