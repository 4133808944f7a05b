import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import { LoadedBar } from './LoadedBar.tsx';

const unmeasured = { diameterM: null, thicknessM: null };

test('discs colour only where the rule book sets it: 25 red, 20 blue, 15 yellow', () => {
  // Powerlifting rule book, from memory: 10 kg and under may have any colour, so they get none here.
  expect(tones(10).size).toBe(0);
  expect(tones(5).size).toBe(0);
  const coloured = [25, 20, 15].map((mass) => [...tones(mass)]);
  expect(coloured.every((own) => own.length === 1)).toBe(true);
  expect(new Set(coloured.flat()).size).toBe(3);
});

test('without colour the discs are still told apart by stripe and written mass', () => {
  const svg = renderToStaticMarkup(
    <LoadedBar
      label="bar"
      widthPx={300}
      colour={false}
      perSide={[
        { faceMassKg: 25, count: 2, ...unmeasured },
        { faceMassKg: 20, count: 1, ...unmeasured },
      ]}
    />,
  );
  expect(svg).not.toMatch(/fill="#[0-9a-f]{6}"/);
  expect(svg).toContain('2 × 25');
  expect(svg).toMatch(/fill="url\(#[^"]*-red\)"/);
  expect(svg).toMatch(/fill="url\(#[^"]*-blue\)"/);
});

test('a measured disc is drawn to its measured diameter', () => {
  const [small = 0] = heights(0.2);
  const [large = 0] = heights(0.3);
  expect(large / small).toBeCloseTo(1.5, 6);
});

/** The colours of discs of one mass. */
function tones(faceMassKg: number): Set<string | undefined> {
  return new Set(
    [
      ...renderToStaticMarkup(
        <LoadedBar label="bar" widthPx={300} perSide={[{ faceMassKg, count: 1, ...unmeasured }]} />,
      ).matchAll(/fill="(#[0-9a-f]{6})"/g),
    ].map(([, tone]) => tone),
  );
}

/** Heights of the drawn discs (px). */
function heights(diameterM: number | null): number[] {
  return [
    ...renderToStaticMarkup(
      <LoadedBar
        label="bar"
        widthPx={300}
        perSide={[{ faceMassKg: 5, count: 1, diameterM, thicknessM: 0.03 }]}
      />,
    ).matchAll(/height="([\d.]+)" rx="2"/g),
  ].map(([, height]) => Number(height));
}
