import type { BindingBound } from '#core/day/bindingBounds.ts';
import { counted } from './counted.ts';
import { percent } from './percent.ts';

/** Which bound keeps a lifter from what the aim alone would take. */
export function boundSentence({ bound, limit, wanted }: BindingBound): string {
  const [least, taken] = [limit, wanted].map(percent);
  switch (bound) {
    case 'leastBar':
      return `The aim alone would put ${taken} of the maximum on the bar; ${least} is the least allowed.`;
    case 'leastBands':
      return `The aim alone would call for bands worth ${taken} of the maximum at lockout; ${least} is the least allowed, so there are either more or none.`;
    case 'mostBands':
      return `The aim alone would call for bands worth ${taken} of the maximum at lockout; ${least} is the most allowed.`;
    case 'mostPairs':
      return `The aim alone would call for ${counted(wanted, 'pair')}; ${limit} is the most allowed.`;
  }
}
