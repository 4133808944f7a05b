import type { MeantBar } from '#contract/log/meantBar.ts';
import { oneDecimal } from '#contract/words/written.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';

/** The bars of sets that look slipped: as they were written down, and what was probably meant. */
export function MeantBars({ bars }: { bars: readonly MeantBar[] }) {
  const { mass } = useUnits();
  const [first] = bars;
  const last = bars.at(-1);
  if (first === undefined || last === undefined) return null;
  const span = (kg: (bar: MeantBar) => number) => {
    const [from, to] = [oneDecimal(kg(first), mass), oneDecimal(kg(last), mass)];
    return `${from === to ? from : `${from} to ${to}`} ${mass}`;
  };
  const [wrote, meant] = [span(({ writtenKg }) => writtenKg), span(({ meantKg }) => meantKg)];
  const words = `Written down: ${wrote}. Probably meant: ${meant}.`;
  if (bars.length === 1) return <p>{words}</p>;
  return (
    <div>
      <p>{words}</p>
      <details className="fold small">
        <summary>Bar by bar</summary>
        <table className="table meant-bars" aria-label="Bars as written down and as meant">
          <thead>
            <tr>
              <th scope="col" className="number">
                written down
              </th>
              <th scope="col" className="number">
                probably meant
              </th>
              <th scope="col" className="number">
                sets
              </th>
            </tr>
          </thead>
          <tbody>
            {bars.map(({ writtenKg, meantKg, sets }) => (
              <tr key={writtenKg}>
                <td className="number">
                  {oneDecimal(writtenKg, mass)} {mass}
                </td>
                <td className="number">
                  {oneDecimal(meantKg, mass)} {mass}
                </td>
                <td className="number">{sets}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </details>
    </div>
  );
}
