import { expect, it } from 'vitest';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { freeSearch } from '#core/day/SearchRules.ts';
import { assembleGroup } from './assembleGroup.ts';
import { rankGroup } from './rankGroup.ts';

it('says in one sentence whom nothing can be worked out for, and still ranks the sets of the others', () => {
  const records = twoLifters();
  const [day] = records.day;
  const { found, racks } = assembleGroup(records, day!.date, day!.groups[0]!, []);
  const [short, tall] = found;
  if (!('assembled' in short!) || !('assembled' in tall!)) throw new Error('both can be assembled');
  const broken = {
    ...short,
    assembled: {
      ...short.assembled,
      task: { ...short.assembled.task, referenceKg: Number.NaN },
    },
  };
  const ranked = rankGroup([broken, tall], racks, freeSearch, () => 0);
  expect(ranked[0]).toMatchObject({ place: { lifterId: short.place.lifterId } });
  expect('problem' in ranked[0]! && ranked[0].problem).toMatch(/^No bar, bands or chains [^.]*\.$/);
  const alone = rankGroup([tall], racks, freeSearch, () => 0);
  const best = (one: (typeof ranked)[number]) => ('lifter' in one ? one.lifter.ranking.fromBest()() : null);
  expect(best(ranked[1]!)).not.toBeNull();
  expect(best(rankGroup([broken, tall], racks, freeSearch, () => 0)[1]!)).toEqual(best(alone[0]!));
});
