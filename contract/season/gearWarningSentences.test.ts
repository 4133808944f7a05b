import { expect, it } from 'vitest';
import type { GearWarning } from './gearWarning.ts';
import { gearWarningSentences } from './gearWarningSentences.ts';

const onDays = { fromOn: '2026-12-07', untilOn: '2027-01-11', days: 6, lift: 'squat' as const };
const reach = (name: string, nearestShare: number, more: Partial<typeof onDays> = {}): GearWarning => ({
  code: 'outOfReach',
  ...onDays,
  title: 'Heavy single, squat',
  bandShare: 0.3,
  name,
  nearestShare,
  ...more,
});

const none = (title: string): GearWarning => ({ code: 'noRack', ...onDays, title });

it('names everybody whom the bands do not bring to one share in one sentence, each with the nearest', () => {
  const sentences = gearWarningSentences([reach('Ada', 0), reach('Bram', 0.477), reach('Cato', 0)]);
  expect(sentences).toHaveLength(1);
  expect(sentences[0]).toContain(
    'cannot give 30 % in bands; the nearest is 0 % for Ada, Cato; 47.7 % for Bram.',
  );
});

it('keeps other days, and other works, apart', () => {
  const later = { fromOn: '2027-01-18', untilOn: '2027-01-18', days: 1 };
  expect(gearWarningSentences([reach('Ada', 0), reach('Ada', 0, later)])).toHaveLength(2);
});

const box = (heightM: number): GearWarning => ({
  code: 'noBox',
  ...onDays,
  title: 'Speed squat',
  heightM,
  nearestM: null,
});

it('names every box that is asked of a club without any in one sentence', () => {
  expect(gearWarningSentences([box(0.39), box(0.34), box(0.39)])).toEqual([
    expect.stringMatching(/^The club has no box; Speed squat, .* asks for boxes of 34 cm, 39 cm\. Add /),
  ]);
});

it('says a lift without a rack once, however many works it has', () => {
  expect(gearWarningSentences([none('Heavy single'), none('Speed squat')])).toHaveLength(1);
});
