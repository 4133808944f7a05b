import { useSyncExternalStore } from 'react';

/** Day or night as the coach set it on this device; `auto` follows the device. */
export type Light = 'auto' | 'day' | 'night';

const key = 'rackwright.light';
const listeners = new Set<() => void>();
let current: Light = 'auto';

/** Puts the kept choice on the page; called once before the first drawing, so that nothing flashes. */
export function applyKeptLight(): void {
  try {
    const kept = localStorage.getItem(key);
    current = kept === 'day' || kept === 'night' ? kept : 'auto';
  } catch {
    // A browser that keeps nothing follows the device.
  }
  paint();
}

/** The choice and the way to change it. */
export function useLight(): [Light, (light: Light) => void] {
  return [useSyncExternalStore(subscribe, () => current), setLight];
}

function setLight(next: Light): void {
  current = next;
  try {
    if (next === 'auto') localStorage.removeItem(key);
    else localStorage.setItem(key, next);
  } catch {
    // The choice then lasts as long as the page.
  }
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
