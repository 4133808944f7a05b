import { useEffect, useState } from 'react';

/** What the program works on, for how long by now, how long that usually takes, and a way to stop it where there is one. */
export function Waiting(props: { what: string; usually?: string; onStop?: () => void }) {
  const [begun] = useState(() => Date.now());
  const [now, setNow] = useState(begun);
  useEffect(() => {
    const timer = setInterval(() => setNow(Date.now()), 1000);
    return () => clearInterval(timer);
  }, []);
  const seconds = Math.round((now - begun) / 1000);
  return (
    <p className="under-way quiet">
      <span>{props.what}</span>
      <span aria-hidden="true">{seconds} s so far.</span>
      {props.usually && <span>{props.usually}</span>}
      {props.onStop && (
        <button type="button" className="plain" onClick={props.onStop}>
          Stop
        </button>
      )}
    </p>
  );
}
