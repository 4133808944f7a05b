import type { Method } from '#contract/records/method.ts';
import { loadFigures } from '#contract/season/loadFigures.ts';
import type { PlannedWeek } from '#contract/season/seasonPlan.ts';

/** What a week comes to, number by number, each with what it is. */
export function LoadFigures({ load, limits }: { load: PlannedWeek['load']; limits: Method['limits'] }) {
  return (
    <dl className="season-figures">
      {loadFigures(load, limits).map(({ word, figure, says }) => (
        <div key={word}>
          <dt>{word}</dt>
          <dd className="season-figure">{figure}</dd>
          <dd className="small quiet">{says}</dd>
        </div>
      ))}
    </dl>
  );
}
