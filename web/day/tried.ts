import { useEffect, useSyncExternalStore } from 'react';
import type { Start } from '#contract/records/lift.ts';
import type { OnBar } from './solvedSetup.ts';

/** What the coach turned to in a lifter's picture or fields and has not kept. */
export interface Tried {
  onBar: OnBar;
  /** Another start than the place has; null: the same. */
  start: Start | null;
}

/** By day, group and lifter, so that it outlives a closed line and a look at another screen. It is gone when the day is worked out again. */
const triedNow = new Map<string, Tried>();
const listeners = new Set<() => void>();

export function triedKey(dayId: string, groupId: string, lifterId: string): string {
  return [dayId, groupId, lifterId].join(' ');
}

export function setTried(key: string, tried: Tried | null): void {
  if (tried === null) triedNow.delete(key);
  else triedNow.set(key, tried);
  for (const told of listeners) told();
}

/** Nothing is tried any more for a day, or for one lifter of a group where the key says so. */
export function forgetTried(keyBegins: string): void {
  for (const key of triedNow.keys())
    if (key === keyBegins || key.startsWith(`${keyBegins} `)) triedNow.delete(key);
  for (const told of listeners) told();
}

export function useTried(key: string): Tried | null {
  return useSyncExternalStore(
    listen,
    () => triedNow.get(key) ?? null,
    () => null,
  );
}

/** Asks before the page is closed or read anew while something that was tried is not kept. */
export function useAskBeforeLeaving(): void {
  useEffect(() => {
    const ask = (event: BeforeUnloadEvent) => {
      if (triedNow.size > 0) event.preventDefault();
    };
    addEventListener('beforeunload', ask);
    return () => removeEventListener('beforeunload', ask);
  }, []);
}

function listen(told: () => void): () => void {
  listeners.add(told);
  return () => listeners.delete(told);
}
