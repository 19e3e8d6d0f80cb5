import { describe, expect, it } from 'vitest'
import type { Problem } from '../../engine/basics/problem'
import { randomFrom } from '../../engine/basics/random'
import { buildCabinet } from '../../engine/cabinets/buildCabinet'
import { derive } from '../../engine/pipeline'
import type { Cabinet, Front } from '../../engine/project/document'
import { fortyCabinets } from '../../engine/samples/workshop'
import { built, findingIn } from '../engine/checks/findings'
import { anyCabinet, anyCorner } from '../helpers/diced'
import { aWall, cabinet, withWall } from '../helpers/wall'

/** Words with a length in them, which a finding has in its columns too. */
const LENGTH = /\d ?(mm|in)\b/

function lacking(problems: readonly Problem[]): string[] {
  return problems.flatMap(({ message, measure, limit, source }) => {
    if (!source) return [`no source: ${message}`]
    return LENGTH.test(message) && !(measure && limit) ? [`no figures: ${message}`] : []
  })
}

const NEGATIVE = /(^|[^\d\w])-\d/

describe('every finding', () => {
  it('about a cabinet that cannot be built as asked has its number, its limit and its source, and no number below nothing', () => {
    let told = 0
    for (let seed = 0; seed < 400; seed++) {
      const { cabinet: made, rules } = (seed % 4 === 3 ? anyCorner : anyCabinet)(randomFrom(seed))
      // Half of them are so small that little of what is asked has room.
      const small: Partial<Cabinet> = seed % 2 === 0 ? { width: made.width / 3, height: made.height / 3 } : {}
      const { problems } = buildCabinet({ ...made, ...small }, rules)
      told += problems.length
      expect(lacking(problems)).toEqual([])
      expect(problems.filter(({ message, measure }) => NEGATIVE.test(`${message} ${measure}`))).toEqual([])
    }
    expect(told).toBeGreaterThan(400)
  })

  it('in a workshop has its source, and its figures where it says a length', () => {
    const { problems } = derive(fortyCabinets())
    expect(problems.length).toBeGreaterThan(5)
    expect(lacking(problems)).toEqual([])
  })

  it('about a place has them too: past the wall, over another, before a door', () => {
    const project = withWall(
      aWall(cabinet('B1', { left: 3300 }), cabinet('B2', { left: 3200 }), cabinet('T1', { left: 0, height: 2500 })),
      {},
    )
    const { problems } = derive(project)
    expect(lacking(problems)).toEqual([])
    expect(findingIn(project, /T1 would reach .* above the ceiling/)).toMatchObject({
      measure: '100 mm',
      limit: '0 mm',
    })
  })
})

describe('the figures of a finding', () => {
  const NICHE: Front = { kind: 'appliance', width: 600, height: 500, air: 0 }
  const withFront = (width: number, front: Front) => aWall(cabinet('B1', { left: 500, width, front }))

  it('are the niche and what the appliance asks for', () => {
    const told = findingIn(withFront(600, NICHE), /the niche is .* wide/)
    expect(told).toMatchObject({ measure: `${600 - 2 * 18} mm`, limit: '600 mm' })
    expect(told?.source).toContain('appliance')
  })

  it('are the width of a door and the most for one, told once for a pair', () => {
    const told = findingIn(withFront(1400, { kind: 'pair' }), /is the most for one door/)
    expect(told).toMatchObject({ weight: 'mind', measure: `${(1400 - 2 * 1.5 - 3) / 2} mm`, limit: '610 mm' })
    expect(told?.source).toContain('common practice')
  })

  it('are the box of a drawer and the least that it may be', () => {
    const told = findingIn(withFront(120, { kind: 'drawer' }), /the box of drawer 1 would be .* wide/)
    expect(told).toMatchObject({ measure: `${Math.round((120 - 2 * 18 - 2 * 12.7) * 10) / 10} mm`, limit: '74 mm' })
  })

  it('say that the build method asks for it where it does', () => {
    const deep = { kind: 'rabbet', depth: 30 } as const
    const told = findingIn(built(withFront(600, { kind: 'open' }), { back: deep }), /for the back would be/)
    expect(told).toMatchObject({ measure: '30 mm', limit: '18 mm', source: 'the build method' })
  })

  it('are a board and what the largest sheet gives of it', () => {
    const long = withWall(aWall(cabinet('B1', { width: 2600, front: { kind: 'open' } })), { length: 4000 })
    const told = derive(long).problems.filter(({ message }) => /on no sheet/.test(message))
    expect(told.length).toBeGreaterThan(0)
    for (const { measure, limit, source } of told) {
      expect(measure).toMatch(/\b2\d\d\d(\.\d)? mm/)
      expect(limit).toBe('2420 mm x 1200 mm')
      expect(source).toContain('sheets')
    }
  })
})
