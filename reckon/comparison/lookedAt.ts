import type { Lift, SetupFamily } from '#contract/records/lift.ts';
import type { Outcome } from '#contract/records/outcome.ts';

/** What a comparison looks at: the estimate, meets, or a start with what hangs on the bar, each lifter with the own exact setup. */
export type LookedAt =
  | { outcome: 'strength'; lift: Lift }
  | { outcome: 'platform'; lift: Lift }
  | { outcome: 'setup'; lift: Lift; family: SetupFamily };

/** The same from a wish or a record, which both have a family where a setup is looked at. */
export function lookedAt(of: { outcome: Outcome; lift: Lift; family: SetupFamily | null }): LookedAt {
  const { outcome, lift, family } = of;
  if (outcome !== 'setup') return { outcome, lift };
  if (family === null) throw new TypeError('A comparison of a setup says which.');
  return { outcome, lift, family };
}
