import type { Aim, Block, Group } from '#contract/records/day.ts';
import { basisWords } from '#contract/words/basisWords.ts';
import { liftWord, startText } from '#contract/words/liftWords.ts';
import { percent, percentToTenth } from '#contract/words/percent.ts';
import type { LengthUnit } from '#contract/words/viewUnits.ts';
import { speedAimWords } from './aimWords.ts';

/** A group's work in one line: "Squat, box 36 cm. 50 % counted on the bar alone, 75 % ... 2 × 2 at 70 %, then 8 × 2." */
export function groupSummary(
  group: Pick<Group, 'lift' | 'start' | 'aim' | 'blocks'>,
  length: LengthUnit,
): string {
  const lift = liftWord(group.lift);
  const start = startText(group.lift, group.start, length);
  return `${lift[0]!.toUpperCase()}${lift.slice(1)}, ${start}. ${aimWords(group.aim)}. Sets × reps: ${blocksWords(group.blocks)}.`;
}

function aimWords(aim: Aim): string {
  if (aim.by === 'percent') {
    const each = aim.targets.map(
      ({ basis, share }) => `${percentToTenth(share)} on ${basisWords.find((b) => b.value === basis)?.word}`,
    );
    return `Aim: ${each.join('; ')}`;
  }
  if (aim.by === 'capability') {
    return aim.bottomShare === aim.lockoutShare
      ? `Aim: ${percentToTenth(aim.bottomShare)} of what the lifter can hold, bottom to lockout`
      : `Aim: ${percentToTenth(aim.bottomShare)} of what the lifter can hold at the bottom, ${percentToTenth(aim.lockoutShare)} at lockout`;
  }
  return `Aim: ${speedAimWords(aim)}`;
}

/** "2 × 2 at 70 %, then 8 × 2". */
export function blocksWords(blocks: readonly Block[]): string {
  const words = blocks.map(({ sets, reps, shareOfAim }) => {
    const work = `${sets} × ${reps}`;
    return shareOfAim === 1 ? work : `${work} at ${percent(shareOfAim)}`;
  });
  return words.join(', then ');
}
