import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { batchOptions } from '../../../engine/cli/options'
import { fromSources, inOneFile } from '../../helpers/command'
import { aJob, boards } from './yard'

const sheets = await inOneFile('sheets')
const folder = mkdtempSync(join(tmpdir(), 'sheets-'))
const job = aJob([boards('720 x 560 x 4'), boards('600 x 300 x 3', { rotate: true })])

function file(name: string, text: string): string {
  writeFileSync(join(folder, name), text)
  return join(folder, name)
}

describe('the sheets command', () => {
  it('prints the answer and nothing else', () => {
    const { status, stdout, stderr } = fromSources('sheets')(file('job.json', JSON.stringify(job)))
    const answer = JSON.parse(stdout)
    expect([status, stderr]).toEqual([0, ''])
    expect(Object.keys(answer)).toEqual(['sheets', 'unplaced', 'bounds', 'proved', 'elapsedMs'])
    expect(Object.keys(answer.sheets[0])).toEqual(['stock', 'copies', 'placements'])
    expect(Object.keys(answer.sheets[0].placements[0])).toEqual(['part', 'x', 'y', 'length', 'width', 'rotated'])
  })

  it('says of as few sheets as can be that others may cost less', () => {
    const two = [
      { id: 'small', material: 'ply', length: 2440, width: 1220, price: 60 },
      { id: 'large', material: 'ply', length: 3050, width: 1525, price: 70 },
    ]
    const parts = ['720 x 580 x 8', '764 x 560 x 6', '764 x 100 x 8', '1200 x 300 x 6', '450 x 140 x 10']
    const priced = { kerf: 3, stock: two, parts: parts.map((text) => ({ ...boards(text), material: 'ply' })) }
    const { stdout } = sheets(file('priced.json', JSON.stringify(priced)))
    expect(JSON.parse(stdout)).toMatchObject({ proved: true, mayCostLess: true })
  })

  it.each([
    ['a negative kerf', JSON.stringify({ ...job, kerf: -3 }), 'kerf is -3; it must be a number from 0 to 20'],
    [
      'a kerf that no blade has',
      JSON.stringify({ ...job, kerf: 5000 }),
      'kerf is 5000; it must be a number from 0 to 20',
    ],
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

  it.each([
    [
      'no number',
      '{"kerf": 3,\n"stock": [],\n"parts": [{"length": NaN}]}',
      'line 3, parts[0].length: the value is NaN, which is no JSON number; it must be a number that has an end',
    ],
    [
      'a number without end',
      '{"kerf": -Infinity}',
      'line 1, kerf: the value is -Infinity, which is no JSON number; it must be a number that has an end',
    ],
    ['plain words', 'not json', 'line 1: not is no JSON value; a text must stand in double quotes'],
    ['a file cut short', '{"kerf": 3,\n"parts": [', 'line 2, parts[0]: a value is missing before the end'],
    ['a comma too many', '{"kerf": 3,\n"stages": 3,\n}', "line 3: a field's name in double quotes is missing before }"],
  ])('names the line and the field of %s', (_, text, line) => {
    const name = file('broken.json', text)
    expect(sheets(name)).toEqual({ status: 2, stdout: '', stderr: `${name}, ${line}\n` })
  })

  it('says plainly that a file is not there', () => {
    const none = join(folder, 'none.json')
    expect(sheets(none).stderr).toBe(`${none} cannot be read: there is no such file or folder\n`)
    const batch = sheets('--batch', none, '--seconds', '1', '--out', join(folder, 'out.jsonl'))
    expect(batch).toEqual({
      status: 2,
      stdout: '',
      stderr: `${none} cannot be read: there is no such file or folder\n`,
    })
  })
})

describe('a batch of jobs', () => {
  const out = join(folder, 'mixed.jsonl')

  it('does not write over its own jobs', () => {
    const jobs = file('own.jsonl', JSON.stringify(job))
    expect(sheets('--batch', jobs, '--seconds', '0.2', '--out', jobs)).toEqual({
      status: 2,
      stdout: '',
      stderr: `--out is ${jobs}, which holds the jobs; it must be another file\n`,
    })
    expect(readFileSync(jobs, 'utf8')).toBe(JSON.stringify(job))
  })

  it('answers a bad line with its error, goes on, and ends with 2', () => {
    const lines = [
      JSON.stringify({ name: 'bad kerf', ...job, kerf: -3 }),
      '{"kerf": NaN}',
      '5',
      JSON.stringify({ name: 'good', ...job }),
    ]
    const { status, stdout, stderr } = sheets(
      '--batch',
      file('mixed-jobs.jsonl', lines.join('\n')),
      '--seconds',
      '0.2',
      '--out',
      out,
    )
    const answers = readFileSync(out, 'utf8')
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line))
    const errors = [
      'line 1: kerf is -3; it must be a number from 0 to 20',
      'line 2, kerf: the value is NaN, which is no JSON number; it must be a number that has an end',
      'line 3: the job is not an object',
    ]
    expect(answers.map(({ name, error }) => [name, error])).toEqual([
      ['bad kerf', errors[0]],
      ['line 2', errors[1]],
      ['line 3', errors[2]],
      ['good', undefined],
    ])
    expect([status, stderr]).toEqual([2, `${errors.join('\n')}\n`])
    expect(JSON.parse(stdout)).toMatchObject({ jobs: 1, sheets: 1, refused: 3 })
  })

  it.each([
    [['--seconds', 'soon', '--out', 'o'], '--seconds is soon; it must be a number above 0, at most 86400'],
    [['--out', 'o'], '--seconds is missing; it must be a number above 0, at most 86400'],
    [['--seconds', '1', '--out', 'o', '--stages', '4'], '--stages is 4; it must be 2, 3 or any'],
    [['--seconds', '1', '--out', 'o', '--first', 'saw'], '--first is saw; it must be rip, crosscut or any'],
    [['--seconds', '1'], '--out is missing; it must name the file for the answers'],
    [['--seconds', '1', '--out'], '--out has no value'],
    [['--second', '1'], '--second is no option; there are --batch, --out, --seconds, --stages, --first and --turn'],
  ])('names the option that is wrong and its value: %s', (options, line) => {
    const wrong = batchOptions(['--batch', 'jobs.jsonl', ...options])
    expect(wrong).toEqual({ ok: false, message: line })
  })

  it('says that its answers have no place to go', () => {
    const jobs = file('one.jsonl', JSON.stringify(job))
    const nowhere = join(folder, 'no', 'folder', 'out.jsonl')
    const { status, stderr } = sheets('--batch', jobs, '--seconds', '1', '--out', nowhere)
    expect([status, stderr]).toEqual([2, `--out ${nowhere} cannot be written to: there is no such file or folder\n`])
  })
})
