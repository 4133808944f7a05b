import type { Aim, Block, Group } from '#contract/records/day.ts';
import type { Start } from '#contract/records/lift.ts';
import { formatQuantity } from '#core/units/formatQuantity.ts';
import type { LengthUnit } from '#web/parts/ViewUnits.tsx';
import { basisWords } from './basisWords.ts';
import { wayWord } from './liftWords.ts';

/** A group's work in one line: "Squat to a box of 36 cm. 50 % counted on the bar alone, 75 % ... 2 × 2 at 70 %, then 8 × 2." */
export function groupSummary(group: Group, length: LengthUnit): string {
  const start = startWords(group, group.start, length);
  const lift = group.lift[0]!.toUpperCase() + group.lift.slice(1);
  return `${lift} ${start}. ${aimWords(group.aim)}. ${blocksWords(group.blocks)}.`;
}

export function startWords(group: Pick<Group, 'lift'>, start: Start, length: LengthUnit): string {
  const way = wayWord(group.lift, start.way);
  return start.heightM === null ? way : `${way} of ${formatQuantity(start.heightM, length)}`;
}

function aimWords(aim: Aim): string {
  const percent = (share: number) => `${Number((100 * share).toFixed(1))} %`;
  if (aim.by === 'percent') {
    const each = aim.targets.map(
      ({ basis, share }) => `${percent(share)} on ${basisWords.find((b) => b.value === basis)?.word}`,
    );
    return `Aim: ${each.join('; ')}`;
  }
  if (aim.by === 'capability') {
    return aim.bottomShare === aim.lockoutShare
      ? `Aim: ${percent(aim.bottomShare)} of what the lifter can hold, bottom to lockout`
      : `Aim: ${percent(aim.bottomShare)} of what the lifter can hold at the bottom, ${percent(aim.lockoutShare)} at lockout`;
  }
  return `Aim: ${aim.fromMps} to ${aim.toMps} m/s mean speed, first rep only`;
}

function blocksWords(blocks: readonly Block[]): string {
  const words = blocks.map(({ sets, reps, shareOfAim }) => {
    const work = `${sets} × ${reps}`;
    return shareOfAim === 1 ? work : `${work} at ${Math.round(100 * shareOfAim)} %`;
  });
  return `Sets × reps: ${words.join(', then ')}`;
}
