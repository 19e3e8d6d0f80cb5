import { describe, expect, it } from 'vitest'
import { LONGEST_NAME } from '../../../engine/index'
import { nameBeside } from '../../../web/files/names'

describe('the name of a project that is opened beside others', () => {
  it('is its own where no other has it', () => {
    expect(nameBeside('Boat house', ['Lock cottage'])).toBe('Boat house')
  })

  it('has the first number that is free where another has it', () => {
    expect(nameBeside('Boat house', ['Boat house'])).toBe('Boat house (2)')
    expect(nameBeside('Boat house', ['Boat house', 'Boat house (2)', 'Boat house (4)'])).toBe('Boat house (3)')
  })

  it('is no longer than a name may be', () => {
    const longest = 'x'.repeat(LONGEST_NAME)
    // " (2)" takes four of its signs
    expect(nameBeside(longest, [longest])).toBe(`${'x'.repeat(LONGEST_NAME - 4)} (2)`)
  })
})
