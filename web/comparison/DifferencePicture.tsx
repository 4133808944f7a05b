import type { ComparisonReport } from '#contract/comparison/comparisonReport.ts';
import { dateText } from '#contract/words/dateText.ts';
import { RangeRows } from '#web/charts/RangeRows.tsx';
import { MeasuredWidth } from '#web/parts/MeasuredWidth.tsx';

/** What each way gained and the difference, with their ranges, on one axis; nothing where there is too little to say. */
export function DifferencePicture({ report }: { report: ComparisonReport }) {
  const { ways, difference_percent: difference, toldTo } = report;
  if (difference === null) return null;
  const [first, second] = ways.map(({ way }) => way);
  const gains = ways.flatMap(({ way, gain_percent: gain }) =>
    gain === null ? [] : [{ key: way, name: `"${way}"`, isClub: false, ...gain }],
  );
  return (
    <figure className="comparison-picture stack tight">
      <MeasuredWidth>
        {(widthPx) => (
          <RangeRows
            label={`Gain up to ${dateText(toldTo)}, in % of the load`}
            rows={[...gains, { key: 'difference', name: 'Difference', isClub: true, ...difference }]}
            axis={`% of the load, gained up to ${dateText(toldTo)}`}
            widthPx={widthPx}
          />
        )}
      </MeasuredWidth>
      <figcaption className="small quiet">
        Circles: what each way gained; square: the difference, "{second}" less "{first}". The thick line holds
        the truth 80 % of the time, the thin one 95 %.
      </figcaption>
    </figure>
  );
}
