import { isSameStart } from '#contract/day/isSameStart.ts';
import { setupKey } from '#contract/log/setupKey.ts';
import type { Lift, Start } from '#contract/records/lift.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';

/**
 * The main sets of the newest day before `before` on which a lifter did the lift from this start, or, where there is none, from any:
 * those with the heaviest bar, alike in setup and reps asked for. Empty where the lifter never did it before; struck sets do not
 * count, nor those of the training day `ofDay` itself, which may be trained before its date.
 */
export function lastTimeOf(
  sets: readonly LoggedSet[],
  asked: { lift: Lift; start: Start; before: string; ofDay?: string },
): LoggedSet[] {
  const earlier = sets.filter(
    ({ lift, doneOn, struckAt, dayId }) =>
      lift === asked.lift &&
      doneOn < asked.before &&
      struckAt === null &&
      (asked.ofDay === undefined || dayId !== asked.ofDay),
  );
  const alike = earlier.filter(({ setup }) => isSameStart(setup.start, asked.start));
  const among = alike.length > 0 ? alike : earlier;
  const on = among.reduce((newest, { doneOn }) => (doneOn > newest ? doneOn : newest), '');
  const ofDay = among.filter(({ doneOn }) => doneOn === on);
  const heaviestKg = Math.max(...ofDay.map(({ setup }) => setup.barKg));
  const main = ofDay.find(({ setup }) => setup.barKg === heaviestKg);
  if (main === undefined) return [];
  return ofDay.filter(
    (set) => set.setup.barKg === heaviestKg && set.reps === main.reps && setupKey(set) === setupKey(main),
  );
}
