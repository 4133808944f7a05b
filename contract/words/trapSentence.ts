import type { Trap } from '#contract/evidence/evidenceReport.ts';
import { counted } from './counted.ts';

/** The trap's name in the trade's own words, and what it does here. */
export function trapSentence(trap: Trap): { name: string; text: string } {
  switch (trap.code) {
    case 'regressionToTheMean':
      return { name: 'Regression to the mean', text: regression(trap) };
    case 'survivorsOnly':
      return {
        name: 'Survivors only',
        text:
          trap.leftOut === 0
            ? 'Everybody who trained hard has been to two meets or more; still, those who stall tend to stop going.'
            : `${counted(trap.leftOut, 'lifter')} trained hard but never had two meets in a lift and ${trap.leftOut === 1 ? 'is' : 'are'} not counted here${leftTheClub(trap)}. Those who stay are those for whom it worked.`,
      };
    case 'tooFewMeets':
      return {
        name: 'Too few meets',
        text: `${counted(trap.gains, 'gain')} from meet to meet by ${counted(trap.lifters, 'lifter')}${trap.lifters > 0 ? `, ${Number((trap.gains / trap.lifters).toFixed(1))} each` : ''}. A lifter's own number leans on the club's until there are many.`,
      };
    case 'changedEquipment':
      return {
        name: 'Changed equipment',
        text:
          trap.dropped === 0
            ? 'Nobody changed between raw and equipped from one meet to the next. A new suit of the same kind would not show.'
            : `${counted(trap.dropped, 'gain')} from meet to meet ${trap.dropped === 1 ? 'was' : 'were'} left out because the equipment changed in between. A new suit of the same kind would not show.`,
      };
    case 'gearRemeasured':
      return {
        name: 'Gear re-measured',
        text:
          trap.touched === 0
            ? 'No band in these gains was measured again or replaced in between. Bands still lose pull with age, which looks like a gain.'
            : `In ${trap.touched} of ${counted(trap.of, 'gain')} a band was measured again or replaced in between. A band that lost pull looks like a gain.`,
      };
    case 'manyVariants':
      return {
        name: 'Many variants',
        text: `${counted(trap.looked, 'variant is', 'variants are')} looked at together: by chance alone about one in twenty looks good at 95 %. Expect the best one to do worse next time.`,
      };
    case 'notByLot':
      return {
        name: 'Not decided by lot',
        text: 'Nobody drew lots for bands or equipment: the reasons why some lifters got them, and when, also change what they lift at meets.',
      };
    case 'techniqueOfHeight':
      return {
        name: 'Box and lifter',
        text: 'A box changes the stance and the sit, not only the height, and does so differently for each lifter. Boxes of nearly the same height say little.',
      };
  }
}

function regression({
  reliability,
  noiseShare,
  noiseKnown,
  noisePairs,
}: Extract<Trap, { code: 'regressionToTheMean' }>): string {
  const noise = `A single hard lift is off by about ${(100 * noiseShare).toFixed(1)} % from day to day (${
    noiseKnown === 'measured'
      ? `from ${counted(noisePairs, 'lift')} repeated within two weeks`
      : 'assumed until the log shows it'
  })`;
  if (reliability === null)
    return `${noise}: a good day is followed by an ordinary one, and gains look worth less than they are. Where possible, that is corrected for.`;
  const share = `${Math.round(100 * reliability)} % of the spread of gym gains is real`;
  return reliability < 0.5
    ? `${noise}: only ${share}, too little to correct for the rest, so the slope is shown uncorrected and is too flat.`
    : `${noise}: ${share}, and the slope is corrected for the rest. Both are in the table.`;
}

function leftTheClub({ leftOut, ofThemLeft }: Extract<Trap, { code: 'survivorsOnly' }>): string {
  if (ofThemLeft === 0) return '';
  return leftOut === 1 ? ', and has left the club' : `; ${ofThemLeft} of them left the club`;
}
