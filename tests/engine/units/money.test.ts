import { describe, expect, it } from 'vitest'
import { formatMoney, isSignBefore } from '../../../engine/units/money'

describe('an amount of money', () => {
  it.each([
    ['$', '$89'],
    ['£', '£89'],
    ['US$', 'US$89'],
    ['€', '89 €'],
    ['CHF', '89 CHF'],
    ['kr', '89 kr'],
    ['', '89'],
  ])('in %s has its sign where that is written', (currency, shown) => {
    expect(formatMoney(89, currency)).toBe(shown)
    expect(isSignBefore(currency)).toBe(currency !== '' && shown.startsWith(currency))
  })

  it('has cents only where there are some, and a minus before its sign', () => {
    expect(formatMoney(4.5, '$')).toBe('$4.50')
    expect(formatMoney(-4.5, '$')).toBe('−$4.50')
    expect(formatMoney(0.1 + 0.2, '€')).toBe('0.30 €')
  })
})
