import { useState } from 'react';
import type { BandReadingRecord } from '#contract/records/gear.ts';
import { dateText } from '#contract/words/dateText.ts';
import { signedText } from '#contract/words/signedText.ts';
import { written } from '#contract/words/written.ts';
import { bandTension } from '#core/band/bandTension.ts';
import { fromSi } from '#core/units/units.ts';
import { useRecords } from '#web/api/useRecords.ts';
import type { SideState } from '#web/gear/state/pairState.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';

/** From here on a reading stands so far off the curve of all that it was probably typed or read wrong (assumption). */
const farOffShare = 0.12;

/** The readings behind a curve, each with how far off it stands; a wrong one is removed and can be brought back. */
export function ReadingTable({ side }: { side: SideState }) {
  const units = useUnits();
  const readings = useRecords('bandReading');
  const forceUnit = units.mass === 'kg' ? 'kgf' : 'lbf';
  const [all, setAll] = useState(false);
  const earlier = side.everything.length - side.recent.length;
  if (side.everything.length === 0) return null;
  const rows = all ? side.everything : side.recent;
  const shown = rows.toSorted(
    (x, y) =>
      y.takenOn.localeCompare(x.takenOn) || x.direction.localeCompare(y.direction) || x.lengthM - y.lengthM,
  );
  const dates = new Set(rows.map(({ takenOn }) => takenOn));
  const nameOf = (reading: BandReadingRecord) =>
    `the reading of ${written(reading.lengthM, units.length)} ${units.length}`;
  return (
    <div className="table-scroll">
      {dates.size === 1 && <p className="small quiet">Read on {dateText(rows[0]?.takenOn ?? '')}.</p>}
      <table className="table readings" aria-label={`Readings of band ${side.side}`}>
        <thead>
          <tr>
            <th scope="col" className="number">
              length {units.length}
            </th>
            <th scope="col" className="number">
              scale {units.mass}
            </th>
            <th scope="col">weight</th>
            <th scope="col" className="number">
              off the curve
            </th>
            {dates.size > 1 && <th scope="col">read on</th>}
            <th scope="col">
              <span className="only-read">remove</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {shown.map((reading) => {
            const curveN = bandTension(side.curves[reading.direction], reading.lengthM);
            const off = curveN > 0 ? reading.forceN / curveN - 1 : 1;
            const far = side.curves.loading.known === 'measured' && Math.abs(off) > farOffShare;
            return (
              <tr key={reading.id}>
                <td className="number">{fromSi(reading.lengthM, units.length).toFixed(1)}</td>
                <td className="number">{fromSi(reading.forceN, forceUnit).toFixed(1)}</td>
                <td>{reading.direction === 'loading' ? 'going on' : 'coming off'}</td>
                <td className="number">
                  <span className={far ? 'stop' : ''}>{signedPercent(off)}</span>
                </td>
                {dates.size > 1 && <td>{dateText(reading.takenOn)}</td>}
                <td className="number">
                  <button
                    type="button"
                    className="plain"
                    aria-label={`Remove ${nameOf(reading)}`}
                    onClick={() => void readings.remove(reading.id, nameOf(reading))}
                  >
                    Remove
                  </button>
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
      {earlier > 0 && (
        <button type="button" className="plain" aria-expanded={all} onClick={() => setAll(!all)}>
          {all ? 'Hide earlier readings' : `Show earlier readings (${earlier})`}
        </button>
      )}
    </div>
  );
}

function signedPercent(share: number): string {
  return `${signedText(share * 100, { decimals: 1, plus: true })} %`;
}
