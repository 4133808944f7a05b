import type { ToldComparison } from '#contract/comparison/toldComparison.ts';
import { type Paper, pxPerMm } from '#contract/paper/paperSize.ts';
import type { Comparison } from '#contract/records/comparison.ts';
import { dateText } from '#contract/words/dateText.ts';
import { drawnSentence } from '#contract/words/drawnSentence.ts';
import { outcomeText } from '#contract/words/outcomeText.ts';
import { PlainHead } from '#web/print/PlainHead.tsx';
import { useFitting } from '#web/print/useFitting.ts';
import { DifferenceDrawn } from '../DifferencePicture.tsx';
import { standingText } from '../standingText.ts';
import type { DrawnNow } from '../useDrawn.ts';
import { PairTable } from './PairTable.tsx';
import type { PairRow } from './pairRows.ts';

const wideMm = { a4: 194, letter: 199 };

/** The first page of a comparison: what it is, what it shows, what could be seen beforehand, who trains by which way, and the cautions. */
export function ComparisonSheet(props: {
  comparison: Comparison;
  told: ToldComparison;
  rows: readonly PairRow[];
  now: DrawnNow;
  today: string;
  paper: Paper;
  clubName: string;
  isInvented: boolean;
  pages: number;
  /** Null: no row is left that could go to a further page. */
  onTooFull: (() => void) | null;
}) {
  const { comparison, told, rows, now, today, paper } = props;
  const { title, lift, family, planDocument: plan } = comparison;
  const page = useFitting<HTMLElement>(0, props.onTooFull ?? undefined);
  return (
    <section ref={page} className={`paper comparison-paper ${paper}`} aria-label={`${title}, page 1`}>
      <PlainHead
        {...props}
        page={1}
        title={title}
        says={`"${plan.ways[0]}" or "${plan.ways[1]}": ${outcomeText(plan.outcome, lift, family)}, from ${dateText(plan.startsOn)} to ${dateText(plan.endsOn)}, ${standingText(plan, today)}.`}
      />
      <div>
        <h2>What it shows</h2>
        {told.sentences.map((sentence, at) => (
          <p key={sentence}>{at === 0 ? <strong>{sentence}</strong> : sentence}</p>
        ))}
        <div className="fine">
          {told.report && <DifferenceDrawn report={told.report} widthPx={wideMm[paper] * pxPerMm} />}
        </div>
      </div>
      <div>
        <h2>What could be seen, as said before anybody started</h2>
        <p>{told.foretold.join(' ')}</p>
      </div>
      <div>
        <h2>Who trains by which</h2>
        <PairTable ways={plan.ways} rows={rows} now={now} />
      </div>
      <div className="comparison-paper-foot">
        <h2>The draw, and cautions</h2>
        <p>{drawnSentence(comparison)} Everybody counts by the way drawn.</p>
        <ul>
          {told.cautions.map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ul>
      </div>
    </section>
  );
}
