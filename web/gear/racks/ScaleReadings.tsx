import type { HookupRecord } from '#contract/records/gear.ts';
import { dateText } from '#contract/words/dateText.ts';
import { signedText } from '#contract/words/signedText.ts';
import { STANDARD_GRAVITY_MPS2 } from '#core/load/localGravity.ts';
import { fromSi } from '#core/units/units.ts';
import { pairPull } from '#web/gear/state/pairPull.ts';
import { weightText } from '#web/gear/state/pullText.ts';
import type { Gear } from '#web/gear/state/useGear.ts';
import { RecordTable } from '#web/gear/tables/RecordTable.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { scaleTable } from './hookupTables.ts';

/** What a scale under the bar said of a pair in a hookup, beside what readings and geometry predict. */
export function ScaleReadings({ gear, hookups }: { gear: Gear; hookups: readonly HookupRecord[] }) {
  const units = useUnits();
  const { records } = gear;
  const ids = new Set(hookups.map(({ id }) => id));
  const rows = records.scaleReading
    .filter(({ hookupId }) => ids.has(hookupId))
    .toSorted((x, y) => x.bandPairId.localeCompare(y.bandPairId) || x.barHeightM - y.barHeightM)
    .map((reading) => {
      const state = gear.pairs.find(({ pair }) => pair.id === reading.bandPairId);
      const place = gear.places.find(({ hookup }) => hookup.id === reading.hookupId);
      const pull = state && place ? pairPull(gear, state, place, reading.barHeightM) : null;
      return {
        ...reading,
        predictedN: pull && 'geometryN' in pull ? pull.geometryN : null,
        place,
        pair: state?.pair.label ?? '',
      };
    });
  const predictions = new Map(rows.map((row) => [row.id, row]));
  // As the scale shows it, by standard gravity.
  const weight = (forceN: number) => weightText(forceN, units.mass, STANDARD_GRAVITY_MPS2);
  return (
    <RecordTable
      table={scaleTable(records, hookups, gear.today)}
      rows={rows.map(({ predictedN: _predicted, place: _place, pair: _pair, ...reading }) => reading)}
      columns={[
        { key: 'pair', head: 'pair', cell: ({ id }) => predictions.get(id)?.pair },
        { key: 'hookup', head: 'hookup', cell: ({ id }) => predictions.get(id)?.place?.hookup.label },
        {
          key: 'height',
          head: `bar at ${units.length}`,
          numeric: true,
          cell: ({ barHeightM }) => fromSi(barHeightM, units.length).toFixed(1),
        },
        {
          key: 'read',
          head: `scale ${units.mass}`,
          numeric: true,
          cell: ({ pairForceN }) => <strong>{weight(pairForceN)}</strong>,
        },
        {
          key: 'predicted',
          head: `predicted ${units.mass}`,
          numeric: true,
          cell: ({ id }) => {
            const predictedN = predictions.get(id)?.predictedN ?? null;
            return predictedN === null ? '' : weight(predictedN);
          },
        },
        {
          key: 'off',
          head: 'scale over predicted',
          numeric: true,
          wideOnly: true,
          cell: ({ id, pairForceN }) => {
            const predictedN = predictions.get(id)?.predictedN ?? null;
            if (predictedN === null || predictedN === 0) return '';
            return `${signedText((pairForceN / predictedN - 1) * 100, { decimals: 1, plus: true })} %`;
          },
        },
        { key: 'on', head: 'read on', wideOnly: true, cell: ({ takenOn }) => dateText(takenOn) },
      ]}
    />
  );
}
