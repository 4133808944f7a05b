import { expect, test } from 'vitest';
import { differenceSentence } from '#contract/words/differenceSentence.ts';
import { planDifference } from './planDifference.ts';

const band = (bandPairId: string) => ({ bandPairId, hookupId: 'low' });
const seat = (name: string, barKg: number | null, pairs: string[] = ['22'], rackId = 'north') => ({
  lifterId: name,
  name,
  rackId,
  solved: barKg === null ? null : { barKg, set: { bands: pairs.map(band), chains: [] } },
});
const plan = (...places: ReturnType<typeof seat>[]) =>
  ({ groups: [{ groupId: 'speed', places }] }) as unknown as Parameters<typeof planDifference>[0];
const said = (from: ReturnType<typeof plan>, to: ReturnType<typeof plan>) =>
  differenceSentence(planDifference(from, to), 'kg');

test('a plan differs from itself in nothing, in whatever order its pairs are written', () => {
  const one = plan(seat('Emre', 105, ['22', '29']));
  expect(said(one, plan(seat('Emre', 105, ['29', '22'])))).toBe('Every bar, band and rack is the same.');
});

test('each lifter whose bar, bands or rack is another is told, and nobody else', () => {
  const before = plan(
    seat('Emre', 105),
    seat('Ilse', 70),
    seat('Lars', 120),
    seat('Ben', 90),
    seat('Gone', 80),
  );
  const after = plan(
    seat('Emre', 107.5),
    seat('Ilse', 70, ['13']),
    seat('Lars', 120, ['22'], 'south'),
    seat('Ben', 90),
    seat('Una', 60),
  );
  expect(said(before, after)).toBe(
    'Emre: 105 → 107.5 kg; Ilse: 70 kg as before, other bands or chains; Lars: 120 kg as before, another rack; Una: 60 kg, none before; Gone: none, 80 kg before.',
  );
});
