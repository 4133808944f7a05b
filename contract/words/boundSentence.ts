import type { BindingBound } from '#core/day/bindingBounds.ts';
import { percent } from './percent.ts';

/** Which bound keeps a lifter from what the aim alone would take. */
export function boundSentence({ bound, limit, wanted }: BindingBound): string {
  const [least, taken] = [limit, wanted].map(percent);
  switch (bound) {
    case 'leastBar':
      return `The aim alone would put ${taken} of the maximum on the bar; ${least} is the least that is allowed.`;
    case 'leastBands':
      return `The aim alone would hang bands of ${taken} of the maximum at lockout; ${least} is the least that is hung, so there are more or none.`;
    case 'mostBands':
      return `The aim alone would hang bands of ${taken} of the maximum at lockout; ${least} is the most that is allowed.`;
    case 'mostPairs':
      return `The aim alone would hang ${wanted} pairs; ${limit} is the most that is allowed.`;
  }
}
