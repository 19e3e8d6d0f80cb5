import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, it } from 'vitest'
import { breakdownOf, demonstrationKitchen, derive } from '../../engine/index'
import { packSheets } from '../../engine/sheets/pack'
import { piecesIn, restWords } from '../../web/sheets/BenchView'
import { piecesWords } from '../../web/sheets/words'
import { UnplacedWords } from '../../web/stages/StartCutting'
import { doneOf } from '../../web/store/cutting'
import type { Cutting } from '../../web/store/state'

const { project, sheetJob: job, cutList } = derive(demonstrationKitchen())
let looks = 0
const answer = packSheets(job, () => ++looks > 2)
const { shop, materials } = project
const CUTTING: Cutting = {
  ...{ project: project.id, done: ['1', '2'], cutBefore: [], told: [], stepsBefore: 41 },
  input: { job, answer, cutList, marks: new Map(), shop, materials },
}
const { steps, settings } = breakdownOf(CUTTING.input)

describe('what is said at the bench', () => {
  it('counts what was done before the plan was made anew', () => {
    expect(doneOf(CUTTING)).toEqual({ steps: 41 + 2, of: 41 + steps.length })
  })

  it('has as many settings left as the plan has, before the first is made', () => {
    expect(restWords(steps, new Set())).toContain(`with ${settings} settings, on `)
    const first = steps.findIndex(({ isNewSetting }) => isNewSetting)
    const done = new Set(steps.slice(0, first + 1).map(({ id }) => id))
    expect(restWords(steps, done)).toContain(`with ${settings - 1} settings, on `)
  })

  it('calls a strip that is cut on a piece and not a sheet', () => {
    const sheets = answer.sheets.reduce((sum, { copies }) => sum + copies, 0)
    expect(restWords(steps, new Set(), piecesIn(CUTTING))).toContain(`on ${sheets} sheets.`)
    expect(restWords(steps, new Set(), new Set([1]))).toContain(`on ${sheets - 1} sheets and 1 piece.`)
  })

  it('counts pieces in words that agree', () => {
    expect([1, 2].map((count) => piecesWords({ kind: 'strip', count }))).toEqual(['1 strip', '2 strips'])
    expect(piecesWords({ kind: 'piece', count: 1 })).toBe('1 piece to cut further')
  })
})

describe('parts that lie on no sheet', () => {
  it('are counted and named with the reason', () => {
    const left = [{ part: cutList.rows[0]!.key, quantity: 2, reason: 'no room' }]
    const shown = renderToStaticMarkup(<UnplacedWords left={left} rows={cutList.rows} />)
    expect(shown).toContain('2 parts lie on no sheet and would not be cut')
    expect(shown).toContain(`${cutList.rows[0]!.mark} ${cutList.rows[0]!.name}`)
    expect(shown).toContain('no room.')
  })
})
