import { expect, it } from 'vitest'
import { unbroken } from '../../../web/ui/unbroken'

it('keeps inches with their fraction and figures with their unit on one line, and nothing else', () => {
  expect(unbroken('by 28 13/16 in, 2 times; 605 mm of 3 boards in all')).toBe(
    'by 28\u00a013/16\u00a0in, 2 times; 605\u00a0mm of 3 boards in all',
  )
})
