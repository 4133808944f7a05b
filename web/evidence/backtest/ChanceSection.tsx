import type { BacktestReport } from '#contract/projection/backtestReport.ts';
import { counted } from '#contract/words/counted.ts';
import { type Column, DataTable } from '#web/parts/DataTable.tsx';
import { MeasuredWidth } from '#web/parts/MeasuredWidth.tsx';
import { ChanceAgainstMade } from './ChanceAgainstMade.tsx';

type Attempts = BacktestReport['attempts'];
type Bin = Attempts['bins'][number];

/** Whether attempts were made as often as foretold. */
export function ChanceSection({ attempts }: { attempts: Attempts }) {
  const { count, bins, brier, brierCount } = attempts;
  const filled = bins.filter((bin) => bin.count > 0);
  const columns: Column<Bin>[] = [
    { key: 'chance', head: 'Forecast chance', cell: ({ from, to }) => binText({ from, to }) },
    { key: 'count', head: 'Attempts', numeric: true, cell: (bin) => bin.count },
    { key: 'expected', head: 'Made, forecast', numeric: true, cell: ({ expected }) => expected.toFixed(1) },
    { key: 'made', head: 'Made', numeric: true, cell: ({ made }) => made },
  ];
  return (
    <section className="stack evidence-answer paper-whole" aria-labelledby="backtest-chances">
      <h2 id="backtest-chances">Were attempts made as often as forecast?</h2>
      {count === 0 ? (
        <p>No single attempts at meets are logged, and results alone do not say what was missed.</p>
      ) : (
        <>
          <p className="evidence-said">{chanceSentence(bins, count)}</p>
          <div className="evidence-both">
            <MeasuredWidth>
              {(widthPx) => <ChanceAgainstMade bins={filled} widthPx={widthPx} />}
            </MeasuredWidth>
            <DataTable
              label="Attempts by the forecast chance"
              columns={columns}
              rows={filled}
              keyOf={({ from }) => `${from}`}
              nameOf={binText}
            />
          </div>
          {brier.estimate !== null && brier.bestSoFar !== null && brier.rule !== null && (
            <p className="small quiet backtest-note">
              Brier score over {counted(brierCount, 'attempt')}, 0 for a prophet and 0.25 for a coin: estimate{' '}
              {brier.estimate.toFixed(3)}, best so far {brier.bestSoFar.toFixed(3)}, gym gain{' '}
              {brier.rule.toFixed(3)}. The two rules say yes up to their bar and no above it.
            </p>
          )}
        </>
      )}
    </section>
  );
}

function chanceSentence(bins: readonly Bin[], count: number): string {
  const expected = bins.reduce((sum, bin) => sum + bin.expected, 0);
  const made = bins.reduce((sum, bin) => sum + bin.made, 0);
  return `Of ${counted(count, 'attempt')} ${made} ${made === 1 ? 'was' : 'were'} made; the forecast was ${expected.toFixed(0)}.`;
}

function binText({ from, to }: Pick<Bin, 'from' | 'to'>): string {
  return `${Math.round(100 * from)} to ${Math.round(100 * to)} %`;
}
