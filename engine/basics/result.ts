/** The outcome of reading something that a person or a file gave us. */
export type Result<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly message: string }

export function good<Value>(value: Value): Result<Value> {
  return { ok: true, value }
}

export function bad(message: string): Result<never> {
  return { ok: false, message }
}
