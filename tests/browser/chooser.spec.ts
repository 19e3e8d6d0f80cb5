import { demonstrationKitchen, writeProject } from '../../engine/index'
import { QUIET } from './chromium'
import { cabinets, expect, openFile, startProject, test } from './shop'

test.use({
  looksOn: false,
  draws3D: false,
  launchOptions: {
    executablePath: process.env.CASEWRIGHT_CHROMIUM ?? '/usr/bin/chromium',
    args: [...QUIET, '--js-flags=--expose-gc'],
  },
})

test('a file can be chosen though the memory is swept while the dialog opens', async ({ shop }) => {
  await shop.evaluate(() => {
    const press = HTMLInputElement.prototype.click
    HTMLInputElement.prototype.click = function () {
      press.call(this)
      setTimeout(() => (globalThis as unknown as { gc(): void }).gc(), 0)
    }
  })
  await startProject(shop, 'Millimetres')
  await openFile(shop, writeProject(demonstrationKitchen()))
  await expect(cabinets(shop)).toHaveCount(10)
  await expect(shop.locator('input[type=file]')).toHaveCount(0)
})
