import type { GroupAsked } from '#contract/records/method.ts';
import type { LifterSeason, SeasonView } from './SeasonView.ts';

/** A group as its method asks for it in the phase of that day; undefined: it asks for none. */
export function askedOf(
  { method }: Pick<SeasonView, 'method'>,
  { plan }: Pick<LifterSeason, 'plan'>,
  date: string,
  askedId: string,
): GroupAsked | undefined {
  const week = plan.weeks.find(({ days }) => days.some((day) => day.date === date));
  const phase = method.phases.find(({ id }) => id === week?.phaseId);
  return phase?.days.flatMap(({ groups }) => groups).find(({ id }) => id === askedId);
}
