import type { BacktestScore } from '#contract/projection/backtestReport.ts';
import { percent, percentFigure } from '#contract/words/percent.ts';
import { type Column, DataTable } from '#web/parts/DataTable.tsx';
import { scoreWords } from './scoreWords.ts';

/** How often the ranges held what was lifted. */
export function CoverageTable({ scores }: { scores: readonly BacktestScore[] }) {
  const columns: Column<BacktestScore>[] = [
    { key: 'of', head: 'Lifts', cell: ({ of }) => scoreWords[of] },
    { key: 'count', head: 'How many', numeric: true, wideOnly: true, cell: ({ lifts }) => lifts },
    ...[0, 1, 2].flatMap((i): Column<BacktestScore>[] => [
      {
        key: `held${i}`,
        head: `${percent(scores[0]?.coverage[i]?.share ?? 0)} range`,
        numeric: true,
        cell: ({ coverage }) => percent(coverage[i]!.held),
      },
      {
        key: `bounds${i}`,
        head: 'least to most',
        numeric: true,
        wideOnly: true,
        cell: ({ coverage }) => `${percentFigure(coverage[i]!.least)} to ${percent(coverage[i]!.most)}`,
      },
    ]),
  ];
  return (
    <section className="stack evidence-answer paper-whole" aria-labelledby="backtest-coverage">
      <h2 id="backtest-coverage">How often did the ranges hold?</h2>
      <p className="small quiet">Share of results that each range held</p>
      <DataTable
        label="Share of results within the ranges"
        columns={columns}
        rows={scores}
        keyOf={({ of }) => of}
        nameOf={({ of }) => scoreWords[of]}
      />
      <p className="small quiet backtest-note">
        The best made attempt only shows that at least so much was possible that day, and a heavier miss that
        less than the missed bar was. In between, the forecast's own odds count. Least is what was certainly
        within the range, most what may have been.
      </p>
    </section>
  );
}
