import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { describe, expect, it } from 'vitest'
import { aJob, boards } from './yard'

const HOUSE = resolve(__dirname, '../../..')
const folder = mkdtempSync(join(tmpdir(), 'sheets-'))
const job = aJob([boards('720 x 560 x 4'), boards('600 x 300 x 3', { rotate: true })])

function sheets(...args: string[]) {
  const tsx = join(HOUSE, 'node_modules/tsx/dist/cli.mjs')
  const { status, stdout, stderr } = spawnSync(process.execPath, [tsx, join(HOUSE, 'engine/cli/sheets.ts'), ...args], {
    encoding: 'utf8',
  })
  return { status, stdout, stderr }
}

function file(name: string, text: string): string {
  writeFileSync(join(folder, name), text)
  return join(folder, name)
}

describe('the sheets command', () => {
  it('prints the answer and nothing else', () => {
    const { status, stdout, stderr } = sheets(file('job.json', JSON.stringify(job)))
    const answer = JSON.parse(stdout)
    expect([status, stderr]).toEqual([0, ''])
    expect(Object.keys(answer)).toEqual(['sheets', 'unplaced', 'bounds', 'proved', 'elapsedMs'])
    expect(Object.keys(answer.sheets[0])).toEqual(['stock', 'copies', 'placements'])
    expect(Object.keys(answer.sheets[0].placements[0])).toEqual(['part', 'x', 'y', 'length', 'width', 'rotated'])
  })

  it.each([
    ['a negative kerf', JSON.stringify({ ...job, kerf: -3 }), 'kerf is -3; it must be a number from 0 to 100000'],
    ['no parts', JSON.stringify({ ...job, parts: null }), 'parts is null; it must be a list of parts'],
  ])('ends with 2 and one line for %s', (_, text, line) => {
    const { status, stdout, stderr } = sheets(file('bad.json', text))
    expect([status, stdout, stderr]).toEqual([2, '', `${line}\n`])
  })

  it('ends with 2 and one line for what is no JSON, and for no file', () => {
    for (const name of [file('torn.json', '{\n"kerf": 3,\n'), join(folder, 'none.json')]) {
      const { status, stderr } = sheets(name)
      expect([status, stderr.trim().split('\n').length]).toEqual([2, 1])
    }
  })

  it('answers a batch, one line each, and sums it up', () => {
    const jobs = [JSON.stringify({ name: 'one', ...job }), JSON.stringify({ name: 'two', ...job })].join('\n')
    const out = join(folder, 'answers.jsonl')
    const options = ['--seconds', '0.3', '--stages', 'any', '--first', 'any', '--turn', '--out', out]
    const { status, stdout } = sheets('--batch', file('jobs.jsonl', jobs), ...options)
    const answers = readFileSync(out, 'utf8')
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line))
    expect([status, answers.map(({ name }) => name)]).toEqual([0, ['one', 'two']])
    expect(JSON.parse(stdout)).toMatchObject({ jobs: 2, sheets: 2, proved: 2 })
    expect(Object.keys(answers[0]).sort()).toEqual(
      ['name', 'sheets', 'unplaced', 'bounds', 'proved', 'elapsedMs', 'firstMs', 'firstSheets'].sort(),
    )
  })
})
