import type { EffectRange, EvidenceLine } from '#contract/evidence/evidenceReport.ts';
import type { Effect } from '#core/evidence/contrast.ts';

/** A line of nobody in particular, with nothing said yet. */
export const emptyLine = {
  lifterId: null,
  lift: null,
  variant: null,
  equipped: null,
  effect: null,
  naive: null,
};

/** A line that only counts. */
export function bareLine(rows: readonly { lifterId: string }[]): EvidenceLine {
  return {
    ...emptyLine,
    lifters: new Set(rows.map(({ lifterId }) => lifterId)).size,
    observations: rows.length,
  };
}

/** The club's line and one for each lifter, their effects told in the question's own unit. */
export function toldLines(
  rows: readonly { lifterId: string }[],
  found: {
    lifters: number;
    observations: number;
    effect: Effect;
    byLifter: readonly { lifterId: string; observations: number; effect: Effect }[];
  } | null,
  told: (value: number) => number,
): EvidenceLine[] {
  if (found === null) return [bareLine(rows)];
  const { lifters, observations, effect, byLifter } = found;
  return [
    { ...emptyLine, lifters, observations, effect: rangeOf(effect, told) },
    ...byLifter.map((one) => ({
      ...emptyLine,
      lifterId: one.lifterId,
      lifters: 1,
      observations: one.observations,
      effect: rangeOf(one.effect, told),
    })),
  ];
}

export function rangeOf(effect: Effect, told = (value: number) => value): EffectRange {
  const { value, low80, high80, low95, high95 } = effect;
  return {
    value: told(value),
    low80: told(low80),
    high80: told(high80),
    low95: told(low95),
    high95: told(high95),
  };
}
