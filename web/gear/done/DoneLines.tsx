import type { DoneChange } from '#contract/changes/doneChange.ts';
import { doneSentence } from '#contract/words/doneSentence.ts';
import { momentText } from '#web/parts/momentText.ts';

/** A line for each change: when, what, by whom, and what has become of it. */
export function DoneLines({ changes, timeZone }: { changes: readonly DoneChange[]; timeZone: string }) {
  return (
    <ol className="done-lines" aria-label="Changes, newest first">
      {changes.map((change) => (
        <li key={change.seq} className={change.isUndone ? 'quiet' : ''}>
          <time dateTime={change.madeAt} className="small quiet">
            {momentText(change.madeAt, timeZone)}
          </time>
          <span>
            {change.isUndone && change.back === null ? <s>{doneSentence(change)}</s> : doneSentence(change)}
            {change.isUndone && <span className="small"> Taken back since.</span>}
          </span>
          <span className="small quiet">{change.who?.name ?? 'not known by whom'}</span>
          {isWorthSaying(change) && <span className="small quiet done-why">{change.whyNot}</span>}
        </li>
      ))}
    </ol>
  );
}

/** That it is taken back the line says anyway, and what took another back is not itself offered. */
function isWorthSaying({ whyNot, isUndone, back, records, sets, replaced }: DoneChange): boolean {
  const touched = records.length + sets.length > 0 || replaced;
  return whyNot !== null && !isUndone && back === null && touched;
}
