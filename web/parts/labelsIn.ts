import type { Lifter } from '#contract/records/lifters.ts';

/** Labels as they are typed, commas between them: each once, whatever its capitals. */
export function labelsIn(text: string): string[] {
  const labels = text
    .split(',')
    .map((label) => label.trim())
    .filter((label) => label !== '');
  return labels.filter((label, i) => labels.findIndex((one) => isSame(one, label)) === i);
}

/** Every label that the club uses, each once, in the order of the alphabet. */
export function labelsOf(lifters: readonly Pick<Lifter, 'labels'>[]): string[] {
  const all = lifters.flatMap(({ labels }) => labels);
  return labelsIn(all.join(',')).sort((a, b) => a.localeCompare(b));
}

/** Whether two labels are one: capitals tell none apart. */
export function isSame(a: string, b: string): boolean {
  return a.toLowerCase() === b.toLowerCase();
}
