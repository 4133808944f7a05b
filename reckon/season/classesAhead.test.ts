import { expect, test } from 'vitest';
import { classSentences } from '#contract/season/classSentences.ts';
import { millraceClub } from '#demo/millraceClub.ts';
import { classesAhead } from './classesAhead.ts';

const today = '2026-11-25';
const club = millraceClub(today);
const emre = club.lifter.find(({ id }) => id === 'lifter-emre')!;

/** Emre in one class at the Tollbridge Open, 30 January, as the scales and the day of birth have it. */
function told(
  upToKg: number | null,
  massKg: number,
  bornOn: string | null = '1997-10-18',
  unit: 'kg' | 'lb' = 'kg',
) {
  const records = {
    ...club,
    lifter: [{ ...emre, bornOn }],
    bodyMass: [
      { id: 'old', lifterId: emre.id, takenOn: '2026-11-01', massKg: 70 },
      { id: 'new', lifterId: emre.id, takenOn: '2026-11-20', massKg },
      { id: 'ahead', lifterId: emre.id, takenOn: '2026-12-20', massKg: 70 },
    ],
  };
  const entry = { lifterId: emre.id, classes: [{ meetId: 'meet-tollbridge', upToKg }] };
  return classesAhead(records, [entry], today).map((ahead) => classSentences(ahead, unit))[0]!;
}

// Limits as a member federation of the IPF publishes them (wcpowerlifting.org.za, About powerlifting): men up to 83.0 kg, then from 83.1 kg up to 93.0 kg.
test('the limit of a class belongs to it, and above it the page defers to those who know', () => {
  expect(told(83, 83)).toEqual({
    says: 'Tollbridge Open on 30 Jan 2027: the class up to 83 kg. Weighed 83 kg on 20 Nov 2026, just at the limit.',
    caution: null,
  });
  const above = told(83, 83.1);
  expect(above.says).toContain('83.1 kg on 20 Nov 2026, 0.1 kg above it.');
  expect(above.caution).toMatch(/plans no cut.*physician or a qualified dietitian/);
  expect(told(93, 83.1)).toMatchObject({ says: expect.stringContaining('9.9 kg below it.'), caution: null });
  expect(told(null, 145)).toMatchObject({
    says: expect.stringContaining('without an upper limit. Weighed 145 kg'),
    caution: null,
  });
});

test('a minor is told of no cut at all, and somebody of unknown age what would hold for one', () => {
  // Eighteen the day after.
  expect(told(83, 84, '2008-11-26').caution).toMatch(/^Under 18: no cutting of weight at all/);
  expect(told(83, 84, '2008-11-25').caution).not.toContain('18');
  expect(told(83, 84, null).caution).toMatch(/physician.*under 18 no weight is cut at all/);
  expect(told(83, 82, '2010-01-01').caution).toBeNull();
});

test('a class is named in kg, and the distance to it in what the club weighs in', () => {
  // A pound is 0.45359237 kg (NIST Handbook 44, appendix C): 3 kg are 6.61 lb.
  expect(told(83, 86, '1997-10-18', 'lb').says).toContain(
    'up to 83 kg. Weighed 189.6 lb on 20 Nov 2026, 6.61 lb above it.',
  );
});

test('a meet that is over is not told of, and one of two seasons once', () => {
  const entry = { lifterId: emre.id, classes: [{ meetId: 'meet-tollbridge', upToKg: 83 }] };
  expect(classesAhead(club, [entry, entry], '2027-01-30')).toHaveLength(1);
  expect(classesAhead(club, [entry], '2027-01-31')).toEqual([]);
});
