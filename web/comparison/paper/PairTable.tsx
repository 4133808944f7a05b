import { shortDate } from '#contract/words/dayWords.ts';
import type { Drawn, DrawnNow } from '../useDrawn.ts';
import type { PairRow } from './pairRows.ts';

/** A pair a row, a way a column. Why somebody was taken out is nobody's business on a wall. */
export function PairTable(props: { ways: readonly string[]; rows: readonly PairRow[]; now: DrawnNow }) {
  const { ways, rows, now } = props;
  return (
    <table className="comparison-paper-pairs">
      <thead>
        <tr>
          <th scope="col">Pair</th>
          {ways.map((way) => (
            <th key={way} scope="col">
              {way}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ key, pair, byWay }) => (
          <tr key={key}>
            <th scope="row">{pair ?? 'alone'}</th>
            {byWay.map((one, at) => (
              <td key={ways[at]}>{one && <NameNow one={one} now={now} />}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function NameNow({ one, now }: { one: Drawn; now: DrawnNow }) {
  const out = now.outOf(one);
  return (
    <>
      {now.nameOf(one)}
      {out && <> (taken out from {shortDate(out.fromOn)})</>}
    </>
  );
}
