import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, it } from 'vitest'
import { withRemedy } from '../../../engine/checks/finding'
import type { CabinetId } from '../../../engine/index'
import { WayOut, WayOutWords } from '../../../web/tables/FindingsTable'

const PLAIN = { weight: 'mind', about: { kind: 'cabinet', cabinet: 'b1' as CabinetId }, message: 'B1: sags.' } as const

/** A finding that counts how often its way out is tried. */
function tried() {
  let count = 0
  const finding = withRemedy(PLAIN, () => {
    count++
    return { label: 'Fix the shelves of B1', edit: { kind: 'setLate', late: {} } as never }
  })
  return { finding, times: () => count }
}

describe('the way out of a finding', () => {
  const shown = (finding: Parameters<typeof WayOut>[0]['finding'], isLive: boolean) =>
    renderToStaticMarkup(<WayOut finding={finding} isLive={isLive} onTake={() => {}} />)

  it('is not tried while something is under the hand, and keeps its place', () => {
    const { finding, times } = tried()
    expect(shown(finding, true)).toContain('aria-hidden="true"')
    expect(shown(finding, true)).not.toContain('button')
    expect(times()).toBe(0)
  })

  it('is offered by name when the hand rests', () => {
    const { finding, times } = tried()
    expect(shown(finding, false)).toContain('aria-label="Do it: Fix the shelves of B1"')
    expect(times()).toBe(1)
  })

  it('takes no place where there is none', () => {
    expect([shown(PLAIN, true), shown(PLAIN, false)]).toEqual(['', ''])
  })

  it('is told in words beside its button, once the hand rests', () => {
    const { finding, times } = tried()
    const told = (isLive: boolean) => renderToStaticMarkup(<WayOutWords finding={finding} isLive={isLive} />)
    expect(told(true)).not.toContain('Fix')
    expect(times()).toBe(0)
    expect(told(false)).toContain('▸ Fix the shelves of B1')
    expect(renderToStaticMarkup(<WayOutWords finding={PLAIN} isLive={false} />)).toBe('')
  })
})
