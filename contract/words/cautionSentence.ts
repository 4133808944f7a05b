import type { PlanCaution } from '#contract/day/explainedBar.ts';
import { besideMinors } from './besideMinors.ts';
import { boundSentence } from './boundSentence.ts';
import { noBandsSentence } from './noBandsSentence.ts';
import { outsideZoneSentence } from './outsideZoneSentence.ts';
import { percent } from './percent.ts';
import { restrictedSentence } from './restrictedSentence.ts';
import { strengthWideSentence } from './strengthWideSentence.ts';
import { tooFewSentence } from './tooFewSentence.ts';

/** What a sentence needs to know of the club: how its gear is called and how quantities are written. */
export interface CautionNames {
  bandPair(id: string): string;
  anchor(id: string): string;
  chainPair(id: string): string;
  bar(id: string): string;
  collarPair(id: string): string;
  box(id: string): string;
  rack(id: string): string;
  height(metres: number): string;
  mass(kg: number): string;
  force(newtons: number): string;
  date(localDate: string): string;
}

/** A caution as a coach says it: one clear sentence, alike on screen, paper and terminal. */
export function cautionSentence(caution: PlanCaution, names: CautionNames): string {
  switch (caution.code) {
    case 'slackBottom':
      return `All bands are slack below ${names.height(caution.belowM)}: the bottom is straight weight.`;
    case 'extrapolated':
      return `Band pair ${names.bandPair(caution.pairId)} is stretched to ${caution.stretch.toFixed(2)} times its rest length, further than it was ever read on the scale: its pull out there is a guess from the curve.`;
    case 'overstretched':
      return `Band pair ${names.bandPair(caution.pairId)} is stretched to ${caution.stretch.toFixed(2)} times its rest length; the club's limit is ${caution.safeStretch}. Take another pair or hookup.`;
    case 'notMeasured':
      return `Band pair ${names.bandPair(caution.pairId)} was never measured: its pull is guessed from the width and may be far off.`;
    case 'pairMismatch':
      return `The two bands of pair ${names.bandPair(caution.pairId)} differ by ${percent(caution.share)}, more than ${percent(caution.allowedShare)}: the bar will tilt.`;
    case 'oneSideMeasured':
      return `Only one band of pair ${names.bandPair(caution.pairId)} was measured; the other is assumed to be the same.`;
    case 'anchorOverloaded':
      return `The ${lower(names.anchor(caution.anchorId))} would carry ${names.force(caution.pullN)} a side; the rating is ${names.force(caution.ratedLoadN)}: do not hang this.`;
    case 'anchorNotRated':
      return `No load rating is on record for the ${lower(names.anchor(caution.anchorId))}; each side carries ${names.force(caution.pullN)}.`;
    case 'bandsUnderLoad':
      return 'Bands under load: check them for nicks before the first rep, and keep faces and hands out of their line.';
    case 'lightened':
      return `The bands carry ${names.force(caution.atBottomN)} of the bar at the bottom and less higher up: without them the bar is far heavier.`;
    case 'maximal':
      return `Up to ${percent(caution.peakShare)} of what can be held: spotters ready and safeties set.`;
    case 'notMade':
      return caution.stoppedAtS < 0.005
        ? 'By the numbers this bar does not leave the bottom: make it lighter.'
        : `By the numbers this lift stops at ${percent(caution.stoppedAtS)} of the way up: make it lighter.`;
    case 'notAllReps':
      return caution.sets === 1
        ? `By the numbers rep ${caution.rep} is not made: fewer reps or a lighter bar.`
        : `By the numbers rep ${caution.rep} of set ${caution.set} is not made: fewer reps, more rest or a lighter bar.`;
    case 'unlikely':
      return `Going by the whole log, the chance of making every rep of every set is ${percent(caution.chance)}.`;
    case 'madeLighter':
      return `Made lighter, down from ${names.mass(caution.fromKg)}, so that the chance of making every rep of every set is ${percent(caution.chance)}.`;
    case 'outsideZone':
      return outsideZoneSentence(caution);
    case 'volume':
      return `${caution.reps} reps ${zone(caution)} in one session; trained weightlifters did at most ${caution.mostReps}.`;
    case 'repsInSet':
      return `Sets of ${caution.reps} ${zone(caution)}; trained weightlifters did at most ${caution.mostReps} a set.`;
    case 'restricted':
      return `${restrictedSentence(caution, names)}${caution.isBroken ? ' What was set by hand goes beyond that: make it lighter.' : ''}`;
    case 'minor':
      return `${caution.age} years old: ${besideMinors}`;
    case 'heightsEstimated':
      return 'Bar heights are estimated from stature: measure bottom and lockout of the full lift with a tape.';
    case 'heightsAssumed':
      return 'Bar heights are assumed, since the stature is not known either: measure bottom and lockout of the full lift with a tape.';
    case 'strengthAssumed':
      return 'No best is entered for this lift: strength is assumed from body mass alone, so start light.';
    case 'strengthWide':
      return strengthWideSentence(caution);
    case 'strengthOld':
      return `The ${caution.by === 'log' ? 'newest set' : 'best'} behind these numbers dates from ${names.date(caution.doneOn)}, more than a year ago.`;
    case 'bodyMassAssumed':
      return `Body mass is not known; ${names.mass(caution.massKg)} was assumed.`;
    case 'gravityAssumed':
      return 'Standard gravity is assumed, good to within 0.3 %: the settings do not say where the club is.';
    case 'otherEquipment':
      return `The best behind these numbers was made in other equipment (${caution.equipment}).`;
    case 'notLoadable':
      return `The discs at this rack cannot load ${names.mass(caution.wantedKg)}; the nearest is ${names.mass(caution.nearestKg)}.`;
    case 'boundBinds':
      return boundSentence(caution);
    case 'noBands':
      return noBandsSentence(caution.why, names);
    case 'barAssumed':
      return `No bar is set for this rack; ${names.mass(caution.massKg)} was assumed.`;
    case 'notWeighed':
      return notWeighedSentence(caution);
    case 'tooFew':
      return tooFewSentence(caution, names);
    case 'clash':
      return caution.sort === 'bandPair'
        ? `Band pair ${names.bandPair(caution.gearId)} is set by hand at more than one rack at once.`
        : `More pairs of chain ${names.chainPair(caution.gearId)} are set by hand than the club has.`;
  }
}

function zone({ zoneFrom, zoneTo }: { zoneFrom: number; zoneTo: number | null }): string {
  return zoneTo === null
    ? `at ${percent(zoneFrom)} or more`
    : `at ${percent(zoneFrom)} to ${percent(zoneTo)}`;
}

function notWeighedSentence({ bar, discs }: { bar: boolean; discs: boolean }): string {
  if (!discs) return 'The bar counts as marked: nobody weighed it.';
  return `${bar ? 'The bar and some discs' : 'Some discs'} count as marked: nobody weighed them.`;
}

function lower(label: string): string {
  return label.charAt(0).toLowerCase() + label.slice(1);
}
