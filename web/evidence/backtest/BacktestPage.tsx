import { useState } from 'react';
import { Link } from 'wouter';
import type { BacktestReport } from '#contract/projection/backtestReport.ts';
import type { Lift } from '#contract/records/lift.ts';
import { counted } from '#contract/words/counted.ts';
import { dateText } from '#contract/words/dateText.ts';
import { clockTime } from '#contract/words/dayWords.ts';
import { liftWords } from '#contract/words/liftWords.ts';
import { type BacktestState, useBacktest } from '#web/api/useBacktest.ts';
import { useClub, useClubSettings } from '#web/api/useClub.ts';
import { Choice } from '#web/parts/Choice.tsx';
import { EmptyState } from '#web/parts/EmptyState.tsx';
import { localToday } from '#web/parts/localToday.ts';
import { MeasuredWidth } from '#web/parts/MeasuredWidth.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { backtestSentences } from './backtestSentences.ts';
import { ChanceSection } from './ChanceSection.tsx';
import { CoverageTable } from './CoverageTable.tsx';
import { ErrorTable } from './ErrorTable.tsx';
import { ForetoldLegend } from './ForetoldLegend.tsx';
import { ForetoldRows } from './ForetoldRows.tsx';
import { ForetoldTable } from './ForetoldTable.tsx';
import './backtest.css';

/** Every past meet foretold from the days before it alone, beside what was lifted. */
export function BacktestPage() {
  const { data, error } = useBacktest();
  return (
    <div className="stack loose evidence backtest">
      <div className="row ends">
        <Link href="/">What carried over</Link>
      </div>
      <h1>Forecasts of past meets</h1>
      {error && <p role="alert">{error.message}</p>}
      {!error && data?.upToDate !== true && <Waiting state={data} />}
      {data?.report && (data.report.from === null ? <NothingYet /> : <Report report={data.report} />)}
    </div>
  );
}

function Waiting({ state }: { state: BacktestState | undefined }) {
  const { done, total } = state?.progress ?? { done: 0, total: 0 };
  const { timeZone } = useClubSettings();
  return (
    <div className="stack tight backtest-waiting">
      <label className="row">
        <progress value={done} max={Math.max(1, total)} />
        <span>
          {total === 0 ? 'Reading the log.' : `Foretelling past meets: ${done} of ${total} estimates.`}
        </span>
      </label>
      {total > 0 && (
        <p className="small quiet">
          It takes a minute or two, and the page may be left meanwhile.
          {state?.workedOutAt &&
            ` What is below was worked out on ${whenText(state.workedOutAt, timeZone)}, before the club last changed.`}
        </p>
      )}
    </div>
  );
}

function whenText(moment: string, timeZone: string): string {
  return `${dateText(localToday(timeZone, new Date(moment)))} at ${clockTime(moment, timeZone)}`;
}

function Report({ report }: { report: BacktestReport }) {
  const { lifts, scores, attempts, meets, from, to } = report;
  const { lifter } = useClub();
  const { mass } = useUnits();
  const present = liftWords.filter(({ value }) => lifts.some((one) => one.lift === value));
  const [lift, setLift] = useState<Lift>(present[0]?.value ?? 'squat');
  const nameOf = (id: string) => lifter.find((one) => one.id === id)?.name ?? 'a lifter no longer kept';
  const shown = lifts.filter((one) => one.lift === lift);
  return (
    <>
      <p className="quiet">
        {counted(lifts.length, 'lift')} at {counted(meets, 'meet')}, {dateText(from!)} to {dateText(to!)}.
        Each was forecast from what was known the day before: no set, best, body mass, height or band reading
        of that day or later.
        {report.unforetold > 0 &&
          ` For ${report.unforetold} more nothing was known beforehand, so there is no forecast.`}
      </p>
      <div className="stack tight evidence-said">
        {backtestSentences(report, mass).map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </div>
      <section className="stack evidence-answer" aria-labelledby="backtest-lifts">
        <div className="row ends">
          <h2 id="backtest-lifts">What was forecast, what was lifted</h2>
          <Choice label="Lift" options={present} value={lift} onChange={setLift} />
        </div>
        <ForetoldLegend />
        <MeasuredWidth>
          {(widthPx) => <ForetoldRows lifts={shown} nameOf={nameOf} unit={mass} widthPx={widthPx} />}
        </MeasuredWidth>
        <details className="fold evidence-traps">
          <summary>The same as a table</summary>
          <ForetoldTable lifts={shown} nameOf={nameOf} />
        </details>
      </section>
      <CoverageTable scores={scores} />
      <ErrorTable scores={scores} />
      <ChanceSection attempts={attempts} />
    </>
  );
}

function NothingYet() {
  return (
    <EmptyState
      title="No meet to forecast yet"
      steps={[
        'Log attempts at meets as sets at a meet, misses too, or write results down as bests at a meet.',
        'Log training before them: a meet is forecast from what was known the day before.',
      ]}
      action={
        <Link href="~/lifters" className="button strong">
          To the lifters
        </Link>
      }
    />
  );
}
