import { expect, test } from 'vitest';
import { allKinds, type KindName } from '#contract/records/allKinds.ts';
import { fieldsOf } from '#contract/records/fields.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { hookupSheet, scaleSheet } from '#web/gear/racks/hookupSheets.ts';
import { anchorSheet, rackSheet } from '#web/gear/racks/rackSheets.ts';
import { fieldIn, figureLimits } from '#web/parts/limits.ts';
import { boxSheet, chainSheet } from './chainAndBoxSheets.ts';
import { barSheet, collarSheet, discSheet } from './ironSheets.ts';

const club = smallClub();
/** What this asks of a sheet, whatever its kind. */
interface AnySheet {
  kind: KindName;
  fields: readonly { as: string; name: string }[];
}
const sheets: AnySheet[] = [
  barSheet,
  collarSheet,
  discSheet,
  chainSheet,
  boxSheet,
  rackSheet(club),
  anchorSheet('rack-1'),
  hookupSheet('rack-1', club),
  scaleSheet(club, club.hookup, '2026-11-25'),
];

test.each(sheets)('the form of a $kind asks for every field but what it belongs to', ({ kind, fields }) => {
  const asked = new Set(fields.map(({ name }) => name));
  const given = new Set(['id', ...Object.keys(allKinds[kind].facts.belongsTo)]);
  const missing = fieldsOf(kind).filter(({ name }) => !asked.has(name) && !given.has(name));
  expect(missing).toEqual([]);
});

test.each(sheets)('every plain figure in the form of a $kind has a least and a most', ({ kind, fields }) => {
  for (const { as, name } of fields) {
    if (as !== 'figure') continue;
    const { min, max } = figureLimits(fieldIn(allKinds[kind].shape.shape, name));
    expect(min).toBeLessThan(max);
  }
});
