import type { Trap } from '#contract/evidence/evidenceReport.ts';

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
            : `${lifters(trap.leftOut)} trained hard but never had two meets in a lift and ${trap.leftOut === 1 ? 'is' : 'are'} not in here${trap.ofThemLeft === 0 ? '' : `; ${trap.ofThemLeft} of them left the club`}. Those who stay are those for whom it worked.`,
      };
    case 'tooFewMeets':
      return {
        name: 'Too few meets',
        text: `${trap.gains} gains from meet to meet of ${lifters(trap.lifters)}${trap.lifters > 0 ? `, ${Number((trap.gains / trap.lifters).toFixed(1))} each` : ''}. One lifter's own number leans on the club's until there are many.`,
      };
    case 'changedEquipment':
      return {
        name: 'Changed equipment',
        text:
          trap.dropped === 0
            ? 'Nobody changed between raw and equipped from one meet to the next. A new suit of the same kind would not show.'
            : `${trap.dropped} ${trap.dropped === 1 ? 'step' : 'steps'} from meet to meet changed the equipment and ${trap.dropped === 1 ? 'was' : 'were'} left out. A new suit of the same kind would not show.`,
      };
    case 'gearRemeasured':
      return {
        name: 'Gear re-measured',
        text:
          trap.touched === 0
            ? 'No band in these gains was measured anew or replaced in between. Bands still lose pull with age, which looks like a gain.'
            : `In ${trap.touched} of ${trap.of} gains a band was measured anew or replaced in between. A band that lost pull looks like a gain.`,
      };
    case 'manyVariants':
      return {
        name: 'Many variants',
        text: `${trap.looked} variants are looked at together: by chance alone about one in twenty looks good at 95 %. Expect the best one to do worse next time.`,
      };
    case 'notByLot':
      return {
        name: 'Not drawn by lot',
        text: 'Nobody drew lots for bands or equipment: who was given them, and when, had reasons that also move the platform.',
      };
    case 'techniqueOfHeight':
      return {
        name: 'Box and lifter',
        text: 'A box changes the stance and the sit, not only the height, and each lifter differently. Heights apart by little say little.',
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
      ? `from ${noisePairs} lifts repeated within two weeks`
      : 'assumed until the log shows it'
  })`;
  if (reliability === null)
    return `${noise}: a good day is followed by an ordinary one, and gains look worth less than they are. Where it can be, that is taken out.`;
  const share = `${Math.round(100 * reliability)} % of the spread of gym gains is real`;
  return reliability < 0.5
    ? `${noise}: only ${share}, too little to take the rest out, so the slope is shown as it lies and is too flat.`
    : `${noise}: ${share}, and the slope is corrected for the rest. Both are in the table.`;
}

function lifters(count: number): string {
  return count === 1 ? '1 lifter' : `${count} lifters`;
}
