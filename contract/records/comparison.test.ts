import { describe, expect, it } from 'vitest';
import { smallClub } from '#store/tests/smallClub.ts';
import type { RecordOf } from './allKinds.ts';
import { comparison, takenOut } from './comparison.ts';
import type { ComparisonPlan } from './comparisonPlan.ts';
import { faultsOf } from './faultsOf.ts';

// Everybody here is made up.

const club = smallClub();
const [drawn] = club.comparison as [RecordOf<'comparison'>];
const [lifter] = club.lifter as [RecordOf<'lifter'>];
const second = { ...lifter, id: 'lifter-2', name: 'Bo Second' };
const two: ComparisonPlan = {
  ...drawn.planDocument,
  drawn: [
    { lifterId: 'lifter-1', name: 'Ida Quill', way: 'Singles', pair: 1 },
    { lifterId: 'lifter-2', name: 'Bo Second', way: 'four weeks', pair: 1 },
  ],
};
const ofTwo = { ...drawn, planDocument: two };
const born = (bornOn: string | null) => ({ ...club, lifter: [lifter, { ...second, bornOn }] });
const faults = (record: typeof ofTwo, before: typeof ofTwo | null, beside = born('1990-01-01')) =>
  faultsOf('comparison', record, before, beside, '2026-11-25').map(
    ({ field, message }) => `${field}: ${message}`,
  );

describe('nobody under age is drawn', () => {
  // The first day is 30 November 2026.
  it.each([
    ['2008-12-01', /Bo Second cannot be drawn: 17 years old then/],
    [null, /Bo Second cannot be drawn: the date of birth is not known/],
  ])('born on %s', (bornOn, refused) => {
    expect(faults(ofTwo, null, born(bornOn))).toEqual([expect.stringMatching(refused)]);
  });

  it('is of age on the birthday itself', () => {
    expect(faults(ofTwo, null, born('2008-11-30'))).toEqual([]);
  });

  it('is a date of birth that would make a minor of somebody drawn', () => {
    const beside = { ...club, comparison: [ofTwo] };
    const corrected = { ...second, bornOn: '2008-12-01' };
    expect(faultsOf('lifter', corrected, second, beside, '2026-11-25')).toMatchObject([
      {
        field: 'bornOn',
        isClash: true,
        message: expect.stringContaining('Bo Second was drawn for the comparison'),
      },
    ]);
    expect(faultsOf('lifter', { ...corrected, id: 'other' }, null, beside, '2026-11-25')).toEqual([]);
  });
});

describe('what was drawn stays', () => {
  it.each([
    ['the title', { title: 'Another' }],
    ['the seed', { planDocument: { ...two, seed: 6 } }],
    ['the lift', { lift: 'bench' as const }],
  ])('as to %s', (_what, change) => {
    expect(faults({ ...ofTwo, ...change }, ofTwo)).toEqual([
      'id: A comparison is never changed but for its note; remove it and enter a new one.',
    ]);
  });

  it('but for the note', () => {
    expect(faults({ ...ofTwo, note: 'Everybody was asked.' }, ofTwo)).toEqual([]);
  });
});

it.each([
  ['drawn after its first day', { drawnOn: '2026-12-01' }, 'drawnOn'],
  ['without the setup that it looks at', { family: null }, 'family'],
  ['with a pair of one', { planDocument: { ...two, drawn: two.drawn.slice(1) } }, 'planDocument'],
  [
    'with a pair of one way',
    { planDocument: { ...two, ways: ['a', 'b'], drawn: two.drawn.map((one) => ({ ...one, way: 'a' })) } },
    'planDocument',
  ],
  [
    'with a way that was not drawn from',
    { planDocument: { ...two, ways: ['Singles', 'five weeks'] } },
    'planDocument',
  ],
  [
    'with somebody twice',
    {
      planDocument: {
        ...two,
        notDrawn: [{ lifterId: 'lifter-1', name: 'Ida Quill', reason: 'minor' as const }],
      },
    },
    'planDocument',
  ],
  ['that ends on another day', { planDocument: { ...two, weeks: 9 } }, 'planDocument'],
])('no comparison is kept %s', (_what, change, field) => {
  expect(comparison.shape.safeParse(ofTwo).success).toBe(true);
  expect(comparison.shape.safeParse({ ...ofTwo, ...change }).error?.issues).toMatchObject([
    { path: [field] },
  ]);
});

it('takes out without a reason, at any time, and only who was drawn', () => {
  const out = takenOut.shape.parse({
    id: 'o',
    comparisonId: drawn.id,
    lifterId: 'lifter-2',
    fromOn: '2027-01-03',
  });
  const beside = { ...born('1990-01-01'), comparison: [ofTwo], takenOut: [] };
  expect(out.why).toBe('');
  expect(faultsOf('takenOut', out, null, beside, '2026-11-25')).toEqual([]);
  expect(faultsOf('takenOut', out, null, { ...beside, comparison: [drawn] }, '2026-11-25')).toMatchObject([
    { field: 'lifterId', message: expect.stringContaining('Bo Second was not drawn') },
  ]);
});
