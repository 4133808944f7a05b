import { createContext, type ReactNode, use, useMemo, useState } from 'react';
import type { LengthUnit, MassUnit } from '#contract/words/viewUnits.ts';
import { keptOnDevice } from './keptOnDevice.ts';

/** The units of this device, and the way to change them here alone. */
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

const keptMass = keptOnDevice<MassUnit>('mass', ['kg', 'lb']);
const keptLength = keptOnDevice<LengthUnit>('length', ['cm', 'in']);

const UnitsContext = createContext<Units | null>(null);

/** Gives every page its units: the club's, until somebody chooses others on this device. */
export function ViewUnits(props: { clubMass: MassUnit; clubLength: LengthUnit; children: ReactNode }) {
  const { clubMass, clubLength } = props;
  const [ownMass, setOwnMass] = useState(keptMass.read);
  const [ownLength, setOwnLength] = useState(keptLength.read);
  const units = useMemo<Units>(() => {
    // Whoever goes back to the club's unit follows the club again.
    const choose =
      <Unit extends string>(
        club: Unit,
        kept: { write(unit: Unit | null): void },
        set: (unit: Unit | null) => void,
      ) =>
      (unit: Unit) => {
        const own = unit === club ? null : unit;
        kept.write(own);
        set(own);
      };
    return {
      mass: ownMass ?? clubMass,
      length: ownLength ?? clubLength,
      setMass: choose(clubMass, keptMass, setOwnMass),
      setLength: choose(clubLength, keptLength, setOwnLength),
    };
  }, [ownMass, ownLength, clubMass, clubLength]);
  return <UnitsContext value={units}>{props.children}</UnitsContext>;
}

/** The units that this device shows. */
export function useUnits(): Units {
  const units = use(UnitsContext);
  if (units === null) throw new Error('useUnits needs a ViewUnits above it.');
  return units;
}
