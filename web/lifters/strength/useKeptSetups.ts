import { useState } from 'react';
import { z } from 'zod';
import { equipment, lift, setup } from '#contract/records/lift.ts';

/** A setup whose maximum the coach wants to see: everything but the bar. */
export const keptSetup = z.strictObject({
  id: z.string().min(1),
  lift,
  equipment,
  setup: setup.omit({ barKg: true }),
});
export type KeptSetup = z.infer<typeof keptSetup>;

/**
 * The setups asked of one lifter, kept in this browser; null: nobody chose yet. What a browser cannot keep lasts as long
 * as the page, and what it kept wrongly is as good as nothing.
 */
export function useKeptSetups(
  lifterId: string,
): [readonly KeptSetup[] | null, (setups: readonly KeptSetup[]) => void] {
  const key = `rackwright.setups.${lifterId}`;
  const [setups, setSetups] = useState(() => readKept(key));
  const keep = (next: readonly KeptSetup[]) => {
    setSetups(next);
    try {
      localStorage.setItem(key, JSON.stringify(next));
    } catch {
      // The choice then lasts as long as the page.
    }
  };
  return [setups, keep];
}

function readKept(key: string): readonly KeptSetup[] | null {
  try {
    const kept = localStorage.getItem(key);
    return kept === null ? null : z.array(keptSetup).parse(JSON.parse(kept));
  } catch {
    return null;
  }
}
