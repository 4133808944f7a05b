import { expect, test } from 'vitest';
import { loggedSquat } from '#contract/tests/loggedSquat.ts';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { setupNames } from './setupNames.ts';

const units = { mass: 'kg', length: 'cm' } as const;
const base = twoLifters();
const [rack] = base.rack;
const [pair] = base.bandPair;
const [hookup] = base.hookup;
const club = {
  ...base,
  rack: [
    { ...rack!, id: 'north', label: 'North rack' },
    { ...rack!, id: 'south', label: 'South rack' },
  ],
  hookup: [
    { ...hookup!, id: 'north low', rackId: 'north', label: 'Doubled, low' },
    { ...hookup!, id: 'south low', rackId: 'south', label: 'Doubled, low' },
  ],
};
const hung = (hookupId: string) =>
  loggedSquat(hookupId, '2026-01-01', 100, { with: { bands: [{ bandPairId: pair!.id, hookupId }] } });

test('two setups that read alike are told apart by their racks, one alone needs no rack', () => {
  const [north, south, free] = setupNames(
    club,
    [hung('north low'), hung('south low'), loggedSquat('free', '2026-01-01', 100)],
    units,
  );
  expect(north).toMatch(/\(doubled, low\), North rack$/);
  expect(south).toBe(north!.replace('North', 'South'));
  expect(free).toBe('free');
  expect(setupNames(club, [hung('north low')], units)).toEqual([north!.replace(', North rack', '')]);
});

test('the same words in two lifts are no mistake', () => {
  const bench = {
    ...hung('north low'),
    lift: 'bench' as const,
    setup: { ...hung('south low').setup, bands: [] },
  };
  const squat = { ...bench, lift: 'squat' as const };
  for (const name of setupNames(club, [bench, squat], units)) expect(name).not.toContain('rack');
});
