import {
  type Arbitrary,
  array,
  assert,
  asyncProperty,
  boolean,
  constantFrom,
  integer,
  record,
} from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { PageEnd } from '../logPages.ts';
import { openClub } from './openClub.ts';
import { smallClub } from './smallClub.ts';
import { squatSet } from './squatSet.ts';

const dates = ['2026-11-18', '2026-11-19', '2026-11-20'] as const;
const done = array(
  record({
    doneOn: constantFrom(...dates),
    lift: constantFrom('squat', 'bench'),
    note: constantFrom('', 'Left knee', 'knee sore, left it', 'shoes 50%_off'),
    isStruck: boolean(),
    isMissed: boolean(),
  }),
  { minLength: 1, maxLength: 25 },
);

type Done = typeof done extends Arbitrary<infer T> ? T : never;

async function clubWith(sets: Done) {
  const store = await openClub(':memory:');
  await store.importRecords(smallClub());
  for (const { isStruck, isMissed, ...fields } of sets) {
    const logged = await store.logSets([squatSet({ ...fields, reps: 2, made: isMissed ? 1 : 2 })]);
    if (isStruck) await store.strikeSet(logged.sets[0]!.id);
  }
  return store;
}

describe('the log in pages', () => {
  test('is the whole log, each set once, whatever is logged between two pages', async () => {
    await assert(
      asyncProperty(done, integer({ min: 1, max: 6 }), async (sets, most) => {
        const store = await clubWith(sets);
        const there = (await store.loggedSets()).map(({ id }) => id);
        const seen: LoggedSet[] = [];
        for (let after: PageEnd | null | undefined; after !== null; ) {
          const page = await store.setsPage({}, { after: after ?? null, most });
          expect(page.sets.length).toBeLessThanOrEqual(most);
          seen.push(...page.sets);
          after = page.end;
          await store.logSets([squatSet({ doneOn: '2026-11-21' })]);
        }
        const ids = seen.map(({ id }) => id);
        expect(new Set(ids).size).toBe(ids.length);
        expect(ids).toEqual(expect.arrayContaining(there));
        await store.close();
      }),
      { numRuns: 20 },
    );
  });

  test('sums each day up as its sets do, by pages, and finds words of notes as a look at each set does', async () => {
    await assert(
      asyncProperty(
        done,
        integer({ min: 1, max: 3 }),
        constantFrom([], ['knee'], ['LEFT', 'knee'], ['50%_'], ['5%']),
        constantFrom(undefined, 'squat' as const),
        async (sets, most, words, lift) => {
          const store = await clubWith(sets);
          const says = ({ note }: LoggedSet) =>
            words.every((word) => note.toLowerCase().includes(word.toLowerCase()));
          const among = (await store.loggedSets({ lift })).filter(says);
          const told = [];
          for (let before: string | null = null, more = true; more; ) {
            const page = await store.logDays({ words, lift }, { before, most });
            told.push(...page.days);
            before = page.days.at(-1)?.doneOn ?? null;
            more = page.hasOlder;
          }
          const byHand = dates.toReversed().flatMap((doneOn) => {
            const own = among.filter((set) => set.doneOn === doneOn);
            const counting = own.filter(({ struckAt }) => struckAt === null);
            const missed = counting.filter(({ made, reps }) => made < reps).length;
            const struck = own.length - counting.length;
            return own.length === 0 ? [] : [{ doneOn, lifters: 1, sets: counting.length, missed, struck }];
          });
          expect(told).toEqual(byHand);
          const { sets: found } = await store.setsPage({ words, lift }, { after: null, most: 100 });
          expect(found).toEqual(among);
          await store.close();
        },
      ),
      { numRuns: 30 },
    );
  });

  test('finds the sets of a training day by words of its note', async () => {
    const store = await openClub(':memory:');
    const club = smallClub();
    const [day] = club.day;
    await store.importRecords({ ...club, day: [{ ...day!, note: 'Hot: open the door' }] });
    const { sets } = await store.logSets([squatSet({ dayId: day!.id }), squatSet()]);
    const page = await store.setsPage({ words: ['door', 'hot'] }, { after: null, most: 10 });
    expect(page.sets).toEqual([sets[0]]);
    await store.close();
  });
});
