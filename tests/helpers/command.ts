import { spawnSync } from 'node:child_process'
import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { build } from 'vite'

const HOUSE = resolve(__dirname, '../..')

/** What a command has said when it is over. */
export interface Ended {
  readonly status: number | null
  readonly stdout: string
  readonly stderr: string
}

function ended(...args: string[]): Ended {
  const { status, stdout, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8' })
  return { status, stdout, stderr }
}

/** A command of the engine, read from its sources as `npm run` starts it. */
export function fromSources(name: 'sheets' | 'plan'): (...args: string[]) => Ended {
  const tsx = join(HOUSE, 'node_modules/tsx/dist/cli.mjs')
  return (...args) => ended(tsx, join(HOUSE, `engine/cli/${name}.ts`), ...args)
}

/** The same in one file, for tests that start it many times: to read all its sources takes longer than what it does. */
export async function inOneFile(name: 'sheets' | 'plan'): Promise<(...args: string[]) => Ended> {
  const outDir = mkdtempSync(join(tmpdir(), `${name}-in-one-`))
  const entry = { ssr: join(HOUSE, `engine/cli/${name}.ts`), rollupOptions: { output: { entryFileNames: 'it.mjs' } } }
  await build({
    root: HOUSE,
    configFile: false,
    publicDir: false,
    logLevel: 'silent',
    build: { ...entry, outDir },
    ssr: { noExternal: true },
  })
  return (...args) => ended(join(outDir, 'it.mjs'), ...args)
}
