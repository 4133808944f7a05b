import { shortDate } from '#contract/words/dayWords.ts';
import { percentToTenth } from '#contract/words/percent.ts';
import type { GearMend, GearWarning } from './gearWarning.ts';

/** Where racks and bands do not do, weeks ahead, and what mends it. */
export function gearWarningSentence(warning: GearWarning): string {
  const when = `${daysOf(warning)}, ${warning.title}`;
  switch (warning.code) {
    case 'gearShort': {
      const { names, of, bandShares, isMost, mends } = warning;
      const bands = bandShares.most === 0 ? '' : ` at ${rangeOf(bandShares)} in bands`;
      const found = isMost ? 'racks and bands do not do' : 'no way was found to share racks and bands';
      return `${when}${bands}: ${found} for all ${of} in one hour; ${names.join(', ')} would be left. ${mendSentence(mends)}`;
    }
    case 'outOfReach': {
      const { name, bandShare, nearestShare } = warning;
      return `${when}: no bands of the club bring ${name} to ${percentToTenth(bandShare)} in bands; the nearest is ${percentToTenth(nearestShare)}. Set it lower for ${name}, hang them otherwise, or measure another pair.`;
    }
    case 'notJudged':
      return `${when}: whether the bands do for ${warning.name} cannot be told; heights or a best are missing, or the start does not suit.`;
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
      return 'another hour for those left';
    case 'hookups':
      return 'the hookups of one rack on the others too';
    case 'onePairMore':
      return `one more pair of ${mend.widthMm} mm`;
  }
}
