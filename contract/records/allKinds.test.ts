import { readdirSync } from 'node:fs';
import { expect, test } from 'vitest';
import { smallClub } from '#store/tests/smallClub.ts';
import { allKinds, kindNames } from './allKinds.ts';
import { kindsOwnedBy, ownRecords } from './ownRecords.ts';
import { references } from './references.ts';

const here = new URL('./', import.meta.url);

/** The names of the kinds among what a module of this folder exports. */
async function declaredIn(file: string): Promise<string[]> {
  const exported: Record<string, unknown> = await import(new URL(file, here).href);
  return Object.values(exported).flatMap((one) =>
    typeof one === 'object' && one !== null && 'facts' in one && 'name' in one ? String(one.name) : [],
  );
}

test('every kind that is declared in this folder is in the list of all kinds', async () => {
  const files = readdirSync(here).filter((file) => file.endsWith('.ts') && !file.includes('.test.'));
  const declared = (await Promise.all(files.map(declaredIn))).flat();
  expect(declared).toContain('restriction');
  expect(declared.filter((name) => !Object.hasOwn(allKinds, name))).toEqual([]);
});

test('each kind stands in the list by its own name, and after every other kind that it names', () => {
  expect(Object.values(allKinds).map(({ name }) => name)).toEqual(kindNames);
  const early = references.filter(({ from, to }) => kindNames.indexOf(from) < kindNames.indexOf(to));
  expect(early).toEqual([]);
});

test('what belongs to a record is gathered by every field that says so, newest first, and nothing of another', () => {
  const club = smallClub();
  const [mass] = club.bodyMass;
  const own = { ...mass!, id: 'newer', takenOn: '2026-11-09' };
  const others = { ...mass!, id: 'other', lifterId: 'lifter-2' };
  club.bodyMass.push(others, own);
  const { bodyMass, ...rest } = ownRecords(club, 'lifter', 'lifter-1');
  expect(bodyMass).toEqual([own, mass]);
  expect(Object.keys(rest)).toEqual(kindsOwnedBy('lifter').filter((kind) => kind !== 'bodyMass'));
  expect(rest.restriction).toEqual(club.restriction);
  // A reading under the bar belongs to a hookup and to a pair, and goes with either.
  for (const owner of ['hookup', 'bandPair'] as const)
    expect(ownRecords(club, owner, club[owner][0]!.id)).toMatchObject({ scaleReading: club.scaleReading });
});
