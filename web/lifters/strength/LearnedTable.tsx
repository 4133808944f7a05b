import type { Belief, StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { type LearnedNumber, learnedNumber, learnedText, readBelief } from '#contract/words/learnedNumber.ts';
import { parameterNames } from '#core/strength/parameters.ts';
import { BeliefBar } from '#web/charts/BeliefBar.tsx';
import { type Column, DataTable } from '#web/parts/DataTable.tsx';
import { Known } from '#web/parts/Known.tsx';

interface Row {
  number: LearnedNumber;
  now: Belief;
  before: Belief;
}

/** Less than this share of a range gone is nothing learned. */
const hardlyNarrower = 0.85;

/** What the log has taught of one lifter in a lift, beside what was believed before any set. */
export function LearnedTable({ estimate }: { estimate: StrengthEstimate }) {
  const rows = parameterNames.flatMap((name): Row[] => {
    const number = learnedNumber(estimate.lift, name);
    const learned = estimate.parameters.find((parameter) => parameter.name === name);
    if (number === null || learned === undefined || !isLearned(learned)) return [];
    return [
      {
        number,
        now: readBelief(learned.now, number.read),
        before: readBelief(learned.before, number.read),
      },
    ];
  });
  if (rows.length === 0)
    return <p className="small quiet">So far the log has taught nothing beyond the maximum itself.</p>;
  const toTrainBy = rows.filter(({ number }) => !number.onlyForModel);
  const others = rows.filter(({ number }) => number.onlyForModel);
  return (
    <>
      {toTrainBy.length > 0 && <Learned label="What the log has taught" rows={toTrainBy} />}
      {others.length > 0 && (
        <details className="csv-door screen-only">
          <summary>More numbers ({others.length}) that only correct the calculation</summary>
          <Learned label="What only corrects the calculation" rows={others} />
        </details>
      )}
      <p className="small quiet">
        Ranges hold the truth 80 % of the time. The frame is the range before any set, the bar in it the range
        now.
      </p>
    </>
  );
}

function Learned({ label, rows }: { label: string; rows: readonly Row[] }) {
  return (
    <DataTable
      {...{ label, columns, rows }}
      keyOf={({ number }) => number.title}
      nameOf={({ number }) => number.title}
    />
  );
}

/** What no set has told is what is usual, and is left out. */
function isLearned({ now, before }: Pick<Row, 'now' | 'before'>): boolean {
  const narrower = now.high80 - now.low80 < hardlyNarrower * (before.high80 - before.low80);
  const moved = now.median < before.low80 || now.median > before.high80;
  return narrower || moved;
}

const columns: Column<Row>[] = [
  {
    key: 'what',
    head: 'Learned',
    cell: ({ number }) => (
      <>
        {number.title}
        <span className="small quiet strength-meaning">{number.meaning}</span>
      </>
    ),
  },
  {
    key: 'now',
    head: 'Now',
    numeric: true,
    cell: ({ number, now }) => (
      <Known
        value={learnedText(number, now.median)}
        unit={number.unit}
        known="estimated"
        interval={rangeText(number, now)}
      />
    ),
  },
  {
    key: 'before',
    head: 'Before any set',
    numeric: true,
    wideOnly: true,
    cell: ({ number, before }) => `${rangeText(number, before)} ${number.unit}`,
  },
  {
    key: 'bar',
    head: <span className="only-read">How far it narrowed</span>,
    wideOnly: true,
    cell: ({ now, before }) => <BeliefBar now={now} before={before} widthPx={120} />,
  },
];

function rangeText(number: LearnedNumber, { low80, high80 }: Belief): string {
  return `${learnedText(number, low80)} to ${learnedText(number, high80)}`;
}
