import type { OtherSetup } from '#contract/day/otherSetup.ts';
import type { Aim } from '#contract/records/day.ts';
import { percent, percentFigure } from '#contract/words/percent.ts';

/** What a setup gives where the aim looks, each figure with what was asked: "50 % on the bar (aim 50), ...". */
export function againstAim(aim: Aim, { percentages, aimedMps, ...other }: OtherSetup): string {
  const [bottom, lockout] = [other.shareAtBottom, other.shareAtLockout].map(percent);
  const strength = `${bottom} of strength at the bottom, ${lockout} at lockout`;
  switch (aim.by) {
    case 'percent': {
      const reached = aim.targets.flatMap(({ basis, share }) => {
        const found = percentages.find((one) => one.basis === basis);
        return found ? [`${percent(found.share)} ${basisWords[basis]} (aim ${percentFigure(share)})`] : [];
      });
      return `${reached.join(', ')}; ${strength}`;
    }
    case 'capability':
      return `${bottom} of strength at the bottom (aim ${percentFigure(aim.bottomShare)}), ${lockout} at lockout (aim ${percentFigure(aim.lockoutShare)})`;
    case 'speed':
      return aimedMps === null
        ? strength
        : `${aim.of === 'set' ? 'Whole set' : 'First rep'} ${aimedMps.toFixed(2)} m/s (aim ${aim.fromMps.toFixed(2)} to ${aim.toMps.toFixed(2)}); ${strength}`;
  }
}

const basisWords = {
  bar: 'on the bar',
  bottom: 'at the bottom',
  lockout: 'at lockout',
  mean: 'mean',
} as const;
