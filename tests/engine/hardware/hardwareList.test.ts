import { describe, expect, it } from 'vitest'
import { hardwareList } from '../../../engine/hardware/hardwareList'

const hinges = (quantity: number) => ({ name: 'hinge', quantity, length: null })
const slides = (quantity: number, length: number) => ({ name: 'pair of side slides', quantity, length })

describe('the hardware of all cabinets', () => {
  it('is counted by piece and length, with the cabinets that it goes into', () => {
    const list = hardwareList([
      { mark: 'B1', hardware: [hinges(2), slides(3, 550)] },
      { mark: 'B2', hardware: [slides(1, 450), slides(1, 550)] },
      { mark: 'U1', hardware: [hinges(4)] },
    ])
    expect(list).toEqual([
      { ...hinges(2 + 4), cabinets: ['B1', 'U1'] },
      { ...slides(1, 450), cabinets: ['B2'] },
      { ...slides(3 + 1, 550), cabinets: ['B1', 'B2'] },
    ])
  })

  it('is nothing without cabinets', () => {
    expect(hardwareList([])).toEqual([])
  })
})
