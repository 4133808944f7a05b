import type { PhaseOfMethod } from '#contract/records/method.ts';
import { movedPhase, withCopyAfter } from './phaseList.ts';

/** Where the phase that is shown stands among the others: earlier, later, once more, or not at all. */
export function PhaseOrder(props: {
  phases: readonly PhaseOfMethod[];
  phaseId: string;
  /** `shown`: the phase to be shown from then on. */
  onChange: (phases: PhaseOfMethod[], shown: string) => void;
}) {
  const { phases, phaseId, onChange } = props;
  const at = phases.findIndex(({ id }) => id === phaseId);
  const copy = () => {
    const next = withCopyAfter(phases, at);
    onChange(next, next[at + 1]!.id);
  };
  const remove = () => {
    const next = phases.filter(({ id }) => id !== phaseId);
    onChange(next, next[Math.min(at, next.length - 1)]!.id);
  };
  return (
    <div className="row season-whole">
      <button type="button" disabled={at === 0} onClick={() => onChange(movedPhase(phases, at, -1), phaseId)}>
        Earlier
      </button>
      <button
        type="button"
        disabled={at === phases.length - 1}
        onClick={() => onChange(movedPhase(phases, at, 1), phaseId)}
      >
        Later
      </button>
      <button type="button" onClick={copy}>
        Copy this phase
      </button>
      <button type="button" className="plain" disabled={phases.length === 1} onClick={remove}>
        Leave this phase out
      </button>
    </div>
  );
}
