import type { ClubStore } from '../ClubStore.ts';
import { smallClub } from './smallClub.ts';
import { squatSet } from './squatSet.ts';

/** Ids that sort otherwise by the units of UTF-16 than by their bytes: the last two. */
const ids = ['bar-1', 'bar-2', 'a', 'aa', 'Z', 'é', '\uffee', '\u{1f3cb}'];

/** What people do to a club, `n` choosing among what there is; some of it is refused. */
export const doings: Record<string, (store: ClubStore, n: number) => Promise<unknown>> = {
  create: (store, n) => store.create('box', { label: `Box ${n}`, sort: 'box', heightM: 0.3, pieces: 1 }),
  async put(store, n) {
    const chosen = ids.filter((_, i) => (n >> i) % 2 === 1);
    const bars = chosen.map((id) => ({ id, label: id, massKg: 10 + (n % 7), weighed: false, note: '' }));
    return store.putAll('bar', bars);
  },
  async update(store, n) {
    const [rack] = await store.list('rack');
    if (!rack) return;
    const { id, ...fields } = rack;
    await store.update('rack', id, { ...fields, note: `note ${n % 3}` });
  },
  async remove(store, n) {
    const kinds = ['bar', 'box', 'day', 'best', 'lifter', 'rack', 'bandReading'] as const;
    const kind = kinds[n % kinds.length]!;
    const list = await store.list(kind);
    return store.remove(kind, list[n % Math.max(list.length, 1)]?.id ?? 'nobody');
  },
  async undo(store, n) {
    const latest = await store.latestSeq();
    return store.undo(Math.max(1, latest - (n % 4)));
  },
  async log(store, n) {
    return store.logSets([squatSet({ reps: 1 + (n % 5), made: 1 })]);
  },
  async strike(store, n) {
    const sets = await store.loggedSets();
    return store.strikeSet(sets[n % Math.max(sets.length, 1)]?.id ?? 'nobody');
  },
  async correct(store, n) {
    const sets = await store.loggedSets();
    const id = sets[n % Math.max(sets.length, 1)]?.id ?? 'nobody';
    return store.correctSets([{ id, set: squatSet({ reps: 2, made: n % 3 }) }]);
  },
  take: (store, n) => store.addTakenPlan('season-1', '2026-11-25T05:00:00.000Z', { n }),
  solve: (store, n) => store.addPrescription('day-1', '2026-11-25T05:00:00.000Z', { n }),
  async replace(store, n) {
    const { bar, ...club } = smallClub();
    return store.importRecords({ ...club, bar: bar.map((one) => ({ ...one, massKg: 15 + (n % 5) })) });
  },
};
