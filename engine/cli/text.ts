import { readFileSync } from 'node:fs'
import { bad, good, type Result } from '../basics/result'

/** The text of a file, or one plain line that says why there is none. */
export function readText(file: string): Result<string> {
  try {
    return good(readFileSync(file, 'utf8'))
  } catch (error) {
    return bad(`${file} cannot be read: ${whyNoFile(error)}`)
  }
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file or folder',
  EISDIR: 'it is a folder',
  ENOTDIR: 'a part of its path is no folder',
  EACCES: 'it is not allowed',
  EPERM: 'it is not allowed',
  EROFS: 'nothing can be written there',
  ENOSPC: 'there is no room left',
}

/** What the system said of a file, in plain words. */
export function whyNoFile(error: unknown): string {
  const { code = '', message } = error as { readonly code?: string; readonly message: string }
  return REASONS[code] ?? message.split('\n')[0]!
}
