import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, it } from 'vitest'
import { breakdownOf, demonstrationKitchen, derive } from '../../engine/index'
import { usualSpace } from '../../engine/project/usualSpace'
import { packSheets } from '../../engine/sheets/pack'
import { AllCut } from '../../web/sheets/AllCut'
import { restWords } from '../../web/sheets/BenchView'
import { handWords, piecesWords } from '../../web/sheets/words'
import { proofOf } from '../../web/stages/figures'
import { wallsWords } from '../../web/stages/ShowStage'
import { UnplacedWords } from '../../web/stages/StartCutting'
import { doneOf, handNow } from '../../web/store/cutting'
import type { Cutting } from '../../web/store/state'
import { aRoom, cabinet, OTHER_WALL } from '../helpers/wall'

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
    expect(restWords(steps, new Set())).toContain(`with ${settings} settings.`)
    const first = steps.findIndex(({ isNewSetting }) => isNewSetting)
    const done = new Set(steps.slice(0, first + 1).map(({ id }) => id))
    expect(restWords(steps, done)).toContain(`with ${settings - 1} settings.`)
  })

  it('counts what lies there and is still to be cut, as many as its steps take up', () => {
    const whole = answer.sheets.reduce((sum, { copies }) => sum + copies, 0)
    expect(handWords(handNow({ ...CUTTING, done: [] }))).toBe(`At hand: ${whole} sheets`)
    // Half done: all sheets lie there in pieces, and each piece that is to be cut is taken by an open step.
    const done = steps.slice(0, Math.round(0.6 * steps.length)).map(({ id }) => id)
    const hand = handNow({ ...CUTTING, done })
    const open = steps
      .filter(({ id }) => !done.includes(id))
      .map(({ takes }) => ` ${takes.name.replace(/,| and/g, '')} `)
    const toCut = hand.filter(({ name }) => open.some((names) => names.includes(` ${name.replace('rest of ', '')} `)))
    expect(handWords(hand)).toBe(`At hand: ${hand.length} pieces, ${toCut.length} of them still to be cut`)
    const all = handNow({ ...CUTTING, done: steps.map(({ id }) => id) })
    expect(handWords(all)).toBe(`At hand: ${all.length} pieces, left over`)
  })

  it('counts pieces in words that agree', () => {
    expect([1, 2].map((count) => piecesWords({ kind: 'strip', count }))).toEqual(['1 strip', '2 strips'])
    expect(piecesWords({ kind: 'piece', count: 1 })).toBe('1 piece to cut further')
  })
})

describe('boards that are on no sheet', () => {
  it('are counted before the others are cut, with the reasons, folded when they are many', () => {
    const shown = (lines: string[]) => renderToStaticMarkup(<UnplacedWords count={99} lines={lines} />)
    expect(shown(['no room'])).toContain('99 boards are on no sheet and would not be cut.')
    expect(shown(['no room'])).toMatch(/<details open="">.*<li>no room<\/li>/)
    expect(shown(['a', 'b', 'c'])).toContain('<details><summary>')
  })

  it('are called the same beside the figures', () => {
    const unplaced = [{ part: cutList.rows[0]!.key, quantity: 1, reason: '' }]
    const layout = { job, answer: { ...answer, unplaced }, isSettled: true }
    expect(proofOf(layout)).toEqual({ text: '1 board is on no sheet', isProved: false })
  })

  it('are not counted as cut at the end, and are named by what they are of', () => {
    const [first] = cutList.rows
    const all = cutList.rows.reduce((sum, { quantity }) => sum + quantity, 0)
    const input = { ...CUTTING.input, answer: { ...answer, unplaced: [{ part: first!.key, quantity: 2, reason: '' }] } }
    const end = renderToStaticMarkup(<AllCut cutting={{ ...CUTTING, input }} steps={7} open={0} />)
    expect(end).toContain(`${all - 2} parts are cut, in 7 steps.`)
    expect(end).toContain(`2 boards are on no sheet and are not cut: 2 of ${materials[first!.material]!.name}.`)
    const whole = renderToStaticMarkup(<AllCut cutting={CUTTING} steps={7} open={0} />)
    expect(whole).toContain(`${all} parts are cut`)
    expect(whole).not.toContain('on no sheet')
  })
})

describe('what the client is told', () => {
  it('names the wall that all cabinets are on', () => {
    expect(wallsWords(derive(demonstrationKitchen()))).toBe('10 cabinets on Window wall.')
  })

  it('counts the cabinets of every wall that has some', () => {
    const room = aRoom(cabinet('B1'), cabinet('B2', { left: 600 }), cabinet('B3', { wall: OTHER_WALL, left: 900 }))
    expect(wallsWords(derive(room))).toBe('3 cabinets on 2 walls: 2 on Wall, 1 on Side wall.')
    expect(wallsWords(derive(aRoom()))).toBe('No cabinets yet.')
  })

  it('does not count an appliance as a cabinet', () => {
    const { space } = usualSpace(aRoom(), 'dishwasher', 'base')
    const room = aRoom(cabinet('B1'), cabinet('B2', { left: 600, space }))
    expect(wallsWords(derive(room))).toBe('1 cabinet and 1 appliance on Wall.')
  })
})
