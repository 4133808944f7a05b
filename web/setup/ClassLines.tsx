import type { ClassAhead } from '#contract/season/classAhead.ts';
import { classSentences } from '#contract/season/classSentences.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';

/** The classes that a lifter means to be in at meets ahead, each with the last weighing; nothing where none was said. */
export function ClassLines({ ahead }: { ahead: readonly ClassAhead[] }) {
  const { mass } = useUnits();
  if (ahead.length === 0) return null;
  const lines = ahead.map((one) => ({ key: `${one.meetId} ${one.upToKg}`, ...classSentences(one, mass) }));
  const cautions = new Set(lines.flatMap(({ caution }) => caution ?? []));
  return (
    <div className="stack tight">
      <ul className="stack tight" aria-label="Classes at meets">
        {lines.map(({ key, says }) => (
          <li key={key}>{says}</li>
        ))}
      </ul>
      {[...cautions].map((caution) => (
        <p key={caution} className="caution small">
          {caution}
        </p>
      ))}
    </div>
  );
}
