import { grouped } from '#core/numeric/grouped.ts';
import type { RepeatedLift } from './RepeatedLift.ts';

/** What a lifter did with the same setup so many days around a lift says what is likely (judgement). */
const AROUND_DAYS = 60;
const LEAST_OTHERS = 2;
/** Further from the middle of those, a lift was held back, or written down wrongly: four to five times what days differ by. */
const MOST_OFF = 0.12;
const MS_A_DAY = 86_400_000;

/** The lifts without those that fit nothing around them: figures turned round, days that stopped early. */
export function likelyLifts<Lift extends RepeatedLift>(lifts: readonly Lift[]): Lift[] {
  return [...grouped(lifts, ({ lifterId, key }) => `${lifterId} ${key}`).values()]
    .flatMap((list) => {
      const times = list.map(({ doneOn }) => Date.parse(doneOn));
      return list.filter((lift, i) => {
        const near = list.filter(
          (_, k) => k !== i && Math.abs(times[k]! - times[i]!) <= AROUND_DAYS * MS_A_DAY,
        );
        if (near.length < LEAST_OTHERS) return true;
        const sorted = near.map(({ barKg }) => barKg).sort((a, b) => a - b);
        const middle = sorted[Math.floor(sorted.length / 2)]!;
        return middle > 0 && lift.barKg > 0 && Math.abs(Math.log(lift.barKg / middle)) <= MOST_OFF;
      });
    })
    .sort((a, b) => a.doneOn.localeCompare(b.doneOn));
}
