import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { dateText } from '#contract/words/dateText.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { repsWords } from '#web/setup/setWords.ts';

/** Sets that the estimate could not use, each with the reason; nothing where all of them count. */
export function LeftOut(props: {
  leftOut: StrengthEstimate['leftOut'];
  setsById: ReadonlyMap<string, LoggedSet>;
}) {
  const { leftOut, setsById } = props;
  const units = useUnits();
  if (leftOut.length === 0) return null;
  return (
    <details>
      <summary>
        {leftOut.length === 1 ? 'One set could not be used' : `${leftOut.length} sets could not be used`}
      </summary>
      <ul className="stack tight small">
        {leftOut.map(({ id, reason }) => {
          const set = setsById.get(id);
          return (
            <li key={id}>
              {set && `${dateText(set.doneOn)}, ${repsWords(set, units)}: `}
              {reason}
            </li>
          );
        })}
      </ul>
    </details>
  );
}
