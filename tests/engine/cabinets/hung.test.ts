import { describe, expect, it } from 'vitest'
import { derive } from '../../../engine/pipeline'
import { aWall, cabinet } from '../../helpers/wall'
import { findingIn } from '../checks/findings'

const roles = (project: Parameters<typeof derive>[0]) => derive(project).cabinets[0]!.parts.map(({ role }) => role)

describe('a base that hangs', () => {
  const hung = aWall(cabinet('B1', { left: 300, bottom: 300, width: 350, height: 500 }))

  it('has nothing under it, and is judged by what it hangs on', () => {
    const standing = aWall(cabinet('B1', { left: 300 }))
    expect(roles(standing)).toContain('plinthFront')
    expect(roles(hung).filter((role) => role.startsWith('plinth') || role === 'kickBoard')).toEqual([])
    expect(findingIn(standing, /one stud/)).toBeNull()
    // Of studs 406 apart one at most lies behind 314 between the sides.
    expect(findingIn(hung, /one stud at most/)?.weight).toBe('know')
  })
})

describe('nailers', () => {
  it('that are higher than the carcass are left out and told', () => {
    // 150 less two boards of 18 leaves 114; one nailer takes 90.
    const low = (height: number, bottom: boolean) => {
      const project = aWall(cabinet('U1', { height }))
      const method = project.methods[project.method]!
      const nailers = { ...method.nailers, where: 'inside', top: true, bottom, width: 90 } as const
      return { ...project, methods: { ...project.methods, [method.id]: { ...method, nailers } } } as typeof project
    }
    expect(roles(low(150, false))).toContain('topNailer')
    expect(roles(low(150, true)).filter((role) => role.endsWith('Nailer'))).toEqual([])
    expect(findingIn(low(150, true), /nailers of 90 mm take 180 mm of height; there is 114 mm/)?.weight).toBe('stop')
  })
})
