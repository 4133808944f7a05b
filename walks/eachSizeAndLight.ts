import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';

/** No page is wider than its screen, and a screen reader finds nothing wrong, in both lights and three sizes. */
export async function eachSizeAndLight(page: Page): Promise<void> {
  for (const [width, height] of [
    [1440, 900],
    [1024, 768],
    [390, 844],
  ] as const) {
    await page.setViewportSize({ width, height });
    for (const light of ['day', 'night'] as const) {
      await page.getByRole('radio', { name: light, exact: true }).check();
      expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
    }
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
  }
}
