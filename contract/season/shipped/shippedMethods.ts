import { type Method, method } from '#contract/records/method.ts';
import { beginner } from './beginner.ts';
import { equippedWithBands } from './equippedWithBands.ts';
import { rawWithBands } from './rawWithBands.ts';
import { withoutBands } from './withoutBands.ts';

/** Ways of training to begin with; a club copies one and makes it its own. */
export const shippedMethods: readonly Method[] = [
  equippedWithBands,
  rawWithBands,
  withoutBands,
  beginner,
].map((given) => method.parse(given));
