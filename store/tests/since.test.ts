import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { ClubChanges, ClubState } from '#contract/changes/clubState.ts';
import { withChanges } from '#contract/changes/withChanges.ts';
import { withTouched } from '#contract/log/withTouched.ts';
import type { ClubStore } from '../ClubStore.ts';
import { Refusal } from '../Refusal.ts';
import { databases } from './databases.ts';
import { doings } from './doings.ts';
import { smallClub } from './smallClub.ts';
import { squatSet } from './squatSet.ts';

async function caughtUp(store: ClubStore, from: ClubState) {
  const news = await store.since(from);
  return 'put' in news ? { state: withChanges(from, news), sets: news.sets } : { state: news, sets: null };
}

async function logAsShown(store: ClubStore) {
  const sets = await store.loggedSets();
  return { sets, former: await store.formerGear(sets), bandReps: (await store.bandReps()).bandReps };
}

describe.each(databases)('what changed since on $name', ({ open }) => {
  async function within(work: (store: ClubStore) => Promise<void>) {
    const { store, dispose } = await open();
    await store.importRecords(smallClub());
    await work(store).finally(dispose);
  }

  test('makes the whole club of an earlier one, whatever was written, removed, undone or replaced', async () => {
    // Whoever looks after each change, and who looks now and then.
    const step = fc.record({
      does: fc.constantFrom(...Object.keys(doings)),
      n: fc.nat({ max: 1000 }),
      looks: fc.boolean(),
    });
    let untouched = 0;
    let takenIn = 0;
    await fc.assert(
      fc.asyncProperty(fc.array(step, { minLength: 5, maxLength: 25 }), (steps) =>
        within(async (store) => {
          let always = await store.records();
          let seldom = { state: always, shown: await logAsShown(store) };
          for (const { does, n, looks } of steps) {
            await doings[does]!(store, n).catch((error: unknown) => {
              if (!(error instanceof Refusal)) throw error;
            });
            const whole = await store.records();
            always = (await caughtUp(store, always)).state;
            expect(always).toEqual(whole);
            if (!looks) continue;
            const { state, sets } = await caughtUp(store, seldom.state);
            const shown = await logAsShown(store);
            expect(state).toEqual(whole);
            if (sets?.length === 0) expect(shown).toEqual(seldom.shown);
            if (sets !== null) {
              expect(shown.sets).toEqual(withTouched(seldom.shown.sets, {}, sets));
              expect(shown.former).toEqual(seldom.shown.former);
            }
            untouched += sets?.length === 0 ? 1 : 0;
            takenIn += sets?.length ? 1 : 0;
            seldom = { state, shown };
          }
        }),
      ),
      { numRuns: 12 },
    );
    // The cases without news of the log, and with some that tell all of it, are there to be seen.
    expect([untouched, takenIn]).not.toContain(0);
  });

  test('holds what was touched alone, as it now stands, and who did it', () =>
    within(async (store) => {
      const from = await store.records();
      const { record } = await store.create('box', { label: 'A', sort: 'box', heightM: 0.3, pieces: 1 });
      const { record: gone, seq } = await store.create('box', {
        label: 'B',
        sort: 'box',
        heightM: 0.4,
        pieces: 1,
      });
      await store.undo(seq);
      await store.remove('scaleReading', 'scale-1');
      const { id, ...box } = record;
      const last = await store.update('box', id, { ...box, heightM: 0.35 });
      const { changes, madeAt, ...news } = (await store.since(from)) as ClubChanges;
      expect(news).toEqual({
        seq: last.seq,
        put: { box: [{ ...record, heightM: 0.35 }] },
        removed: { box: [gone.id], scaleReading: ['scale-1'] },
        sets: [],
      });
      const heads = (await store.changesAfter(from.seq)).map((change) => ({
        seq: change.seq,
        madeAt: change.madeAt,
        who: store.who,
        undoes: change.undoes,
      }));
      expect(changes).toEqual(heads);
      expect(madeAt).toBe(heads.at(-1)!.madeAt);
    }));

  test('is nothing where nothing was done since', () =>
    within(async (store) => {
      const { seq, madeAt } = await store.records();
      expect(await store.since({ seq, madeAt })).toEqual({
        seq,
        madeAt,
        put: {},
        removed: {},
        sets: [],
        changes: [],
      });
    }));

  test('is the whole club where the number is of another history, of none, or very much was done', () =>
    within(async (store) => {
      const from = await store.records();
      await store.create('box', { label: 'A', sort: 'box', heightM: 0.3, pieces: 1 });
      const whole = await store.records();
      expect(await store.since({ seq: from.seq, madeAt: '2026-01-01T00:00:00.000Z' })).toEqual(whole);
      expect(await store.since({ seq: 99, madeAt: from.madeAt })).toEqual(whole);
      expect(await store.since({ seq: 0, madeAt: null })).toEqual(whole);
      expect(await store.since(from)).toHaveProperty('put');
      const many = Array.from({ length: 600 }, (_, i) => ({
        id: `disc-of-many-${i}`,
        faceMassKg: 1,
        pairs: 1,
        weighedMassKg: null,
        diameterM: null,
        thicknessM: null,
        note: '',
      }));
      await store.putAll('disc', many);
      expect(await store.since(from)).toEqual(await store.records());
    }));

  test('tells that sets may read otherwise when their lifter or gear goes and comes back, and not for a note', () =>
    within(async (store) => {
      await store.logSets([squatSet()]);
      let from = await store.records();
      const told = async () => {
        const news = await store.since(from);
        from = await store.records();
        return 'put' in news ? news.sets?.length : 'whole';
      };
      const { id, ...lifter } = smallClub().lifter[0]!;
      await store.update('lifter', id, { ...lifter, note: 'late' });
      expect(await told()).toBe(0);
      await store.remove('day', 'day-1');
      expect(await told()).toBe(0);
      await store.remove('best', 'best-1');
      const { seq } = await store.remove('rack', 'rack-1');
      expect(await told()).toBeUndefined();
      await store.undo(seq);
      expect(await told()).toBeUndefined();
      await store.remove('comparison', 'comparison-1');
      const gone = await store.remove('lifter', 'lifter-1');
      expect(await told()).toBeUndefined();
      await store.undo(gone.seq);
      expect(await told()).toBeUndefined();
      await store.logSets([squatSet()]);
      expect(await told()).toBe(1);
    }));

  test('brings the sets that were touched, once each and as they now are, but those of lifters who are gone', () =>
    within(async (store) => {
      const { sets } = await store.logSets([squatSet(), squatSet()]);
      const from = await store.records();
      const touched = async () => ((await store.since(from)) as ClubChanges).sets;
      const [first, second] = sets;
      await store.strikeSet(first!.id);
      await store.restoreSet(first!.id);
      await store.strikeSet(first!.id);
      const { sets: more } = await store.logSets([squatSet()]);
      expect(await touched()).toEqual([{ ...first, struckAt: expect.any(String) }, ...more]);
      // What takes the place of a set may name gear that is gone, of which the news say nothing.
      await store.correctSets([{ id: second!.id, set: squatSet({ reps: 4, made: 4 }) }]);
      expect(await touched()).toBeNull();
      await store.remove('day', 'day-1');
      await store.remove('comparison', 'comparison-1');
      await store.remove('lifter', first!.lifterId);
      const without = await store.records();
      await store.strikeSet(more[0]!.id);
      expect(((await store.since(without)) as ClubChanges).sets).toEqual([]);
    }));
});
