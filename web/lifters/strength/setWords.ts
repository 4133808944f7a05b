import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { dateText } from '#contract/words/dateText.ts';
import { oneDecimal } from '#contract/words/written.ts';
import { fromSi } from '#core/units/units.ts';
import type { Units } from '#web/parts/ViewUnits.tsx';
import { repsWords, seenWords, setupWords } from '#web/setup/setWords.ts';

type Observation = StrengthEstimate['observations'][number];
type TextUnits = Pick<Units, 'mass' | 'length'>;

/** Beyond so many standard deviations a set is hardly believed. */
const hardlyBelieved = 3;

export function isDoubted({ surprise }: Observation): boolean {
  return surprise !== null && Math.abs(surprise) > hardlyBelieved;
}

/** "at least 182 kg", "less than 190 kg", "about 186 kg", of straight weight. */
export function straightWords({ says, straightKg }: Observation, { mass }: TextUnits): string {
  const word = { atLeast: 'at least', lessThan: 'less than', near: 'about' }[says];
  return `${word} ${Math.round(fromSi(straightKg, mass))} ${mass}`;
}

/** How well a set agrees with everything before it. */
export function surpriseWords(observation: Observation): string {
  const { surprise } = observation;
  if (surprise === null) return 'just logged, not yet compared with all sets before it';
  const size = Math.abs(surprise);
  const way = surprise > 0 ? 'stronger' : 'weaker';
  if (isDoubted(observation))
    return `hard to believe: so much ${way} than all sets before it that it counts for little; check that it was written down right`;
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

/** What the sets of the newest day did to the estimate together; empty where none of them tells of this lift. */
export function newestWords(observations: readonly Observation[], units: TextUnits): string {
  const newest = observations.at(-1)?.on;
  const ofDay = observations.filter(({ on }) => on === newest);
  if (newest === undefined) return '';
  const movedKg = ofDay.reduce((sum, one) => sum + one.movedKg, 0);
  const moved = oneDecimal(Math.abs(movedKg), units.mass);
  const who = ofDay.length === 1 ? 'The set' : `The ${ofDay.length} sets`;
  const what =
    Number(moved) === 0
      ? 'left it where it was'
      : `moved it ${movedKg > 0 ? 'up' : 'down'} by ${moved} ${units.mass}`;
  return `${who} of ${dateText(newest)} ${what}.`;
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
