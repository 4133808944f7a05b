import type { ComparisonReport } from '#contract/comparison/comparisonReport.ts';
import { dateText } from '#contract/words/dateText.ts';
import { RangeRows } from '#web/charts/RangeRows.tsx';
import { MeasuredWidth } from '#web/parts/MeasuredWidth.tsx';

/** What each way gained and the difference, with their ranges, on one axis; nothing where there is too little to say. */
export function DifferencePicture({ report }: { report: ComparisonReport }) {
  if (report.difference_percent === null) return null;
  return <MeasuredWidth>{(widthPx) => <DifferenceDrawn report={report} widthPx={widthPx} />}</MeasuredWidth>;
}

/** The same at a given width, as paper has it. */
export function DifferenceDrawn({ report, widthPx }: { report: ComparisonReport; widthPx: number }) {
  const { ways, difference_percent: difference, toldTo } = report;
  if (difference === null) return null;
  const [first, second] = ways.map(({ way }) => way);
  const gains = ways.flatMap(({ way, gain_percent: gain }) =>
    gain === null ? [] : [{ key: way, name: `"${way}"`, isClub: false, ...gain }],
  );
  return (
    <figure className="comparison-picture stack tight">
      <RangeRows
        label={`Gain up to ${dateText(toldTo)}, in % of the load`}
        rows={[...gains, { key: 'difference', name: 'Difference', isClub: true, ...difference }]}
        axis={`% of the load, gained up to ${dateText(toldTo)}`}
        widthPx={widthPx}
      />
      <figcaption className="small quiet">
        Circles: what each way gained; square: the difference, "{second}" less "{first}". The thick line holds
        the truth 80 % of the time, the thin one 95 %.
      </figcaption>
    </figure>
  );
}
