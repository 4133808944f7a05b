import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import { CapacityTime, type RepsStretch } from './CapacityTime.tsx';

const reps = { median: 6.4, low80: 5, high80: 8, low95: 4, high95: 10 };
const stretches: RepsStretch[] = [
  { from: '2026-03-01', to: '2026-05-23', reps },
  { from: '2026-05-24', to: '2026-08-15', reps: null },
  { from: '2026-08-16', to: '2026-11-07', reps: { ...reps, median: 7 } },
];
const draw = (drawn: RepsStretch[], widthPx = 390) =>
  renderToStaticMarkup(
    <CapacityTime label="Reps of nobody" stretches={drawn} widthPx={widthPx} heightPx={220} />,
  );

test('every stretch is read aloud with its range, one that tells too little as such', () => {
  const label = /aria-label="([^"]*)"/.exec(draw(stretches))?.[1];
  expect(label).toBe(
    'Reps of nobody. 1 Mar 2026 to 23 May 2026: 6.4, between 4.0 and 10.0 95 % of the time. 24 May 2026 to 15 Aug 2026: too little to say. 16 Aug 2026 to 7 Nov 2026: 7.0, between 4.0 and 10.0 95 % of the time.',
  );
});

test('boxes stand side by side, each as wide as its days, and higher is more reps', () => {
  const svg = draw(stretches);
  const boxes = [...svg.matchAll(/<rect x="([\d.]+)" width="([\d.]+)"/g)].map(([, x, width]) => [
    Number(x),
    Number(width),
  ]);
  // Two ranges for each of two stretches; twelve weeks each.
  expect(boxes).toHaveLength(4);
  const [first, , last] = boxes as [number[], number[], number[]];
  expect(first[1]).toBeCloseTo(last[1]!, 6);
  expect(first[0]! + first[1]!).toBeLessThan(last[0]!);
  const middles = [...svg.matchAll(/d="M[\d.]+ ([\d.]+)H[\d.]+" stroke="[^"]*" stroke-width="2.5"/g)].map(
    ([, y]) => Number(y),
  );
  expect(middles).toHaveLength(2);
  expect(middles[1]).toBeLessThan(middles[0]!);
});

test('without a stretch there is nothing to draw', () => {
  expect(draw([])).toBe('');
});
