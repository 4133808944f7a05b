import { createContext, type ReactNode, use, useMemo, useState } from 'react';
import type { LengthUnit, MassUnit } from '#contract/words/viewUnits.ts';

/** The units of this view, and the way to change them here alone. */
export interface Units {
  mass: MassUnit;
  length: LengthUnit;
  setMass: (unit: MassUnit) => void;
  setLength: (unit: LengthUnit) => void;
}

export const massWords = [
  { value: 'kg', word: 'kg' },
  { value: 'lb', word: 'lb' },
] as const;
export const lengthWords = [
  { value: 'cm', word: 'cm' },
  { value: 'in', word: 'in' },
] as const;

const UnitsContext = createContext<Units | null>(null);

/** Gives a view its units: the club's, until somebody switches this view. */
export function ViewUnits(props: { clubMass: MassUnit; clubLength: LengthUnit; children: ReactNode }) {
  const [ownMass, setMass] = useState<MassUnit | null>(null);
  const [ownLength, setLength] = useState<LengthUnit | null>(null);
  const mass = ownMass ?? props.clubMass;
  const length = ownLength ?? props.clubLength;
  const units = useMemo(() => ({ mass, length, setMass, setLength }), [mass, length]);
  return <UnitsContext value={units}>{props.children}</UnitsContext>;
}

/** The units that this view speaks. */
export function useUnits(): Units {
  const units = use(UnitsContext);
  if (units === null) throw new Error('useUnits needs a ViewUnits above it.');
  return units;
}
