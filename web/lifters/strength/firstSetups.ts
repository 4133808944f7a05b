import { setupKey } from '#contract/log/setupKey.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { liftWords } from '#contract/words/liftWords.ts';
import { competitionSetup } from '#reckon/strength/riggingOf.ts';
import { setupToKeep } from './setupToKeep.ts';
import type { KeptSetup } from './useKeptSetups.ts';

/** So many setups of each lift's log are asked for before the coach chooses. */
const mostUsed = 4;

/** To begin with: the straight competition lift of each lift, and the setups that its log holds most of. */
export function firstSetups(sets: readonly LoggedSet[]): KeptSetup[] {
  return liftWords.flatMap(({ value: lift }) => {
    const straight = setupToKeep({ lift, equipment: 'raw', setup: competitionSetup(lift) });
    const counts = new Map<string, { setup: KeptSetup; count: number }>();
    for (const set of sets) {
      if (set.lift !== lift || set.struckAt !== null) continue;
      const key = setupKey(set);
      const known = counts.get(key);
      if (known) known.count++;
      else counts.set(key, { setup: setupToKeep(set), count: 1 });
    }
    const used = [...counts.values()]
      .sort((a, b) => b.count - a.count)
      .map(({ setup }) => setup)
      .filter(({ id }) => id !== straight.id);
    return [straight, ...used.slice(0, mostUsed)];
  });
}
