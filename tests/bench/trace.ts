/** Reads what the main thread of a page did from a trace of the browser. */
import type { Browser, CDPSession } from '@playwright/test'

/** One event of a trace: times in microseconds. */
interface TraceEvent {
  readonly name: string
  readonly ph: string
  readonly pid: number
  readonly tid: number
  readonly ts: number
  readonly dur?: number
  /** Time of the thread itself, without the time that it waited for the processor. */
  readonly tdur?: number
  readonly args?: { readonly name?: string; readonly data?: { readonly type?: string } }
}

/** Making and handing over pictures: no part of what a move costs in script, style and layout. */
const PAINTING = new Set(['Paint', 'PrePaint', 'Layerize', 'Commit', 'UpdateLayer'])

export async function traced(browser: Browser, deed: () => Promise<void>): Promise<TraceEvent[]> {
  const cdp: CDPSession = await browser.newBrowserCDPSession()
  const events: TraceEvent[] = []
  cdp.on('Tracing.dataCollected', ({ value }) => events.push(...(value as unknown as TraceEvent[])))
  const includedCategories = ['devtools.timeline', 'disabled-by-default-devtools.timeline', 'toplevel']
  await cdp.send('Tracing.start', { traceConfig: { includedCategories }, transferMode: 'ReportEvents' })
  await deed()
  const complete = new Promise((resolve) => cdp.once('Tracing.tracingComplete', resolve))
  await cdp.send('Tracing.end')
  await complete
  return events
}

/**
 * What the main thread did from each pointer move to the next, in milliseconds of its own time: all its tasks but
 * painting. Moves that the browser joined into one, because the page had drawn no frame between them, count as one.
 */
export function workPerMove(events: readonly TraceEvent[]): number[] {
  const isMove = ({ name, args }: TraceEvent) => name === 'EventDispatch' && args?.data?.type === 'pointermove'
  const first = events.find(isMove)
  if (!first) throw new Error('the trace has no pointer move')
  const whole = events
    .filter(({ ph, pid, tid }) => ph === 'X' && pid === first.pid && tid === first.tid)
    .sort((a, b) => a.ts - b.ts || (b.dur ?? 0) - (a.dur ?? 0))
  const moves = whole.filter(isMove).map(({ ts }) => ts)
  const work = moves.slice(1).map(() => 0)
  const add = (event: TraceEvent, sign: 1 | -1) => {
    const move = moves.findLastIndex((ts) => ts <= event.ts + (event.dur ?? 0))
    if (move >= 0 && move < work.length) work[move]! += (sign * (event.tdur ?? 0)) / 1000
  }
  for (const task of outermost(whole.filter(({ name }) => name.endsWith('RunTask')))) add(task, 1)
  for (const paint of outermost(whole.filter(({ name }) => PAINTING.has(name)))) add(paint, -1)
  return work
}

/** Those that lie in no other of them. */
function outermost(inOrder: readonly TraceEvent[]): TraceEvent[] {
  let end = Number.NEGATIVE_INFINITY
  return inOrder.filter(({ ts, dur = 0 }) => {
    if (ts < end) return false
    end = ts + dur
    return true
  })
}
