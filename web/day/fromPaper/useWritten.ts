import { useState } from 'react';
import type { WrittenSet } from './writtenSet.ts';

type AllWritten = Readonly<Record<string, WrittenSet>>;

/**
 * What is typed from the paper of a day and not on record yet, by set. It stays with this window until it is saved: over a
 * reload, and while the coach looks at another page.
 */
export function useWritten(dayId: string) {
  const place = `rackwright.fromPaper.${dayId}`;
  const [written, setWritten] = useState(() => read(place));
  const put = (how: (now: AllWritten) => AllWritten) =>
    setWritten((now) => {
      const next = how(now);
      keep(place, next);
      return next;
    });
  return {
    written,
    put: (key: string, set: WrittenSet) => put((now) => ({ ...now, [key]: set })),
    leave: (keys: readonly string[]) =>
      put((now) => Object.fromEntries(Object.entries(now).filter(([key]) => !keys.includes(key)))),
  };
}

function read(place: string): AllWritten {
  try {
    return JSON.parse(sessionStorage.getItem(place) ?? '{}');
  } catch {
    return {};
  }
}

function keep(place: string, written: AllWritten): void {
  try {
    sessionStorage.setItem(place, JSON.stringify(written));
  } catch {
    // What is typed then lasts as long as the page.
  }
}
