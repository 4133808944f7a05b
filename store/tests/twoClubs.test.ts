import { expect, onTestFinished, test } from 'vitest';
import { kindNames } from '#contract/records/allKinds.ts';
import { changesAfter, latestSeq } from '../changeLog.ts';
import { commitChange } from '../commitChange.ts';
import { kindTable } from '../kindTable.ts';
import { migrate } from '../migrate.ts';
import { openSqlite } from '../open/sqlite.ts';
import { allPrescriptions, appendPrescription, latestPrescription } from '../prescriptions.ts';
import { removal } from '../removal.ts';
import { replaceClub } from '../replaceClub.ts';
import { undoChange } from '../undoChange.ts';
import { newClubPath } from './newClubPath.ts';
import { smallClub } from './smallClub.ts';

test('two clubs in one database, alike to the last id, never touch each other', async () => {
  const db = openSqlite(newClubPath());
  onTestFinished(() => db.destroy());
  await migrate(db);
  for (const club of ['here', 'there']) await replaceClub(db, club, smallClub(), []);
  await appendPrescription(db, 'there', 'day-1', '2026-11-25T05:00:00.000Z', { of: 'there' });

  const bar = { ...smallClub().bar[1]!, massKg: 17 };
  await commitChange(db, 'here', [{ kind: 'bar', id: bar.id, after: bar }]);
  const gone = await commitChange(db, 'here', await removal(db, 'here', 'day', ['day-1']));
  await commitChange(db, 'here', await removal(db, 'here', 'lifter', ['lifter-1']));
  await expect(undoChange(db, 'there', gone.seq)).rejects.toMatchObject({ reason: 'missing' });
  await expect(undoChange(db, 'here', gone.seq)).rejects.toMatchObject({ reason: 'invalid' });
  await replaceClub(db, 'here', { ...smallClub(), day: [] }, []);

  for (const kind of kindNames) expect(await kindTable(db, 'there', kind).live()).toEqual(smallClub()[kind]);
  expect(await latestSeq(db, 'there')).toBe(1);
  expect(await changesAfter(db, 'there', 0)).toHaveLength(1);
  expect(await allPrescriptions(db, 'there')).toHaveLength(1);
  expect(await latestPrescription(db, 'here', 'day-1')).toBeNull();
});
