import { expect, onTestFinished, test } from 'vitest';
import type { ArchiveContent } from '#contract/archive/archiveContent.ts';
import { kindNames } from '#contract/records/allKinds.ts';
import type { ClubStore } from '../ClubStore.ts';
import { houseIn } from '../houseIn.ts';
import { type MayRead, mayRead } from '../mayRead.ts';
import { openSqlite } from '../open/sqlite.ts';
import { newClubPath } from './newClubPath.ts';
import { tester } from './openClub.ts';
import { smallClub } from './smallClub.ts';
import { squatSet } from './squatSet.ts';
import { listsOf, wholeOf } from './wholeOf.ts';

const coach = { name: 'the coach' };
const secret = 'only for the coach';

/** Others see no note at all, and no discs. */
const notes: MayRead = (who, kind, kept) => {
  if (who.name === coach.name) return kept;
  if (kind === 'disc') return null;
  return 'note' in kept ? { ...kept, note: '' } : kept;
};

async function clubWithSecrets() {
  const house = await houseIn(await openSqlite(newClubPath()), notes);
  onTestFinished(house.close);
  await house.found('club');
  const open = await house.forClub('club', coach);
  await open.importRecords(smallClub());
  const from = await open.records();
  const { id, ...lifter } = smallClub().lifter[0]!;
  await open.update('lifter', id, { ...lifter, note: secret });
  await open.create('disc', { faceMassKg: 5, pairs: 1, note: secret });
  const { record: bar } = await open.create('bar', { label: 'Bent', massKg: 20, note: secret });
  const { sets } = await open.logSets([squatSet({ note: secret })]);
  await open.addPrescription('day-1', '2026-11-25T05:00:00.000Z', { plan: 1 });
  await open.addTakenPlan('season-1', '2026-11-25T05:00:00.000Z', { plan: 1 });
  return { house, open, from, lifterId: id, barId: bar.id, sets };
}

/** Whatever gives out something kept; a way that is added and forgotten here does not compile. */
type Way = Exclude<
  keyof ClubStore,
  | (
      | 'path'
      | 'mark'
      | 'trouble'
      | 'stopWriting'
      | 'behindWrites'
      | 'clubId'
      | 'who'
      | 'today'
      | 'latestSeq'
      | 'standing'
      | 'lastReplaced'
      | 'lastChange'
      | 'onChange'
      | 'tellOf'
      | 'logMarks'
      | 'hasSets'
      | 'logDays'
      | 'bandReps'
      | 'swapAll'
    )
  | (
      | 'create'
      | 'update'
      | 'remove'
      | 'putAll'
      | 'putTogether'
      | 'importRecords'
      | 'logSets'
      | 'takeSetsIn'
      | 'addPrescription'
      | 'addTakenPlan'
    )
  | ('strikeSet' | 'restoreSet' | 'correctSets' | 'undo')
>;

function waysOf({ open, from, lifterId, sets }: Awaited<ReturnType<typeof clubWithSecrets>>) {
  return {
    list: (store) => store.list('lifter'),
    get: (store) => store.get('lifter', lifterId),
    records: (store) => store.records(),
    since: (store) => store.since(from),
    loggedSets: (store) => store.loggedSets(),
    setsPage: (store) => store.setsPage({}, { after: null, most: 100 }),
    touchedSets: (store) => store.touchedSets(0),
    formerGear: (store) => store.formerGear(sets),
    changesAfter: (store) => store.changesAfter(0),
    changesTouching: (store) => store.changesTouching(kindNames, 0, 100),
    changesMadeAfter: (store) => store.changesMadeAfter('2000-01-01T00:00:00.000Z'),
    whatWasDone: (store) => store.whatWasDone({ before: null, most: 50 }),
    latestPrescription: (store) => store.latestPrescription('day-1'),
    prescription: (store) => store.prescription('day-1', 1),
    takenPlans: (store) => store.takenPlans('season-1'),
    takenPlan: (store) => store.takenPlan('season-1', 1),
    snapshot: (store) => wholeOf(store),
    look: (store) => store.look(),
    change: async (store) => {
      const how = { found: { name: 'Ida', note: '' }, wanted: { name: 'Ada', note: 'mine' } };
      return store.change('lifter', lifterId, how).catch(({ message, clash }) => ({ message, clash }));
    },
    replaceAll: async (store) => {
      const kept: unknown[] = [];
      const content = { records: smallClub(), prescriptions: [], takenPlans: [], sets: [], former: [] };
      const keep = async (before: ArchiveContent) => {
        kept.push(await listsOf(before));
        throw new Error('Looked at and not replaced.');
      };
      await expect(store.replaceAll(content, keep)).rejects.toThrow('not replaced');
      return kept[0];
    },
  } satisfies Record<Way, (store: typeof open) => Promise<unknown>>;
}

test('what a rule keeps from somebody is in nothing that a store opened for them gives out', async () => {
  const club = await clubWithSecrets();
  const others = await club.house.forClub('club', tester);
  for (const [way, read] of Object.entries(waysOf(club))) {
    expect(JSON.stringify(await read(others)), way).not.toContain(secret);
  }
  expect(await others.list('disc')).toEqual([]);
  expect(await club.open.list('disc')).toHaveLength(smallClub().disc.length + 1);
  const removed = await others.remove('bar', club.barId);
  expect(JSON.stringify(await others.undo(removed.seq))).not.toContain(secret);
  expect((await club.open.get('bar', club.barId))?.note).toBe(secret);
});

test('what a reader may no longer see is gone for them in what changed since', async () => {
  const { house, from } = await clubWithSecrets();
  const others = await house.forClub('club', tester);
  expect(await others.since(from)).toMatchObject({
    put: { lifter: [{ note: '' }] },
    removed: { disc: [{}] },
  });
  expect((await others.since(from)) as object).not.toHaveProperty('put.disc');
});

test('today whoever opens a club reads all that is kept', () => {
  const lifter = { ...smallClub().lifter[0]!, note: secret };
  expect(mayRead(tester, 'lifter', lifter)).toBe(lifter);
});
