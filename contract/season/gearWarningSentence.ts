import { shortDate } from '#contract/words/dayWords.ts';
import { percentToTenth } from '#contract/words/percent.ts';
import type { GearMend, GearWarning } from './gearWarning.ts';

/** Where racks and bands are not enough, weeks ahead, and what would put it right. */
export function gearWarningSentence(warning: GearWarning): string {
  const when = `${daysOf(warning)}, ${warning.title}`;
  switch (warning.code) {
    case 'gearShort': {
      const { names, of, bandShares, isMost, mends } = warning;
      const bands = bandShares.most === 0 ? '' : ` at ${rangeOf(bandShares)} in bands`;
      const found = isMost
        ? 'racks and bands are not enough for'
        : 'no way was found to share racks and bands among';
      return `${when}${bands}: ${found} all ${of} in one hour; ${names.join(', ')} would go without. ${mendSentence(mends)}`;
    }
    case 'outOfReach': {
      const { name, bandShare, nearestShare } = warning;
      return `${when}: the club's bands cannot give ${name} ${percentToTenth(bandShare)} in bands; the nearest is ${percentToTenth(nearestShare)}. Set the share lower for ${name}, hang bands another way, or measure another pair.`;
    }
    case 'notJudged':
      return `${when}: whether the bands are enough for ${warning.name} cannot be said: heights or a best are missing, or the start does not suit.`;
  }
}

function daysOf({ fromOn, untilOn }: GearWarning): string {
  return fromOn === untilOn ? shortDate(fromOn) : `${shortDate(fromOn)} to ${shortDate(untilOn)}`;
}

function rangeOf({ least, most }: { least: number; most: number }): string {
  return least === most ? percentToTenth(most) : `${percentToTenth(least)} to ${percentToTenth(most)}`;
}

function mendSentence(mends: readonly GearMend[]): string {
  if (mends.length === 0) return 'Let some train on another day, or with another share of bands.';
  const [first, ...others] = mends.map(mendWords);
  return `${first!.charAt(0).toUpperCase()}${first!.slice(1)}${others.map((mend) => `, or ${mend}`).join('')} would do.`;
}

function mendWords(mend: GearMend): string {
  switch (mend.by) {
    case 'anotherHour':
      return 'another hour for those who go without';
    case 'hookups':
      return 'the hookups of one rack on the others too';
    case 'onePairMore':
      return `one more pair of ${mend.widthMm} mm`;
  }
}
