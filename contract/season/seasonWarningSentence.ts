import { besideMinors } from '#contract/words/besideMinors.ts';
import { capital } from '#contract/words/capital.ts';
import { counted } from '#contract/words/counted.ts';
import { longDate, shortDate } from '#contract/words/dayWords.ts';
import { liftWord } from '#contract/words/liftWords.ts';
import { percent, percentToTenth } from '#contract/words/percent.ts';
import { mostAfterRise } from './mostAfterRise.ts';
import { boxFarOffSentence } from './ownBoxSentence.ts';
import type { SeasonWarning } from './seasonPlan.ts';

/** A warning of a season's plan, and what mends it. */
export function seasonWarningSentence(warning: SeasonWarning): string {
  switch (warning.code) {
    case 'phaseCut': {
      const { phase, weeks, leastWeeks, meet } = warning;
      const left = weeks === 0 ? 'is left out' : `has ${counted(weeks, 'week')} instead of ${leastWeeks}`;
      return `Before ${meet}, ${phase} ${left}: there is no time for it. Begin earlier, choose a later meet, or let this one pass with less.`;
    }
    case 'openWeeks': {
      const begins = warning.weeks === 1 ? 'one week is' : `${warning.weeks} weeks are`;
      return `From ${shortDate(warning.monday)} ${begins} left open: no phase may be so long, or no whole wave fits in. Allow a phase more weeks or shorter waves, or use them as you like.`;
    }
    case 'closedDay':
      return `${shortDate(warning.date)}: no ${lower(warning.title)}, ${warning.why}. Move it by hand if it matters.`;
    case 'volume': {
      const { date, group, reps, mostReps, zoneFrom, zoneTo, zoneShift } = warning;
      const zone =
        zoneTo === null
          ? `at ${percentToTenth(zoneFrom)} or more`
          : `at ${percentToTenth(zoneFrom)} to ${percentToTenth(zoneTo)}`;
      return `${shortDate(date)}, ${group}: ${counted(reps, 'lift')} where the table of Prilepin has at most ${mostReps} ${zone}${movedBy(zoneShift)}. Take ${counted(reps - mostReps, 'lift')} off, or go lighter.`;
    }
    case 'heavyLifts':
      return `Week of ${shortDate(warning.monday)}: ${counted(warning.lifts, 'lift')} at 90 % or more at lockout; the method allows ${warning.most}. Take ${counted(warning.lifts - warning.most, 'heavy lift')} out.`;
    case 'rise': {
      const { monday, lifts, before, most } = warning;
      return `Week of ${shortDate(monday)}: ${lifts} lifts, after at most ${before} in the four weeks before: a rise of more than ${percent(most)}. Do at most ${mostAfterRise(before, most)} this week, or build up over two. Such ratios are a rule of thumb; whether they foretell injuries is disputed (Impellizzeri et al. 2020).`;
    }
    case 'sameBands': {
      const { monday, group, bandShare, weeks, most } = warning;
      return `Week of ${shortDate(monday)}, ${group}: ${percentToTenth(bandShare)} in bands for the ${ordinal(weeks)} week; after ${most} a lifter is used to it. Step the bands.`;
    }
    case 'tooSoon': {
      const { date, group, variant, weeks, restWeeks } = warning;
      const after = weeks === 0 ? 'in the same week' : `after ${counted(weeks, 'week')}`;
      return `${shortDate(date)}, ${group}: ${variant} comes again ${after}, and the method asks for ${counted(restWeeks, 'week')} in between. Choose another start on one of the two days.`;
    }
    case 'strayByHand':
      return `${shortDate(warning.date)}: what you set by hand (${warning.askedId}) no longer applies, since the plan has no such work on that day. Set it on another day, or remove it.`;
    case 'meetLeftOut':
      return `${warning.title} on ${longDate(warning.date)} is not planned for: a meet must be after the first day of the season, within two years, and on a day of its own. Change the meet or the season.`;
    case 'levelUnknown':
      return `How strong this lifter is in the ${liftWord(warning.lift)} is not known, so the bands are those for the least strong. Enter a best and a body mass.`;
    case 'minor': {
      const { age, days, from } = warning;
      return `${age} years old, with heavy singles or bands on ${counted(days, 'day')} from ${shortDate(from)} on: ${besideMinors} Leave groups out by hand, or follow a method without them.`;
    }
    case 'boxFarOff':
      return boxFarOffSentence(warning, 'cm');
    case 'restricted': {
      const { lift, days, from, until } = warning;
      const held = until === null ? 'until further notice' : `until ${shortDate(until)}`;
      return `${capital(counted(days, 'day'))} of ${liftWord(lift)} from ${shortDate(from)} on, while this lifter is restricted ${held}. Each day keeps to that when it is worked out; leave groups out by hand where that is not enough, and do as the physician or physiotherapist says.`;
    }
  }
}

function movedBy(zoneShift: number): string {
  if (zoneShift === 0) return '';
  const points = Number((100 * Math.abs(zoneShift)).toFixed(1));
  return ` (its zones moved ${zoneShift > 0 ? 'up' : 'down'} by ${counted(points, 'point')}, as the method says)`;
}

function lower(title: string): string {
  return title.charAt(0).toLowerCase() + title.slice(1);
}

function ordinal(count: number): string {
  const ends = ['th', 'st', 'nd', 'rd'];
  const tens = count % 100;
  return `${count}${(tens > 10 && tens < 14 ? undefined : ends[count % 10]) ?? 'th'}`;
}
