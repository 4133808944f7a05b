import { useEffect, useRef } from 'react';
import type { MethodProblem } from '#contract/season/readMethod.ts';
import { counted } from '#contract/words/counted.ts';

/** On top of a long form: the way back by one step, how many fields are wrong with a way to each, and what is asked before changes are left. */
export function FaultLine(props: {
  problems: readonly MethodProblem[];
  onLead: (problem: MethodProblem) => void;
  /** Null: nothing was changed yet. */
  takeBack: (() => void) | null;
  /** Null: nobody is about to leave. */
  leaving: { onLeave: () => void; onStay: () => void } | null;
}) {
  const { problems, onLead, takeBack, leaving } = props;
  return (
    <div className="season-whole season-faults stack tight">
      <div className="row base">
        <button type="button" aria-disabled={takeBack === null} onClick={() => takeBack?.()}>
          Take back the last change
        </button>
        <output>
          {problems.length > 0 && (
            <strong>{counted(problems.length, 'thing')} to put right before it can be kept.</strong>
          )}
        </output>
      </div>
      {problems.length > 0 && (
        <ul className="stack tight season-problems" aria-label="To put right">
          {problems.slice(0, MOST_SHOWN).map((problem) => (
            <li key={problem.message}>
              <button type="button" className="plain" onClick={() => onLead(problem)}>
                {problem.message}
              </button>
            </li>
          ))}
        </ul>
      )}
      {leaving && <LeavingAsked {...leaving} />}
    </div>
  );
}

function LeavingAsked({ onLeave, onStay }: { onLeave: () => void; onStay: () => void }) {
  const stay = useRef<HTMLButtonElement>(null);
  useEffect(() => stay.current?.focus(), []);
  return (
    <div className="row base" role="alert">
      <strong>What you changed is not kept yet.</strong>
      <button type="button" ref={stay} onClick={onStay}>
        Go on changing
      </button>
      <button type="button" onClick={onLeave}>
        Leave it all
      </button>
    </div>
  );
}

/** The others follow once these are right: the line stays short. */
const MOST_SHOWN = 3;
