import type { ForetoldLift } from '#contract/projection/backtestReport.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { foretell, meetDayBelief } from './foretell.ts';
import type { MeetResult } from './meetResults.ts';
import { rulesOfThumb } from './rulesOfThumb.ts';

type Known = Pick<StrengthEstimate, 'lift' | 'on' | 'bodyMassKg' | 'draws' | 'setCount'>;

/** The forecast of one lift at a past meet beside what came of it. `known` and `estimate` hold nothing of that day or later. */
export function foretoldLift(
  known: { records: ClubRecords; log: readonly LoggedSet[] },
  estimate: Known,
  result: MeetResult,
): ForetoldLift {
  const { lifterId, lift, equipment, on, place, madeKg, missedKg, attempts } = result;
  const day = foretell(estimate, { on, equipment, taperShare: 0 });
  const { bestSoFarKg, rule } = rulesOfThumb(known.records, known.log, { lifterId, lift, equipment, on });
  return {
    lifterId,
    lift,
    equipment,
    on,
    place,
    setCount: estimate.setCount,
    maxKg: meetDayBelief(day),
    bestSoFarKg,
    ruleKg: rule?.barKg ?? null,
    madeKg,
    missedKg,
    placed: {
      low: madeKg === null ? 0 : 1 - day.chanceAt(madeKg),
      high: missedKg === null ? 1 : 1 - day.chanceAt(missedKg),
    },
    attempts: attempts.map((attempt) => ({ ...attempt, chance: day.chanceAt(attempt.barKg) })),
  };
}
