import { dateText } from '#contract/words/dateText.ts';
import { signedText } from '#contract/words/signedText.ts';
import { lengthText } from '#web/charts/ChartUnits.ts';
import type { SideState } from '#web/gear/state/pairState.ts';
import { weightText } from '#web/gear/state/pullText.ts';
import { chartUnits } from '#web/parts/chartUnits.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { drift } from './drift.ts';

/** What each measuring found at one length, and how the band has changed in between. */
export function DriftTable(props: { side: SideState; gravityMps2: number; allowedShare: number }) {
  const units = useUnits();
  const { atM, measurings } = drift(props.side);
  if (measurings.length < 2) return null;
  return (
    <section className="stack">
      <h3>Drift of band {props.side.side}</h3>
      <table className="table" aria-label={`Drift of band ${props.side.side}`}>
        <thead>
          <tr>
            <th scope="col">measured on</th>
            <th scope="col" className="number">
              readings
            </th>
            <th scope="col" className="number">
              at {lengthText(chartUnits(units, props.gravityMps2), atM)}, {units.mass}
            </th>
            <th scope="col" className="number">
              change
            </th>
          </tr>
        </thead>
        <tbody>
          {measurings.map(({ takenOn, readings, pullN, change }) => (
            <tr key={takenOn}>
              <td>{dateText(takenOn)}</td>
              <td className="number">{readings}</td>
              <td className="number">{weightText(pullN, units.mass, props.gravityMps2)}</td>
              <td className="number">
                {change !== null && (
                  <span className={Math.abs(change) > props.allowedShare ? 'stop' : ''}>
                    {signedText(change * 100, { decimals: 1, plus: true })} %
                  </span>
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
