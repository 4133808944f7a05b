import type { Lifter } from '#contract/records/lifters.ts';
import { CliError } from './CliError.ts';

/** The lifters of a name that `--lifter` gives, whatever its capitals: one at least. */
export function liftersNamed(lifters: readonly Lifter[], name: string): [Lifter, ...Lifter[]] {
  const same = (one: Lifter) => one.name.toLocaleLowerCase() === name.toLocaleLowerCase();
  const [first, ...others] = lifters.filter(same);
  if (first) return [first, ...others];
  const known = lifters.map((one) => one.name).toSorted((a, b) => a.localeCompare(b));
  const allowed = known.length === 0 ? 'it has none yet' : `it has ${known.join(', ')}`;
  throw new CliError(`--lifter is "${name}"; the club has no lifter of that name: ${allowed}.`, 2);
}
