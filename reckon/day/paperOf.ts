import type { DayPlan } from '#contract/day/dayPlan.ts';
import type { SignedPrescription } from '#contract/day/signedPrescription.ts';
import { lineWords } from '#contract/paper/lineWords.ts';
import { numberLine } from '#contract/paper/numberLine.ts';
import type { RackSheet } from '#contract/paper/RackSheetModel.ts';
import { rackSheets } from '#contract/paper/rackSheets.ts';
import { goneSince } from '#contract/paper/sinceThen.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Day } from '#contract/records/day.ts';
import { longDate } from '#contract/words/dayWords.ts';
import type { LengthUnit, MassUnit } from '#contract/words/viewUnits.ts';
import { planBasis } from './planBasis.ts';
import { wordsOf } from './wordsOf.ts';
import { wordsSince } from './wordsSince.ts';

/** A plan under its number, beside the club and the day as they are now. */
interface Asked {
  prescription: SignedPrescription;
  plan: DayPlan;
  records: ClubRecords;
  /** Undefined: the club has it no more. */
  day: Day | undefined;
}

/**
 * The sheets of a plan, the same for screen, paper and terminal and the same for ever: of the club as it is now they say only what
 * happened since, marked as such.
 */
export function paperOf(
  { prescription, plan, records, day }: Asked,
  units: { mass: MassUnit; length: LengthUnit },
): (partsOf?: (key: string) => number) => RackSheet[] {
  const words = wordsOf(plan, records);
  const { timeZone, wallStepKg: _step, discs: _discs, gear: _gear, ...said } = words;
  const about = {
    ...said,
    date: longDate(plan.date),
    madeBy: `${numberLine(prescription, timeZone)}.`,
    changedSince: day !== undefined && plan.basis !== planBasis(records, day),
    since: [...wordsSince(plan, records, day), ...goneSince(plan, records)],
  };
  return (partsOf) => rackSheets(plan, about, lineWords(plan, words, units), partsOf);
}
