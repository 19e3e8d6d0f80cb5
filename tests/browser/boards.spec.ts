import type { Page } from '@playwright/test'
import { button, expect, goTo, test } from './shop'

async function startCutting(shop: Page, steps: number) {
  await goTo(shop, 'Cut')
  await button(shop, 'Start cutting').click({ timeout: 30_000 })
  const bench = shop.getByRole('dialog', { name: 'At the bench' })
  const done = bench.getByRole('button', { name: 'Done', exact: true })
  for (let step = 0; step < steps; step++) await done.click()
  return bench
}

test('pieces and sheets that are being cut are drawn to one scale', async ({ shop }) => {
  test.setTimeout(120_000)
  const bench = await startCutting(shop, 60)
  await bench.getByRole('button', { name: 'Something went wrong' }).click()
  await bench.locator('button[aria-pressed="false"]').filter({ hasText: /-/ }).first().click()
  await button(shop, 'What would this do?').click()
  await button(shop, 'Yes, cut by this plan').click({ timeout: 30_000 })
  await bench.getByRole('button', { name: 'Leave the bench' }).click()
  const scales = await shop.locator('figure[data-state] > svg').evaluateAll((pictures) =>
    pictures.map((picture) => {
      const [, , length, width] = picture.getAttribute('viewBox')!.split(' ').map(Number)
      const box = picture.getBoundingClientRect()
      return { along: box.width / length!, across: box.height / width!, length }
    }),
  )
  expect(scales.length).toBeGreaterThan(10)
  expect(new Set(scales.map(({ length }) => length)).size).toBeGreaterThan(3)
  for (const { along, across } of scales) {
    expect(along).toBeCloseTo(scales[0]!.along, 3)
    expect(across).toBeCloseTo(scales[0]!.along, 3)
  }
})

test('the bench is left for the stage of cutting, also after a reload', async ({ shop }) => {
  const bench = await startCutting(shop, 1)
  await shop.waitForFunction(() => /saved/.test(document.querySelector('header')?.textContent ?? ''))
  await shop.reload()
  await bench.getByRole('button', { name: 'Leave the bench' }).click()
  await expect(button(shop, /^Go on cutting/)).toBeVisible()
})
