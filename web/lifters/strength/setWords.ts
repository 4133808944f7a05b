import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { KeyedSetup } from '#contract/setupKey.ts';
import type { StrengthEstimate } from '#contract/strengthEstimate.ts';
import { fromSi } from '#core/units/units.ts';
import { equipmentWord, startText } from '#web/parts/liftWords.ts';
import { dateText } from '#web/parts/localToday.ts';
import type { Units } from '#web/parts/ViewUnits.tsx';
import { oneDecimal } from '#web/parts/written.ts';
import { onBarText } from '../onBarText.ts';

type Observation = StrengthEstimate['observations'][number];
type TextUnits = Pick<Units, 'mass' | 'length'>;

/** Beyond so many standard deviations a set is hardly believed. */
const hardlyBelieved = 3;

export function isDoubted({ surprise }: Observation): boolean {
  return Math.abs(surprise) > hardlyBelieved;
}

/** Everything but the bar: "box 36 cm with 13-A and 29-B (doubled, low), knee wraps". */
export function setupWords(club: ClubRecords, keyed: KeyedSetup, units: TextUnits): string {
  const { lift, setup, equipment } = keyed;
  const on = onBarText(setup, club);
  const dressed = equipment === 'raw' ? '' : `, ${equipmentWord(equipment)}`;
  return `${startText(lift, setup.start, units.length)}${on && ` with ${on}`}${dressed}`;
}

/** "140 kg, 3 reps", "140 kg, 2 of 3 reps", "140 kg, missed". */
export function repsWords({ setup, reps, made }: LoggedSet, { mass }: TextUnits): string {
  const bar = `${oneDecimal(setup.barKg, mass)} ${mass}`;
  if (made === 0) return `${bar}, missed`;
  if (made < reps) return `${bar}, ${made} of ${reps} reps`;
  return `${bar}, ${made === 1 ? 'a single' : `${made} reps`}`;
}

/** What else was seen of a set: speed, reps left, where a miss stopped. Empty where nothing was. */
export function seenWords({ meanSpeedsMps, peakSpeedsMps, repsInReserve, stoppedAtS }: LoggedSet): string {
  const seen = [
    ...speedWords('mean speed', meanSpeedsMps),
    ...(meanSpeedsMps.length === 0 ? speedWords('peak speed', peakSpeedsMps) : []),
    ...(repsInReserve === null ? [] : [`${repsInReserve} ${repsInReserve === 1 ? 'rep' : 'reps'} left`]),
    ...(stoppedAtS === null ? [] : [`stopped ${Math.round(100 * stoppedAtS)} % of the way up`]),
  ];
  return seen.join('; ');
}

/** "at least 182 kg", "less than 190 kg", "about 186 kg", of straight weight. */
export function straightWords({ says, straightKg }: Observation, { mass }: TextUnits): string {
  const word = { atLeast: 'at least', lessThan: 'less than', near: 'about' }[says];
  return `${word} ${Math.round(fromSi(straightKg, mass))} ${mass}`;
}

/** How well a set agrees with everything before it. */
export function surpriseWords(observation: Observation): string {
  const { surprise } = observation;
  const size = Math.abs(surprise);
  const way = surprise > 0 ? 'stronger' : 'weaker';
  if (isDoubted(observation))
    return `hardly believed: so much ${way} than all sets before it that it counts for little; look whether it was written down right`;
  if (size > 2) return `much ${way} than expected`;
  if (size > 1) return `somewhat ${way} than expected`;
  return 'about as expected';
}

/** How far the estimate of that day followed. */
export function movedWords({ movedKg }: Observation, { mass }: TextUnits): string {
  const moved = oneDecimal(Math.abs(movedKg), mass);
  if (Number(moved) === 0) return 'it left the estimate where it was';
  return `it moved the estimate ${movedKg > 0 ? 'up' : 'down'} by ${moved} ${mass}`;
}

/** A whole set in one sentence, for reading aloud. */
export function setSentence(
  club: ClubRecords,
  set: LoggedSet,
  observation: Observation,
  units: TextUnits,
): string {
  const seen = seenWords(set);
  return `${dateText(set.doneOn)}: ${repsWords(set, units)}, ${setupWords(club, set, units)}${seen && `; ${seen}`}. Stands for ${straightWords(observation, units)} straight, ${surpriseWords(observation)}.`;
}

function speedWords(word: string, speedsMps: readonly number[]): string[] {
  return speedsMps.length === 0 ? [] : [`${word} ${speedsMps.map((v) => v.toFixed(2)).join(', ')} m/s`];
}
