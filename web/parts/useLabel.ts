import type { Lifter } from '#contract/records/lifters.ts';
import { hasLabel } from '#reckon/evidence/ofLabel.ts';
import { isSame, labelsOf } from './labelsIn.ts';
import { useInAddress } from './useInAddress.ts';

/** Which of the club's labels a page is narrowed to, in its address; empty: to none. */
export interface LabelAsked {
  label: string;
  setLabel: (label: string) => void;
  /** Everybody first, then each label that these lifters have. */
  options: readonly { value: string; word: string }[];
  isShown: (lifter: Pick<Lifter, 'labels'>) => boolean;
}

/** A label that none of these lifters has narrows nothing. */
export function useLabel(lifters: readonly Pick<Lifter, 'labels'>[]): LabelAsked {
  const [asked, setLabel] = useInAddress('label');
  const labels = labelsOf(lifters);
  const label = labels.find((one) => isSame(one, asked)) ?? '';
  return {
    label,
    setLabel,
    options: [{ value: '', word: 'everybody' }, ...labels.map((one) => ({ value: one, word: one }))],
    isShown: (lifter) => label === '' || hasLabel(lifter, label),
  };
}
