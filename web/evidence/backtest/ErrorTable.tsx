import type { BacktestScore } from '#contract/projection/backtestReport.ts';
import { signedText } from '#contract/words/signedText.ts';
import { fromSi } from '#core/units/units.ts';
import { type Column, DataTable } from '#web/parts/DataTable.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { scoreWords } from './scoreWords.ts';

const ways = [
  { way: 'estimate', word: 'Estimate' },
  { way: 'bestSoFar', word: 'Best so far' },
  { way: 'rule', word: 'Gym gain' },
] as const;

/** How far the three ways were off, over the lifts for which all of them say something. */
export function ErrorTable({ scores }: { scores: readonly BacktestScore[] }) {
  const { mass } = useUnits();
  const rows = scores.filter(({ errorsTogether }) => errorsTogether.estimate !== null);
  const signed = (kg: number) => signedText(fromSi(kg, mass), { decimals: 1, plus: true });
  const columns: Column<BacktestScore>[] = [
    { key: 'of', head: 'Lifts', cell: ({ of }) => scoreWords[of] },
    {
      key: 'count',
      head: 'How many',
      numeric: true,
      wideOnly: true,
      cell: ({ errorsTogether }) => errorsTogether.estimate?.count,
    },
    ...ways.flatMap(({ way, word }): Column<BacktestScore>[] => [
      {
        key: `size ${way}`,
        head: `${word}, ${mass}`,
        numeric: true,
        cell: ({ errorsTogether }) => fromSi(errorsTogether[way]?.meanAbsKg ?? 0, mass).toFixed(1),
      },
      {
        key: `share ${way}`,
        head: '%',
        numeric: true,
        wideOnly: true,
        cell: ({ errorsTogether }) => (100 * (errorsTogether[way]?.meanAbsShare ?? 0)).toFixed(1),
      },
      {
        key: `mean ${way}`,
        head: 'on balance',
        numeric: true,
        wideOnly: true,
        cell: ({ errorsTogether }) => signed(errorsTogether[way]?.meanKg ?? 0),
      },
    ]),
  ];
  return (
    <section className="stack evidence-answer paper-whole" aria-labelledby="backtest-errors">
      <h2 id="backtest-errors">How far off, beside two rules of thumb?</h2>
      {rows.length === 0 ? (
        <p>There is no lift yet for which all three say something.</p>
      ) : (
        <DataTable
          label="Average error of three ways to forecast"
          columns={columns}
          rows={rows}
          keyOf={({ of }) => of}
          nameOf={({ of }) => scoreWords[of]}
        />
      )}
      <p className="small quiet backtest-note">
        How far the forecast lay from the best made, on average; on balance, too high and too low cancel out,
        and + means that the forecast was too high. Best so far: the heaviest straight lift yet in the same
        equipment. Gym gain: the last meet, and as many kilograms more as the best at one exact gym setup has
        grown since. Made attempts are chosen with something in hand, so that a right forecast of the maximum
        lies a little above them.
      </p>
    </section>
  );
}
