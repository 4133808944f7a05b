import type { ForetoldLift } from '#contract/projection/backtestReport.ts';
import { dateText } from '#contract/words/dateText.ts';
import { equipmentWord } from '#contract/words/liftWords.ts';
import { written } from '#contract/words/written.ts';
import { fromSi } from '#core/units/units.ts';
import { type Column, DataTable } from '#web/parts/DataTable.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';

/** Every foretold lift in numbers. */
export function ForetoldTable(props: { lifts: readonly ForetoldLift[]; nameOf: (id: string) => string }) {
  const { mass } = useUnits();
  const whole = (kg: number | null) => (kg === null ? 'none' : `${Math.round(fromSi(kg, mass))}`);
  const exact = (kg: number | null) => (kg === null ? 'none' : written(kg, mass, 1));
  const columns: Column<ForetoldLift>[] = [
    { key: 'who', head: 'Lifter', cell: ({ lifterId }) => props.nameOf(lifterId) },
    { key: 'on', head: 'Meet', cell: ({ on }) => dateText(on) },
    { key: 'gear', head: 'In', wideOnly: true, cell: ({ equipment }) => equipmentWord(equipment) },
    { key: 'foretold', head: `Forecast, ${mass}`, numeric: true, cell: ({ maxKg }) => whole(maxKg.median) },
    {
      key: '80',
      head: '80 %',
      numeric: true,
      cell: ({ maxKg }) => `${whole(maxKg.low80)} to ${whole(maxKg.high80)}`,
    },
    { key: 'made', head: 'Made', numeric: true, cell: ({ madeKg }) => exact(madeKg) },
    { key: 'missed', head: 'Missed', numeric: true, wideOnly: true, cell: ({ missedKg }) => exact(missedKg) },
    {
      key: 'best',
      head: 'Best so far',
      numeric: true,
      wideOnly: true,
      cell: (one) => exact(one.bestSoFarKg),
    },
    { key: 'rule', head: 'Gym gain', numeric: true, wideOnly: true, cell: ({ ruleKg }) => exact(ruleKg) },
    { key: 'sets', head: 'Sets before', numeric: true, wideOnly: true, cell: ({ setCount }) => setCount },
  ];
  return (
    <DataTable
      label="Lifts, forecast and made"
      columns={columns}
      rows={props.lifts}
      keyOf={({ lifterId, on, lift }) => `${lifterId} ${lift} ${on}`}
      nameOf={({ lifterId }) => props.nameOf(lifterId)}
    />
  );
}
