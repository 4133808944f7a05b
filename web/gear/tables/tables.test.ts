import { expect, test } from 'vitest';
import { allKinds, type KindName } from '#contract/records/allKinds.ts';
import { fieldsOf } from '#contract/records/fields.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { hookupTable, scaleTable } from '#web/gear/racks/hookupTables.ts';
import { anchorTable, rackTable } from '#web/gear/racks/rackTables.ts';
import { fieldIn, figureLimits } from '#web/parts/limits.ts';
import { boxTable, chainTable } from './chainAndBoxTables.ts';
import { barTable, collarTable, discTable } from './ironTables.ts';
import { onlyWhatMatters } from './TableField.ts';

const club = smallClub();
/** What this asks of a table, whatever its kind. */
interface AnyTable {
  kind: KindName;
  fields: readonly { as: string; name: string }[];
}
const tables: AnyTable[] = [
  barTable,
  collarTable,
  discTable,
  chainTable,
  boxTable,
  rackTable(club),
  anchorTable('rack-1'),
  hookupTable('rack-1', club),
  scaleTable(club, club.hookup, '2026-11-25'),
];

test.each(tables)('the form of a $kind asks for every field but what it belongs to', ({ kind, fields }) => {
  const asked = new Set(fields.map(({ name }) => name));
  const given = new Set(['id', ...Object.keys(allKinds[kind].facts.belongsTo)]);
  const missing = fieldsOf(kind).filter(({ name }) => !asked.has(name) && !given.has(name));
  expect(missing).toEqual([]);
});

test.each(tables)('every plain figure in the form of a $kind has a least and a most', ({ kind, fields }) => {
  for (const { as, name } of fields) {
    if (as !== 'figure') continue;
    const { min, max } = figureLimits(fieldIn(allKinds[kind].shape.shape, name));
    expect(min).toBeLessThan(max);
  }
});

test('what does not matter of a hookup or a rack is kept empty: a choke that is not one, a pad where nobody benches', () => {
  const { fields } = hookupTable('rack-1', club);
  const hookup = { ...hookupTable('rack-1', club).blank, spentM: 0.12 };
  expect(onlyWhatMatters(fields, { ...hookup, way: 'choked' }).spentM).toBe(0.12);
  expect(onlyWhatMatters(fields, { ...hookup, way: 'doubled' }).spentM).toBeNull();
  const racks = rackTable(club);
  const rack = { ...racks.blank, benchHeightM: 0.42 };
  expect(onlyWhatMatters(racks.fields, rack).benchHeightM).toBe(0.42);
  expect(onlyWhatMatters(racks.fields, { ...rack, lifts: ['squat'] }).benchHeightM).toBeNull();
});

test('a new hookup is called by its point and way, unless another is called so already', () => {
  const anchor = { ...club.anchor[0]!, rackId: 'rack-1', label: 'Low pegs' };
  const label = (hookup: typeof club.hookup) => {
    const { blank, suggestedLabel } = hookupTable('rack-1', { ...club, anchor: [anchor], hookup });
    return suggestedLabel!({ ...blank, way: 'single' });
  };
  expect(label([])).toBe('Low pegs, single');
  expect(label([{ ...club.hookup[0]!, rackId: 'rack-1', label: 'Low pegs, single' }])).toBe('');
});
