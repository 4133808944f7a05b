import { useEffect, useState } from 'react';
import { clockBehind } from '#contract/words/clockBehind.ts';
import { useLastChange } from '../api/useClub.ts';

/** Above every page while the clock stands before the last change: days and sets would get a wrong date. */
export function ClockBehind() {
  const told = clockBehind(useLastChange(), useNow());
  if (told === null) return null;
  return (
    <div className="shell-told-above" role="alert">
      <p className="stop">{told}</p>
    </div>
  );
}

/** The server answers on this computer alone, so that the page's clock is its own; it is looked at now and then. */
function useNow(): Date {
  const [now, setNow] = useState(() => new Date());
  useEffect(() => {
    const looking = setInterval(() => setNow(new Date()), lookEveryMs);
    return () => clearInterval(looking);
  }, []);
  return now;
}

const lookEveryMs = 20_000;
