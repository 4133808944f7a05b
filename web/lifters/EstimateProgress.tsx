import type { EstimateProgress as Progress } from '#contract/strength/strengthSummary.ts';

/** How far the server is with everybody's strength; a single lift after a logged set is not worth a bar. */
export function EstimateProgress({ progress: { done, total, running } }: { progress: Progress }) {
  if (!running || total < leastWorthTelling) return null;
  return (
    <label className="small quiet lifters-progress">
      <progress value={done} max={total} /> Working out strength from the log: {done} of {total}
    </label>
  );
}

const leastWorthTelling = 4;
