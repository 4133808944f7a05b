import { capital } from '#contract/words/capital.ts';
import { counted } from '#contract/words/counted.ts';
import { shortDate } from '#contract/words/dayWords.ts';
import { liftWord } from '#contract/words/liftWords.ts';
import { percentToTenth } from '#contract/words/percent.ts';
import { grouped } from '#core/numeric/grouped.ts';
import { formatQuantity } from '#core/units/formatQuantity.ts';
import type { GearMend, GearWarning } from './gearWarning.ts';

/**
 * Where racks and bands are not enough, weeks ahead, and what would put it right, in the order of the warnings. What holds for several lifters of one
 * work on the same days is one sentence with their names; a lift without a rack and a box that is not there are told once.
 */
export function gearWarningSentences(warnings: readonly GearWarning[]): string[] {
  const alike = grouped(warnings, likeness);
  return [...alike.values()].map(([first, ...others]) => sentenceOf(first!, others));
}

/** What several warnings that one sentence can tell have in common. */
function likeness(warning: GearWarning): string {
  if (warning.code === 'noRack') return JSON.stringify([warning.code, warning.lift]);
  if (warning.code === 'noBox')
    return JSON.stringify([warning.code, warning.nearestM === null ? null : warning.heightM]);
  if (warning.code === 'gearShort') return JSON.stringify(warning);
  return JSON.stringify({ ...warning, name: '', nearestShare: 0 });
}

function sentenceOf(first: GearWarning, others: readonly GearWarning[]): string {
  const when = `${daysOf(first)}, ${first.title}`;
  switch (first.code) {
    case 'gearShort': {
      const { names, bandShares, mends } = first;
      const bands = bandShares.most === 0 ? '' : ` at ${rangeOf(bandShares)} in bands`;
      return `${when}${bands}: ${shortWords(first)}; ${names.join(', ')} would go without. ${mendSentence(mends)}`;
    }
    case 'outOfReach': {
      const all = [first, ...others.filter(isOutOfReach)];
      const near = [...grouped(all, ({ nearestShare }) => percentToTenth(nearestShare))].map(
        ([share, those]) => `${share} for ${namesOf(those)}`,
      );
      return `${when}: the club's bands cannot give ${percentToTenth(first.bandShare)} in bands; the nearest is ${near.join('; ')}. Set another share, hang bands another way, or measure another pair.`;
    }
    case 'notJudged':
      return `${when}: whether the bands are enough for ${namesOf([first, ...others])} cannot be said: heights or a best are missing, or the start does not suit.`;
    case 'noRack':
      return `No rack of the club takes the ${liftWord(first.lift)}, so none of it can go to the Day screen. Add a rack on the gear screen, or say there which lifts a rack is for.`;
    case 'noBox':
      return noBoxSentence(first, others);
  }
}

function shortWords({ lacking, racks, aRack, of, isMost }: GearShort): string {
  const atRacks = counted(racks, 'rack');
  if (lacking === 'turns')
    return `${atRacks} with time for ${counted(aRack, 'lifter')}${racks === 1 ? '' : ' each'} ${racks === 1 ? 'is' : 'are'} not enough for all ${of}`;
  return isMost
    ? `the bands are not enough for all ${of} in one hour at ${atRacks}`
    : `no way was found to share the bands among all ${of} in one hour at ${atRacks}`;
}

type GearShort = Extract<GearWarning, { code: 'gearShort' }>;

function noBoxSentence(first: NoBox, others: readonly GearWarning[]): string {
  const { fromOn, nearestM } = first;
  const all = [first, ...others.filter((one) => one.code === 'noBox')];
  const works = [...new Set(all.map(({ title }) => title))];
  const heights = [...new Set(all.map(({ heightM }) => heightM))].toSorted((a, b) => a - b);
  const height = heights.map((heightM) => formatQuantity(heightM, 'cm')).join(', ');
  const ask = `${works.join(', ')}, from ${shortDate(fromOn)} on, ${works.length === 1 ? 'asks' : 'ask'} for`;
  const has =
    nearestM === null
      ? `The club has no box; ${ask} ${heights.length === 1 ? 'one' : 'boxes'} of ${height}.`
      : `The club has no box of ${height}, the nearest is ${formatQuantity(nearestM, 'cm')}; ${ask} it.`;
  return `${has} Add it on the gear screen, with mats under it if need be, or set another start, by hand or in the method.`;
}

type NoBox = Extract<GearWarning, { code: 'noBox' }>;

function isOutOfReach(warning: GearWarning): warning is Extract<GearWarning, { code: 'outOfReach' }> {
  return warning.code === 'outOfReach';
}

function namesOf(warnings: readonly GearWarning[]): string {
  return warnings.flatMap((warning) => ('name' in warning ? [warning.name] : [])).join(', ');
}

function daysOf({ fromOn, untilOn }: GearWarning): string {
  return fromOn === untilOn ? shortDate(fromOn) : `${shortDate(fromOn)} to ${shortDate(untilOn)}`;
}

function rangeOf({ least, most }: { least: number; most: number }): string {
  return least === most ? percentToTenth(most) : `${percentToTenth(least)} to ${percentToTenth(most)}`;
}

function mendSentence(mends: readonly GearMend[]): string {
  if (mends.length === 0) return 'Let some train on another day, or with another share of bands.';
  return `${capital(mends.map(mendWords).join(', or '))} would do.`;
}

function mendWords(mend: GearMend): string {
  switch (mend.by) {
    case 'anotherHour':
      return 'another hour for those who go without';
    case 'hookups':
      return 'the hookups of one rack on the others too';
    case 'onePairMore':
      return `one more pair of ${mend.widthMm} mm`;
    case 'oneRackMore':
      return 'one more rack for this lift';
    case 'longer':
      return `${mend.minutes} minutes of training`;
  }
}
