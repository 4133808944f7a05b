import type { KeyedSetup } from '#contract/log/setupKey.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { equipmentWord, startText } from '#contract/words/liftWords.ts';
import { oneDecimal } from '#contract/words/written.ts';
import type { Units } from '#web/parts/ViewUnits.tsx';
import { type FormerLabels, onBarText } from './onBarText.ts';

type TextUnits = Pick<Units, 'mass' | 'length'>;

/** Everything but the bar: "box 36 cm with 13-A and 29-B (doubled, low), knee wraps". */
export function setupWords(
  club: ClubRecords,
  keyed: KeyedSetup,
  units: TextUnits,
  former: FormerLabels = {},
): string {
  const { lift, setup, equipment } = keyed;
  const on = onBarText(setup, club, former);
  const dressed = equipment === 'raw' ? '' : `, ${equipmentWord(equipment)}`;
  return `${startText(lift, setup.start, units.length)}${on && ` with ${on}`}${dressed}`;
}

/** "140 kg, 3 reps", "140 kg, 2 of 3 reps", "140 kg, missed". */
export function repsWords(
  { setup, reps, made }: Pick<LoggedSet, 'setup' | 'reps' | 'made'>,
  { mass }: Pick<Units, 'mass'>,
): string {
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
    ...(stoppedAtS === null ? [] : [stoppedWords(stoppedAtS)]),
  ];
  return seen.join('; ');
}

function stoppedWords(s: number): string {
  const percent = Math.round(100 * Math.abs(s));
  if (percent === 0) return 'stopped at the bottom';
  return s < 0
    ? `stopped below the competition range, by ${percent} % of its height`
    : `stopped ${percent} % of the way up`;
}

function speedWords(word: string, speedsMps: readonly number[]): string[] {
  return speedsMps.length === 0 ? [] : [`${word} ${speedsMps.map((v) => v.toFixed(2)).join(', ')} m/s`];
}
