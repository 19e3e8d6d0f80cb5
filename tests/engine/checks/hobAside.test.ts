import { describe, expect, it } from 'vitest'
import { aWall, cabinet, space, the, withWall } from '../../helpers/wall'
import { findingIn, remedied } from './findings'

const ASIDE = /side that rises above it/
/** The least between what is cooked on and what rises beside it: 10 in. */
const LEAST = 254

describe('a range that stands against a tall', () => {
  const tall = cabinet('T1', { left: 600, width: 600 })
  const range = space('S1', 'range', { left: 1200, width: 762 }, { width: 762 })

  it('is moved away in one step, and pushes its neighbour along', () => {
    const project = aWall(tall, range, cabinet('B2', { left: 1962, width: 600 }))
    const finding = findingIn(project, ASIDE)!
    expect(finding.remedy?.label).toBe(`Move S1 with its range ${LEAST} mm away from T1`)
    const after = remedied(project, finding)
    expect([the(after, 'T1').left, the(after, 'S1').left, the(after, 'B2').left]).toEqual([
      600,
      1200 + LEAST,
      1962 + LEAST,
    ])
    expect(findingIn(after, ASIDE)).toBeNull()
  })

  it('stays, and the tall is moved, where only that has room', () => {
    const full = cabinet('B2', { left: 1962, width: 3600 - 1962 })
    const project = aWall(tall, range, full)
    const finding = findingIn(project, ASIDE)!
    expect(finding.remedy?.label).toBe(`Move T1 ${LEAST} mm away from the range of S1`)
    const after = remedied(project, finding)
    expect(the(after, 'T1').left).toBe(600 - LEAST)
    expect(findingIn(after, ASIDE)).toBeNull()
  })

  it('is told how much narrower the others would have to be where nothing has room', () => {
    const project = withWall(
      aWall({ ...tall, left: 0, width: 1200 }, range, cabinet('B2', { left: 1962, width: 538 })),
      {
        length: 2500,
      },
    )
    const finding = findingIn(project, ASIDE)!
    expect(finding.remedy).toBeUndefined()
    expect(finding.message).toContain(`${LEAST} mm narrower in all`)
  })
})
