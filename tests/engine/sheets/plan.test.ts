import { mkdtempSync, readdirSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { describe, expect, it } from 'vitest'
import { fromSources } from '../../helpers/command'

const HOUSE = resolve(__dirname, '../../..')
const PROJECT = join(HOUSE, 'tests/old-files/v6.casewright')
const plan = fromSources('plan')
const folder = mkdtempSync(join(tmpdir(), 'plan-'))

describe('the plan command', () => {
  it('writes the list, the layouts and the plan into a folder that it makes', () => {
    const { status, stdout, stderr } = plan(PROJECT, '--out', join(folder, 'a/b'))
    expect([status, stderr]).toEqual([0, ''])
    const { cabinets, cutting } = JSON.parse(stdout)
    expect(cabinets).toHaveLength(10)
    const { order, proposed, compared } = cutting
    expect([order, Object.keys(compared)]).toEqual([proposed, ['sheet by sheet', 'setting by setting']])
    for (const { minutes } of Object.values<{ readonly minutes: number }>(compared)) {
      expect(minutes).toBeGreaterThanOrEqual(compared[proposed].minutes)
    }
    expect(readdirSync(join(folder, 'a/b'))).toEqual(
      expect.arrayContaining(['cut-list.csv', 'part-B1-LS.svg', 'plan.json', 'sheet-1.svg']),
    )
  })

  it('says once of a cabinet what the checks find and the cautions would say again', () => {
    const { warnings } = JSON.parse(plan(PROJECT).stdout) as { readonly warnings: readonly string[] }
    const about = (mark: string, words: RegExp) => warnings.filter((text) => text.startsWith(mark) && words.test(text))
    expect(about('T1', /fix it to the wall/i)).toHaveLength(1)
    for (const upper of ['U2', 'U3', 'U4']) expect(about(upper, /one stud at most/i)).toHaveLength(1)
    expect(warnings.filter((text) => /one stud at most/i.test(text))).toHaveLength(3)
  })

  it('ends with 2 and one line where the folder cannot be written to', () => {
    const file = join(folder, 'file')
    writeFileSync(file, '')
    expect(plan(PROJECT, '--out', file)).toEqual({
      status: 2,
      stdout: '',
      stderr: `${file} cannot be written to: it is a file\n`,
    })
  })
})
