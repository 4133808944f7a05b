import { expect, test } from 'vitest';
import { percentToTenth } from '#contract/words/percent.ts';
import { bandSteps, lengthWords, methodRows, rotations } from './methodRows.ts';
import { shippedMethods } from './shipped/shippedMethods.ts';

const waves = shippedMethods[0]!.phases.find(({ id }) => id === 'speed-waves')!;

test('a phase has a row for each week of its wave, and each tells the share of that week', () => {
  const rows = methodRows(waves);
  expect(rows.map(({ week }) => week)).toEqual([1, 2, 3]);
  const asked = waves.days.flatMap(({ groups }) => groups).find(({ id }) => id === 'speed-squat')!;
  if (asked.aim.by !== 'barAndBands') throw new Error('The speed squat hangs bands.');
  for (const [at, share] of asked.aim.barShares.entries()) {
    const told = rows[at]!.days.flatMap(({ groups }) => groups).find(({ title }) => title === asked.title)!;
    expect(told.aim).toContain(percentToTenth(share));
  }
});

test('what steps from wave to wave is told in its order, and how long a phase may be', () => {
  expect(bandSteps(waves).find((sentence) => sentence.startsWith('Speed bench press'))).toContain(
    '25 %, 30 %, 25 %, 30 % from wave to wave',
  );
  expect(lengthWords({ ...waves, leastWeeks: 3, mostWeeks: 12, waveWeeks: 3, isRound: true })).toBe(
    '3 to 12 weeks, in waves of 3. Repeated where there is more time.',
  );
  expect(lengthWords({ ...waves, leastWeeks: 1, mostWeeks: 1, waveWeeks: 1, isRound: false })).toBe(
    '1 week.',
  );
});

test('a start that is always the same stands in its rows, and those that are rotated through in one sentence with their rest', () => {
  const groups = waves.days.flatMap((day) => day.groups);
  const told = methodRows(waves).map(({ days }) =>
    days.flatMap((day) => day.groups.map(({ start }) => start)),
  );
  const always = groups.map(({ variants }) => (variants.length === 1 ? variants[0]!.title : null));
  expect(told).toEqual([always, always, always]);
  const rotating = groups.filter(({ variants }) => variants.length > 1);
  expect(rotating.length).toBeGreaterThan(0);
  const sentences = rotations(waves);
  expect(sentences).toHaveLength(rotating.length);
  for (const [at, { title, variants, restWeeks }] of rotating.entries()) {
    for (const one of variants) expect(sentences[at]).toContain(one.title);
    expect(sentences[at]).toMatch(new RegExp(`^${title}, in turn: .* ${restWeeks} weeks`));
  }
});
