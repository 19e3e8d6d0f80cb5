import { spawnSync } from 'node:child_process'
import { resolve } from 'node:path'
import { describe, expect, it } from 'vitest'
import { portFrom } from '../../.tools/port.mjs'

const START = resolve(__dirname, '../../.tools/start.mjs')

describe('the port that the app is served on', () => {
  it('is 4173 unless PORT names another', () => {
    expect(portFrom(undefined)).toEqual({ ok: true, value: 4173 })
    expect(portFrom('8080')).toEqual({ ok: true, value: 8080 })
    expect(portFrom('65535')).toEqual({ ok: true, value: 65535 })
  })

  it.each(['abc', '70000', '0', '-1', '80.5', '1e3'])('cannot be %s: that ends with one line and no build', (port) => {
    const { status, stdout, stderr } = spawnSync(process.execPath, [START], {
      encoding: 'utf8',
      env: { ...process.env, PORT: port },
    })
    expect([status, stdout]).toEqual([2, ''])
    expect(stderr).toBe(`PORT is ${port}; it must be a whole number from 1 to 65535.\n`)
  })
})
