import { expect, onTestFinished, test } from 'vitest';
import { kindNames } from '#contract/records/allKinds.ts';
import { changesAfter, latestSeq } from '../changeLog.ts';
import { commitChange } from '../commitChange.ts';
import { kindTable } from '../kindTable.ts';
import { checkSets, logSets } from '../logSets.ts';
import { migrate } from '../migrate.ts';
import { openSqlite } from '../open/sqlite.ts';
import { allPrescriptions, appendPrescription, latestPrescription } from '../prescriptions.ts';
import { bandReps, readSets } from '../readSets.ts';
import { removal } from '../removal.ts';
import { replaceClub } from '../replaceClub.ts';
import { markSet } from '../strikeSets.ts';
import { undoChange } from '../undoChange.ts';
import { newClubPath } from './newClubPath.ts';
import { smallClub } from './smallClub.ts';
import { squatSet } from './squatSet.ts';

const nothingElse = { prescriptions: [], sets: [], former: [] };

test('two clubs in one database, alike to the last id, never touch each other', async () => {
  const db = openSqlite(newClubPath());
  onTestFinished(() => db.destroy());
  await migrate(db);
  for (const club of ['here', 'there']) await replaceClub(db, club, { ...nothingElse, records: smallClub() });
  const logged = await logSets(db, 'there', checkSets([squatSet()]));
  await appendPrescription(db, 'there', 'day-1', '2026-11-25T05:00:00.000Z', { of: 'there' });

  const bar = { ...smallClub().bar[1]!, massKg: 17 };
  await commitChange(db, 'here', [{ kind: 'bar', id: bar.id, after: bar }]);
  const gone = await commitChange(db, 'here', await removal(db, 'here', 'day', ['day-1']));
  await commitChange(db, 'here', await removal(db, 'here', 'lifter', ['lifter-1']));
  await expect(undoChange(db, 'there', gone.seq)).rejects.toMatchObject({ reason: 'missing' });
  await expect(undoChange(db, 'here', gone.seq)).rejects.toMatchObject({ reason: 'invalid' });
  await expect(markSet(db, 'here', logged.sets[0]!.id, 'struck')).rejects.toMatchObject({
    reason: 'missing',
  });
  await replaceClub(db, 'here', { ...nothingElse, records: { ...smallClub(), day: [] } });

  for (const kind of kindNames) expect(await kindTable(db, 'there', kind).live()).toEqual(smallClub()[kind]);
  expect(await latestSeq(db, 'there')).toBe(2);
  expect(await changesAfter(db, 'there', 0)).toHaveLength(2);
  expect(await readSets(db, 'there', {})).toEqual(logged.sets);
  expect(await readSets(db, 'here', {})).toEqual([]);
  expect(await bandReps(db, 'here')).toEqual([]);
  expect(await allPrescriptions(db, 'there')).toHaveLength(1);
  expect(await latestPrescription(db, 'here', 'day-1')).toBeNull();
});
