import type { Aim } from '#contract/records/day.ts';

/**
 * What each aim begins with. Percentages: common practice, no source. Shares of capability: the straight line nearest to
 * what 50 to 60 % on the bar and 25 % in bands give the lifters of the demo (docs/model.md, "day"). Speed: judgement.
 */
export const firstAim: Record<Aim['by'], Aim> = {
  percent: {
    by: 'percent',
    targets: [
      { basis: 'bar', share: 0.5 },
      { basis: 'lockout', share: 0.75 },
    ],
  },
  capability: { by: 'capability', bottomShare: 0.88, lockoutShare: 0.27 },
  speed: { by: 'speed', fromMps: 0.6, toMps: 0.8 },
};
