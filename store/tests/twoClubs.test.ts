import { expect, onTestFinished, test } from 'vitest';
import { openStore } from '../openStore.ts';
import { newClubPath } from './newClubPath.ts';
import { tester } from './openClub.ts';
import { smallClub } from './smallClub.ts';
import { squatSet } from './squatSet.ts';
import { wholeOf } from './wholeOf.ts';

async function houseOfTwo() {
  const house = await openStore(newClubPath());
  onTestFinished(house.close);
  for (const club of ['here', 'there']) await house.found(club);
  return house;
}

test('two clubs in one database, alike to the last id, never touch each other', async () => {
  const house = await houseOfTwo();
  const here = await house.forClub('here', tester);
  const there = await house.forClub('there', tester);
  for (const club of [here, there]) await club.importRecords(smallClub());
  const heardThere: number[] = [];
  const logged = await there.logSets([squatSet()]);
  await there.addPrescription('day-1', '2026-11-25T05:00:00.000Z', { of: 'there' });
  const asItWas = {
    ...(await wholeOf(there)),
    bandReps: (await there.bandReps()).bandReps,
    state: await there.records(),
  };
  there.onChange((seq) => heardThere.push(seq));

  const { id: barId, ...bar } = smallClub().bar[1]!;
  await here.update('bar', barId, { ...bar, massKg: 17 });
  const gone = await here.remove('day', 'day-1');
  await here.remove('comparison', 'comparison-1');
  await here.remove('lifter', 'lifter-1');
  await expect(here.undo(gone.seq)).rejects.toMatchObject({ reason: 'invalid' });
  await expect(here.strikeSet(logged.sets[0]!.id)).rejects.toMatchObject({ reason: 'missing' });
  await here.importRecords({ ...smallClub(), day: [] });
  await expect(there.undo((await here.latestSeq()) - 1)).rejects.toMatchObject({ reason: 'missing' });

  expect({
    ...(await wholeOf(there)),
    bandReps: (await there.bandReps()).bandReps,
    state: await there.records(),
  }).toEqual(asItWas);
  expect(asItWas.sets).toEqual(logged.sets);
  expect(await there.changesAfter(0)).toHaveLength(3);
  expect(heardThere).toEqual([]);
  expect(await here.loggedSets()).toEqual([]);
  expect((await here.bandReps()).bandReps).toEqual([]);
  expect(await here.latestPrescription('day-1')).toBeNull();
});

test('two people of one club hear of each other, and each change bears the name of who made it', async () => {
  const house = await houseOfTwo();
  const coach = await house.forClub('here', { name: 'the coach' });
  const helper = await house.forClub('here', { name: 'a helper' });
  const heard: number[] = [];
  coach.onChange((seq) => heard.push(seq));
  const { record, seq } = await coach.create('bar', { label: 'Long', massKg: 20 });
  const changed = await helper.update('bar', record.id, { label: 'Long', massKg: 25 });
  await expect(coach.undo(seq)).rejects.toThrow('was changed again since by a helper.');
  const undone = await coach.undo(changed.seq);
  const { sets } = await helper.importRecords(smallClub()).then(() => helper.logSets([squatSet()]));
  const struck = await coach.strikeSet(sets[0]!.id);
  await expect(helper.undo(struck.seq - 1)).rejects.toThrow('struck or restored since by the coach.');
  expect(undone).toMatchObject({ undoes: changed.seq, who: { name: 'the coach' } });
  expect((await helper.changesAfter(0)).map(({ who, replaced }) => [who?.name, replaced])).toEqual([
    ['the coach', false],
    ['a helper', false],
    ['the coach', false],
    ['a helper', true],
    ['a helper', false],
    ['the coach', false],
  ]);
  expect(heard).toEqual([1, 2, 3, 4, 5, 6]);
});

test('a club that is not there is opened for nobody, and one that is there is not founded again', async () => {
  const house = await houseOfTwo();
  await expect(house.forClub('nowhere', tester)).rejects.toMatchObject({ reason: 'missing' });
  const here = await house.forClub('here', tester);
  const before = await here.records();
  await house.found('here');
  expect(await here.records()).toEqual(before);
});
