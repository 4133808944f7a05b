import { expect, test } from 'vitest';
import { allKinds, type ClubRecords, kindNames } from '#contract/records/allKinds.ts';
import type { Answer } from '#contract/records/kind.ts';
import { loggedSquat } from '#contract/tests/loggedSquat.ts';
import { watchedClub } from '#contract/tests/watchedClub.ts';
import { noClock } from '#core/day/timeSpent.ts';
import { populationPrior } from '#core/strength/parameters.ts';
import { millraceClub } from '#demo/millraceClub.ts';
import { solveGroup } from '#reckon/day/solveGroup.ts';
import { weighLift } from '#reckon/strength/estimateLift.ts';
import { clubBasis, lifterBasis } from './basisRecords.ts';
import { fingerprint } from './fingerprint.ts';

const club = millraceClub('2026-11-25');
const speed = club.day.find(({ title }) => title.startsWith('Speed'))!;

/** Fields that were read and that no kind says to feed this answer. */
function unsaid(read: ReadonlySet<string>, answer: Answer): string[] {
  const said = new Set(
    kindNames.flatMap((kind) => {
      const { shape, facts } = allKinds[kind];
      const fields = facts.feeds[answer];
      const all = Object.keys(shape.shape).filter((name) => name !== 'note');
      return ['id', ...(fields === 'all' ? all : (fields ?? []))].map((name) => `${kind}.${name}`);
    }),
  );
  // A best that stands in the log as a set brings its note along, which nothing weighs.
  return [...read].filter((field) => !said.has(field) && !field.endsWith('.note'));
}

test('a plan reads no field that is not said to feed it', () => {
  const { records, read } = watchedClub(club);
  const how = { clock: noClock, tell: () => {}, chosenAlone: false };
  for (const group of speed.groups) solveGroup(records, speed, group, [], how);
  expect(read).toContain('bandPair.restLengthAM');
  expect(read).toContain('restriction.mostShare');
  expect(unsaid(read, 'plan')).toEqual([]);
});

test('an estimate reads no field that is not said to feed it', () => {
  const { records, read } = watchedClub(club);
  const [lars] = speed.groups[0]!.places.filter(({ lifterId }) => lifterId === 'lifter-lars');
  const { bands } = club.best.find(({ setup }) => setup.bands.length > 0)!.setup;
  const log = [100, 150].map((kg) =>
    loggedSquat(`${kg}`, '2026-11-20', kg, {
      lifterId: lars!.lifterId,
      with: { rackId: lars!.rackId, bands },
    }),
  );
  const of = { lifterId: lars!.lifterId, lift: 'squat' as const, on: '2026-11-25' };
  expect(weighLift(records, log, of, populationPrior('squat'))).not.toBeNull();
  expect(read).toContain('bandReading.forceN');
  expect(unsaid(read, 'estimate')).toEqual([]);
});

// By the first page of a club's settings and by what stands beside the gear.
test.each<[string, Partial<ClubRecords>, Answer[]]>([
  [
    'units and name of the club',
    { club: [{ ...club.club[0]!, massUnit: 'lb', lengthUnit: 'in', name: 'Other' }] },
    [],
  ],
  ['a box', { box: [] }, ['plan']],
  ['a note', { bar: club.bar.map((bar) => ({ ...bar, note: 'bent' })) }, []],
  ['what bars weigh', { bar: club.bar.map((bar) => ({ ...bar, massKg: 25 })) }, ['plan']],
  ['a restriction', { restriction: [] }, ['plan']],
  ['where the club stands', { club: [{ ...club.club[0]!, latitudeDeg: 0 }] }, ['plan', 'estimate']],
  ['what a lifter weighs', { bodyMass: club.bodyMass.slice(1) }, ['plan', 'estimate']],
])('%s changes the marks of no more than it should', (_, changed, answers) => {
  const everybody = new Set(club.lifter.map(({ id }) => id));
  const mark = (records: ClubRecords, answer: Answer) =>
    fingerprint([clubBasis(records, answer), lifterBasis(records, answer, everybody)]);
  const moved = (['plan', 'estimate'] as const).filter(
    (answer) => mark(club, answer) !== mark({ ...club, ...changed }, answer),
  );
  expect(moved).toEqual(answers);
});
