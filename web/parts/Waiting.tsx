import { useEffect, useState } from 'react';
import { doingSentence, remainingText, type Told } from '#contract/words/doing.ts';

/**
 * What the program works on, how far it is where it tells, for how long by now and how long it usually takes, or how long the rest
 * takes once that can be told; and a way to stop it where there is one.
 */
export function Waiting(props: {
  what: string;
  usually?: string;
  told?: Told | undefined;
  onStop?: () => void;
}) {
  const { what, told } = props;
  const [begun] = useState(() => Date.now());
  const [now, setNow] = useState(begun);
  useEffect(() => {
    const timer = setInterval(() => setNow(Date.now()), 1000);
    return () => clearInterval(timer);
  }, []);
  // What goes before the first word, a thread that begins, says nothing of how long the rest takes.
  const [toldFrom, setToldFrom] = useState<number | null>(null);
  if (toldFrom === null && told && told.total > 0) setToldFrom(now);
  const seconds = Math.round((now - begun) / 1000);
  const remaining = told && toldFrom !== null ? remainingText(told, (now - toldFrom) / 1000) : '';
  const doing = told?.doing ? doingSentence(told.doing) : '';
  return (
    <p className="under-way quiet">
      <span className={doing && 'only-read'}>{what}</span>
      {/* A screen reader is told once what goes on, and asks the bar how far it is. */}
      {told && told.total > 0 && (
        <progress aria-label={what} aria-valuetext={doing} max={told.total} value={told.done} />
      )}
      {doing && <span aria-hidden="true">{doing}</span>}
      <span aria-hidden="true">{remaining || `${seconds} s so far.`}</span>
      {props.usually && !remaining && <span>{props.usually}</span>}
      {props.onStop && (
        <button type="button" className="plain" onClick={props.onStop}>
          Stop
        </button>
      )}
    </p>
  );
}
