/**
 * Remembers the answer for an object as long as that object lives. Documents share what did not change, so an
 * untouched cabinet is the same object as before and costs nothing.
 */
export function remember<Subject extends object, Answer>(
  answer: (subject: Subject) => Answer,
): (subject: Subject) => Answer {
  const known = new WeakMap<Subject, { readonly answer: Answer }>()
  return (subject) => {
    const before = known.get(subject)
    if (before) return before.answer
    const fresh = { answer: answer(subject) }
    known.set(subject, fresh)
    return fresh.answer
  }
}

/** Keeps the last answer, and gives it again while every argument is the same object or number as last time. */
export function rememberLast<Args extends readonly unknown[], Answer>(
  answer: (...args: Args) => Answer,
): (...args: Args) => Answer {
  let last: { readonly args: Args; readonly answer: Answer } | undefined
  return (...args) => {
    if (last?.args.length === args.length && args.every((arg, at) => Object.is(arg, last!.args[at]))) return last.answer
    last = { args, answer: answer(...args) }
    return last.answer
  }
}

/** Works an answer out when it is first asked for, and keeps it. */
export function once<Answer>(work: () => Answer): () => Answer {
  let done: { readonly answer: Answer } | null = null
  return () => {
    done ??= { answer: work() }
    return done.answer
  }
}
