import { createContext, type ReactNode, use, useMemo, useState } from 'react';
import type { HookupPlace } from './pairPull.ts';
import type { Gear } from './useGear.ts';

/** The hookup and the bar height at which all of Gear tells what a pair gives. */
interface Chosen {
  hookupId: string | null;
  heightM: number;
  setHookupId: (id: string) => void;
  setHeightM: (heightM: number) => void;
}

const ChosenContext = createContext<Chosen | null>(null);

/** A bar on a middling lifter's back, until somebody chooses. */
const startHeightM = 1.4;

export function ChosenPlace({ children }: { children: ReactNode }) {
  const [hookupId, setHookupId] = useState<string | null>(null);
  const [heightM, setHeightM] = useState(startHeightM);
  const chosen = useMemo(() => ({ hookupId, heightM, setHookupId, setHeightM }), [hookupId, heightM]);
  return <ChosenContext value={chosen}>{children}</ChosenContext>;
}

/** The chosen hookup (the first where none was chosen, null where the club has none) and height. */
export function useChosen({ places }: Gear): Omit<Chosen, 'hookupId'> & { place: HookupPlace | null } {
  const chosen = use(ChosenContext);
  if (chosen === null) throw new Error('useChosen needs a ChosenPlace above it.');
  const place = places.find(({ hookup }) => hookup.id === chosen.hookupId) ?? places[0] ?? null;
  return { ...chosen, place };
}
