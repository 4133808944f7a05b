import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import { StrengthTime } from './StrengthTime.tsx';
import type { SetMark, TimeScene } from './TimeScene.ts';

const point = (on: string, median: number) => ({
  on,
  median,
  low80: median - 5,
  high80: median + 5,
  low95: median - 9,
  high95: median + 9,
});
const mark = (key: string, says: SetMark['says'], more: Partial<SetMark> = {}): SetMark => ({
  key,
  on: '2026-03-10',
  straightKg: 150,
  says,
  doubted: false,
  record: false,
  words: `words of ${key}`,
  ...more,
});
const scene = (marks: SetMark[], more: Partial<TimeScene> = {}): TimeScene => ({
  title: 'Strength of nobody, squat',
  from: null,
  history: [point('2026-01-01', 140), point('2026-06-01', 160)],
  marks,
  meets: [],
  bodyMasses: [],
  ...more,
});
const draw = (drawn: TimeScene, chosenKey: string | null = null) =>
  renderToStaticMarkup(
    <StrengthTime scene={drawn} mass="kg" widthPx={390} chosenKey={chosenKey} onChoose={() => {}} />,
  );

test('the picture is told in a sentence: where strength began, where it is, how sure, of how many sets', () => {
  const svg = draw(scene([mark('a', 'atLeast'), mark('b', 'near')]));
  const label = /role="img" aria-label="([^"]*)"/.exec(svg)?.[1];
  expect(label).toContain('140 kg on 1 Jan 2026, 160 kg on 1 Jun 2026, between 151 kg and 169 kg');
  expect(label).toContain('2 sets, 0 meets');
});

test('a doubted set is ringed and stays in the picture, even where it lies far outside', () => {
  const svg = draw(scene([mark('slip', 'near', { doubted: true, straightKg: 1500 })]));
  expect(svg.match(/stroke="var\(--stop[^"]*"/g)).toHaveLength(2);
  const ringY = Number(/cy="([\d.]+)" r="8"/.exec(svg)?.[1]);
  expect(ringY).toBeGreaterThan(34);
});

test('made, missed and measured sets differ in shape, not in colour alone', () => {
  const shapes = (['atLeast', 'lessThan', 'near'] as const).map((says) =>
    draw(scene([mark('x', says)])).replaceAll(/ aria-[a-z]+="[^"]*"/g, ''),
  );
  expect(new Set(shapes).size).toBe(3);
  expect(shapes[0]).toMatch(/d="M[\d.]+ [\d.]+L[\d.]+ [\d.]+L[\d.]+ [\d.]+Z" fill="var\(--paper/);
  expect(shapes[1]).toMatch(/Z" fill="var\(--ink/);
});

test('a screen reader meets a slider that reads the chosen set', () => {
  const marks = [mark('a', 'atLeast'), mark('b', 'lessThan', { on: '2026-04-10' })];
  const svg = draw(scene(marks), 'b');
  expect(svg).toContain('role="slider"');
  expect(svg).toContain('aria-valuenow="2"');
  expect(svg).toContain('aria-valuetext="words of b"');
});

test('a meet is named above its rule, and body mass has its number', () => {
  const svg = draw(
    scene([], {
      meets: [{ on: '2026-03-01', place: 'County hall' }],
      bodyMasses: [{ on: '2026-02-01', massKg: 82.5 }],
    }),
  );
  expect(svg).toContain('>County hall</text>');
  expect(svg).toContain('82.5 kg');
});

test('two meets in neighbouring weeks never print their names over each other', () => {
  const svg = draw(
    scene([], {
      meets: ['2026-03-01', '2026-03-08', '2026-03-15'].map((on, i) => ({ on, place: `County hall ${i}` })),
    }),
  );
  const places = [...svg.matchAll(/<text x="([\d.]+)" y="([\d.]+)"[^>]*>(County hall \d|meet)</g)].map(
    ([, x, y]) => ({ x: Number(x), y: Number(y) }),
  );
  expect(places.length).toBeGreaterThan(0);
  for (const a of places)
    for (const b of places) if (a !== b && a.y === b.y) expect(Math.abs(a.x - b.x)).toBeGreaterThan(60);
});
