/** Signs that are written right before the number; what is called by letters, and the euro, stands behind it. */
const BEFORE = /[$£¥₹₩₪₱₦₫]$/

/** Whether the sign of a currency is written before its numbers: `$89`, but `89 €`, `89 CHF`. */
export function isSignBefore(currency: string): boolean {
  return BEFORE.test(currency.trim())
}

/** An amount in a currency, with its cents only where there are some: `$89`, `68 €`, `−$4.50`. */
export function formatMoney(amount: number, currency: string): string {
  const shown = plainAmount(Math.abs(amount))
  const sign = amount < 0 && Number(shown) > 0 ? '−' : ''
  const name = currency.trim()
  if (name === '') return `${sign}${shown}`
  return isSignBefore(name) ? `${sign}${name}${shown}` : `${sign}${shown} ${name}`
}

function plainAmount(amount: number): string {
  const cents = Math.round(amount * 100)
  return cents % 100 === 0 ? String(cents / 100) : (cents / 100).toFixed(2)
}
