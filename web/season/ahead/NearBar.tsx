import type { NearDay, NearWork } from '#contract/season/nearDay.ts';
import { nearLine } from '#contract/season/nearLine.ts';
import { Known } from '#web/parts/Known.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';

/** One lifter's bar of a near day: what hangs on it, what it truly is at both ends, its steps and cautions. */
export function NearBar({ day, work }: { day: NearDay; work: NearWork }) {
  const units = useUnits();
  const { line, words } = nearLine(day, work, units);
  if (line === null) return <p className="small">{work.place.problem}</p>;
  const { bottom, lockout, steps } = line;
  const said = [
    ...(line.hung.length > 0 ? [words.say({ code: 'bandsUnderLoad' })] : []),
    ...[...line.cautions, ...line.assumed].map(({ sentence }) => sentence),
  ];
  return (
    <div className="stack tight season-near">
      <p>
        <Known value={line.bar} unit={units.mass} known={line.barKnown} /> on the bar, {line.aSide}
        {line.perSide.length > 0 && ' a side'}.{' '}
        {line.hung.length > 0 ? `${line.hung.join('; ')}.` : 'No bands.'}
      </p>
      {bottom.load !== lockout.load && (
        <p>
          Truly{' '}
          <Known value={bottom.load} unit={units.mass} known={bottom.known} interval={bottom.interval} /> at
          the bottom,{' '}
          <Known value={lockout.load} unit={units.mass} known={lockout.known} interval={lockout.interval} />{' '}
          at lockout.
        </p>
      )}
      {steps.length > 1 && (
        <p className="small">
          {steps.map(({ sets, reps, bar }) => `${sets} × ${reps} with ${bar}`).join(', ')} {units.mass}.
        </p>
      )}
      <details className="small">
        <summary>Cautions and what is assumed: {said.length}</summary>
        <ul className="stack tight">
          {said.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      </details>
    </div>
  );
}
