import { useSyncExternalStore } from 'react';
import { keptOnDevice } from '#web/parts/keptOnDevice.ts';

/** Day or night as the coach set it on this device; `auto` follows the device. */
export type Light = 'auto' | 'day' | 'night';

const kept = keptOnDevice<Light>('light', ['day', 'night']);
const listeners = new Set<() => void>();
let current: Light = 'auto';

/** Puts the kept choice on the page; called once before the first drawing, so that nothing flashes. */
export function applyKeptLight(): void {
  current = kept.read() ?? 'auto';
  paint();
}

/** The choice and the way to change it. */
export function useLight(): [Light, (light: Light) => void] {
  return [useSyncExternalStore(subscribe, () => current), setLight];
}

function setLight(next: Light): void {
  current = next;
  kept.write(next === 'auto' ? null : next);
  paint();
  for (const listener of listeners) listener();
}

function paint(): void {
  if (current === 'auto') delete document.documentElement.dataset['light'];
  else document.documentElement.dataset['light'] = current;
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}
