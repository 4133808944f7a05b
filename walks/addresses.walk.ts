import { expect } from '@playwright/test';
import { test } from './walk.ts';

/** More pages than the six connections that a browser opens to one place over HTTP/1.1 (RFC 9112, 9.4, leaves it to them). */
const addresses = [
  '/day',
  '/day/new',
  '/lifters',
  '/gear',
  '/gear/height',
  '/gear/racks',
  '/gear/iron',
  '/gear/club',
];

test('any number of addresses typed one after another open, though each page listens for news', async ({
  page,
}) => {
  for (const address of addresses) {
    await page.goto(address);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  }
});

test('a phone shows units once: those of the page where it has its own, else those of the club', async ({
  page,
}) => {
  const clubs = page.getByRole('group', { name: 'Mass in the whole club' });
  const pages = page.getByRole('group', { name: 'Mass on this page' });
  await page.goto('/lifters');
  await expect(pages).toBeVisible();
  await expect(clubs).toBeVisible();
  await page.setViewportSize({ width: 390, height: 844 });
  await expect(pages).toBeVisible();
  await expect(clubs).toBeHidden();
  await page.goto('/gear/club');
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await expect(clubs).toBeVisible();
  await expect(pages).toHaveCount(0);
});
