import type { Variant } from '#contract/evidence/evidenceReport.ts';
import type { SetupFamily } from '#contract/records/lift.ts';
import { liftWord } from './liftWords.ts';

const starts: Record<SetupFamily['way'], string> = {
  free: '',
  paused: 'paused ',
  box: 'box ',
  pins: 'pin ',
  boards: 'board ',
  blocks: 'block ',
  deficit: 'deficit ',
};

/** What hangs on the bar, in the order of a choice. */
export const hungWords = [
  { value: 'straight', word: 'straight weight' },
  { value: 'bands', word: 'bands' },
  { value: 'chains', word: 'chains' },
  { value: 'bandsAndChains', word: 'bands and chains' },
  { value: 'lightened', word: 'bands from above' },
] as const satisfies readonly { value: SetupFamily['hung']; word: string }[];

/** "box squat with bands" */
export function variantText({ lift, way, hung }: Variant): string {
  const { word } = hungWords.find(({ value }) => value === hung)!;
  return `${starts[way]}${liftWord(lift)} with ${word}`;
}
