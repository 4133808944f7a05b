import type { BodyMass } from '#contract/records/lifters.ts';
import { dateText } from '#contract/words/dateText.ts';
import type { MassUnit } from '#contract/words/viewUnits.ts';
import { written } from '#contract/words/written.ts';
import { fromSi } from '#core/units/units.ts';
import { ValueTime } from '#web/charts/ValueTime.tsx';

/** Body mass by date: every weighing a dot, the newest with its number. */
export function BodyMassLine(props: { masses: readonly BodyMass[]; unit: MassUnit; widthPx: number }) {
  const { unit, widthPx } = props;
  const masses = props.masses.toSorted((a, b) => a.takenOn.localeCompare(b.takenOn));
  const first = masses[0];
  const last = masses.at(-1);
  if (first === undefined || last === undefined) return null;
  const words = ({ massKg }: BodyMass) => `${written(massKg, unit)} ${unit}`;
  return (
    <ValueTime
      label={`Body mass from ${dateText(first.takenOn)}, ${words(first)}, to ${dateText(last.takenOn)}, ${words(last)}.`}
      points={masses.map(({ id, takenOn, massKg }) => ({
        key: id,
        on: takenOn,
        value: fromSi(massKg, unit),
      }))}
      spare={fromSi(1, unit)}
      lastText={words(last)}
      joined
      widthPx={widthPx}
    />
  );
}
