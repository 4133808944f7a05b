import { dateText } from '#contract/words/dateText.ts';
import { STANDARD_GRAVITY_MPS2 } from '#core/load/localGravity.ts';
import { BandFit } from '#web/charts/BandFit.tsx';
import { lengthText } from '#web/charts/ChartUnits.ts';
import type { PairState, SideState } from '#web/gear/state/pairState.ts';
import type { Gear } from '#web/gear/state/useGear.ts';
import { chartUnits } from '#web/parts/chartUnits.ts';
import { MeasuredWidth } from '#web/parts/MeasuredWidth.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { branchCurves, pointsOf } from './branchPoints.ts';
import { drift } from './drift.ts';
import { fitWords } from './fitWords.ts';
import { longestUse } from './longestUse.ts';

/** The curve of one loop as it grows, with the other loop and the measuring before thin beside it, and what to make of it. */
export function FitPanel(props: { gear: Gear; state: PairState; side: SideState; freshId: string | null }) {
  const { gear, state, side, freshId } = props;
  // A scale shows mass by standard gravity, so that its numbers stand here as they were typed.
  const units = chartUnits(useUnits(), STANDARD_GRAVITY_MPS2);
  const safeM = side.restLengthM * gear.club.safeStretchRatio;
  const use = longestUse(gear.records, gear.places, side);
  const toM = Math.max(
    (side.readToM ?? 0) * 1.1,
    Math.min(use?.lengthM ?? 0, safeM) * 1.04,
    1.7 * side.restLengthM,
  );
  const words = fitWords(side, use, safeM, (lengthM) => lengthText(units, lengthM));
  const { model, known, measuredToM } = side.curves.loading;
  // How far it may be trusted comes first; which curve it is, a coach need not read.
  const bends = model !== 'prior' && model !== 'line';
  return (
    <div className="stack">
      <MeasuredWidth>
        {(widthPx) => (
          <BandFit
            label={`Band ${side.side} of ${state.pair.label}`}
            restLengthM={side.restLengthM}
            readings={side.recent.map((reading) => ({ ...reading, fresh: reading.id === freshId }))}
            curves={branchCurves(side, toM)}
            measuredToM={known === 'measured' ? measuredToM : null}
            safeM={safeM}
            others={othersOf(state, side)}
            units={units}
            widthPx={widthPx}
            heightPx={Math.round(Math.min(400, Math.max(260, widthPx * 0.55)))}
          />
        )}
      </MeasuredWidth>
      <FitLegend />
      <div className="stack tight">
        <p>
          <strong>{bends ? words.trust : words.why}</strong>
        </p>
        {!bends && <p>{words.trust}</p>}
        {words.next && (
          <p>
            <span className="quiet">Next: </span>
            {words.next}
          </p>
        )}
        {bends && <p className="small quiet">{words.why}</p>}
      </div>
    </div>
  );
}

/** The other loop of the pair, and this loop as it was at the measuring before. */
function othersOf(state: PairState, side: SideState) {
  const other = state.sides[side.side === 'a' ? 1 : 0];
  const before = drift(side)
    .measurings.filter(({ takenOn }) => side.readings.every((reading) => reading.takenOn !== takenOn))
    .at(-1);
  return [
    ...(other.curves.loading.known === 'measured'
      ? [{ name: `band ${other.side}`, curve: other.curves.loading }]
      : []),
    ...(before ? [{ name: dateText(before.takenOn), curve: before.curve }] : []),
  ].map(({ name, curve }) => ({ name, points: pointsOf(curve, curve.restLengthM, curve.measuredToM) }));
}

function FitLegend() {
  return (
    <p className="chart-legend small quiet">
      <span>
        <svg width="14" height="14" aria-hidden="true">
          <circle cx="7" cy="7" r="5" fill="var(--ink)" />
        </svg>
        weight going on
      </span>
      <span>
        <svg width="14" height="14" aria-hidden="true">
          <rect
            x="2.5"
            y="2.5"
            width="9"
            height="9"
            fill="var(--paper)"
            stroke="var(--ink)"
            strokeWidth="2"
          />
        </svg>
        coming off
      </span>
      <span>
        <svg width="28" height="14" aria-hidden="true">
          <rect width="28" height="14" fill="var(--rubber)" fillOpacity="0.18" />
          <path d="M0 7H28" stroke="var(--rubber)" strokeWidth="2.5" />
        </svg>
        curve, with the range of 19 readings in 20
      </span>
      <span>
        <svg width="28" height="14" aria-hidden="true">
          <path d="M0 7H28" stroke="var(--rubber)" strokeWidth="2.5" strokeDasharray="7 5" />
        </svg>
        beyond what was read
      </span>
    </p>
  );
}
