import type { LifterSeason, SeasonView } from './SeasonView.ts';

/** The phases that lie somewhere in these seasons, in the order of the method, each with its pattern. */
export function phasesIn(
  { method }: Pick<SeasonView, 'method'>,
  lifters: readonly Pick<LifterSeason, 'plan'>[],
): { pattern: number; title: string }[] {
  const laid = new Set(lifters.flatMap(({ plan }) => plan.weeks.map(({ phaseId }) => phaseId)));
  return method.phases.flatMap(({ id, title }, pattern) => (laid.has(id) ? [{ pattern, title }] : []));
}
