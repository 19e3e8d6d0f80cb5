import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { applyEdit } from '../../../engine/project/apply'
import { readProject, writeProject } from '../../../engine/project/schema'
import { demonstrationKitchen } from '../../../engine/samples/kitchen'

describe('the choice of what is cut late', () => {
  it.each([1, 2, 3, 4, 5, 6])('is nothing in a file of version %i, where all was cut at once', (version) => {
    const read = readProject(readFileSync(`tests/old-files/v${version}.casewright`, 'utf8'))
    expect(read.ok && read.value.shop.late).toEqual({ fronts: false, drawerBoxes: false, fitted: false })
  })

  it('is kept in the file, and refused where it is neither yes nor no', () => {
    const late = { fronts: true, drawerBoxes: false, fitted: true }
    const project = applyEdit(demonstrationKitchen(), { kind: 'editShop', change: { late } })
    const read = readProject(writeProject(project))
    expect(read.ok && read.value.shop.late).toEqual(late)
    const spoilt = readProject(writeProject(project).replace('"fitted": true', '"fitted": 1'))
    expect(!spoilt.ok && spoilt.message).toContain('shop.late.fitted is 1; it must be true or false.')
  })
})
