import type { Method } from '#contract/records/method.ts';
import { methodDifferences } from '#contract/season/methodDifferences.ts';
import { counted } from '#contract/words/counted.ts';
import type { MethodChoice } from '../methodChoices.ts';

/** What differs between two methods, field by field, in words. */
export function MethodBeside({ method, other }: { method: Method; other: MethodChoice }) {
  const found = methodDifferences(other.method, method);
  if (found.length === 0) return <p>Only the version is different.</p>;
  return (
    <section className="stack">
      <h2>{counted(found.length, 'difference')}</h2>
      <div className="table-scroll">
        <table className="table season-differs" aria-label={`What differs from ${other.word}`}>
          <thead>
            <tr>
              <th scope="col">Where</th>
              <th scope="col">{other.word}</th>
              <th scope="col">This one</th>
            </tr>
          </thead>
          <tbody>
            {found.map(({ where, before, after }) => (
              <tr key={where}>
                <td>{where}</td>
                <td>{before ?? '–'}</td>
                <td>{after ?? '–'}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}
