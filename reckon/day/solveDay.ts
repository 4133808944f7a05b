import type { DayPlan } from '#contract/day/dayPlan.ts';
import type { ClubRecords, RecordOf } from '#contract/records/allKinds.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import type { Tell } from '#contract/words/doing.ts';
import { type Clock, noClock } from '#core/day/timeSpent.ts';
import { gravityOf } from '#reckon/gear/gravityOf.ts';
import { planBasis } from './planBasis.ts';
import { solveGroup } from './solveGroup.ts';
import { wordsNow } from './wordsOf.ts';

/**
 * Works a training day out: groups run one after another, each with the whole stock of the club. Lifters with an estimate
 * of the lift are prescribed by it, the others by their best; `awaited` are those
 * whose estimate was not there yet. Each group gets its time by the `clock`; without one it takes what it needs. `tell`
 * hears how far it is. Where `chosenAlone`, nobody is proposed anything but the setup that is chosen.
 */
export function solveDay(
  records: ClubRecords,
  day: RecordOf<'day'>,
  estimates: readonly StrengthEstimate[] = [],
  {
    awaited = [],
    clock = noClock,
    tell = () => {},
    chosenAlone = false,
  }: { awaited?: string[]; clock?: Clock; tell?: Tell; chosenAlone?: boolean } = {},
): DayPlan {
  // To share a group's gear out takes about as long as to rank the sets of its lifters.
  const total = 2 * day.groups.reduce((sum, { places }) => sum + places.length, 0);
  let before = 0;
  const groups = day.groups.map((group) => {
    const count = group.places.length;
    const tellGroup: Tell = (done, _, doing) => tell(before + done, total, doing);
    const solved = solveGroup(records, day, group, estimates, { clock, tell: tellGroup, chosenAlone });
    before += 2 * count;
    tell(before, total);
    return solved;
  });
  return {
    dayId: day.id,
    date: day.date,
    gravityMps2: gravityOf(records),
    basis: planBasis(records, day),
    oneSetPull: day.oneSetPull,
    groups,
    awaited,
    retells: null,
    words: wordsNow(records, day, groups),
  };
}
