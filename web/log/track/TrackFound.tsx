import { percent } from '#contract/words/percent.ts';
import { STANDARD_GRAVITY_MPS2 } from '#core/load/localGravity.ts';
import type { TrackReading } from '#core/track/Track.ts';
import { TrackDrawing } from '#web/charts/TrackDrawing.tsx';
import { chartUnits } from '#web/parts/chartUnits.ts';
import { DataTable } from '#web/parts/DataTable.tsx';
import { MeasuredWidth } from '#web/parts/MeasuredWidth.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';

/** What a track tells of a set: as a logged set has it. */
export interface TrackSpeeds {
  reps: number;
  made: number;
  meanSpeedsMps: number[];
  peakSpeedsMps: number[];
  /** Where the miss stopped on the range of this set; null: none was missed. */
  stoppedAtS: number | null;
}

/** Longer than this without a reading on the way up (s), and the speed is a guess. */
const longGapS = 0.15;

/** The reps found in a track, drawn and listed, to be taken over or left. */
export function TrackFound(props: {
  name: string;
  reading: TrackReading;
  onTake: (speeds: TrackSpeeds) => void;
  onLeave: () => void;
}) {
  const { name, reading, onTake, onLeave } = props;
  const units = useUnits();
  const rows = reading.reps.map((rep, i) => ({ ...rep, number: i + 1 }));
  const missed = rows.filter(({ made }) => !made).length;
  return (
    <div className="stack">
      <MeasuredWidth>
        {(widthPx) => (
          <TrackDrawing
            reading={reading}
            units={chartUnits(units, STANDARD_GRAVITY_MPS2)}
            widthPx={widthPx}
          />
        )}
      </MeasuredWidth>
      {rows.length === 0 ? (
        <p>No rep was found in {name}: the bar never went from the bottom to lockout.</p>
      ) : (
        <DataTable
          label={`Reps found in ${name}`}
          rows={rows}
          keyOf={({ number }) => String(number)}
          nameOf={({ number }) => `rep ${number}`}
          columns={[
            { key: 'rep', head: 'rep', numeric: true, cell: ({ number }) => number },
            {
              key: 'mean',
              head: 'mean m/s',
              numeric: true,
              cell: ({ made, meanSpeedMps }) => (made ? meanSpeedMps.toFixed(2) : 'missed'),
            },
            { key: 'peak', head: 'peak m/s', numeric: true, cell: (rep) => rep.peakSpeedMps.toFixed(2) },
            {
              key: 'time',
              head: 's up',
              numeric: true,
              cell: ({ startS, endS }) => (endS - startS).toFixed(1),
            },
            {
              key: 'note',
              head: '',
              cell: ({ stoppedAtS, gapS }) =>
                [
                  stoppedAtS === null ? '' : `stopped at ${percent(stoppedAtS)} of the way`,
                  gapS > longGapS ? `not seen for ${gapS.toFixed(1)} s` : '',
                ]
                  .filter(Boolean)
                  .join(', '),
            },
          ]}
        />
      )}
      {missed > 1 && (
        <p className="small">A set ends with its first miss: what comes after it is left out.</p>
      )}
      <div className="row">
        {rows.length > 0 && (
          <button type="button" className="strong" onClick={() => onTake(speedsOf(reading))}>
            Take these speeds
          </button>
        )}
        <button type="button" onClick={onLeave}>
          Leave it
        </button>
      </div>
    </div>
  );
}

/** The reps up to the first miss; speeds to a hundredth, as no track knows them better. */
function speedsOf({ reps }: TrackReading): TrackSpeeds {
  const firstMiss = reps.findIndex(({ made }) => !made);
  const made = firstMiss < 0 ? reps : reps.slice(0, firstMiss);
  return {
    reps: made.length + (firstMiss < 0 ? 0 : 1),
    made: made.length,
    meanSpeedsMps: made.map((rep) => hundredths(rep.meanSpeedMps)),
    peakSpeedsMps: made.map((rep) => hundredths(rep.peakSpeedMps)),
    stoppedAtS: firstMiss < 0 ? null : reps[firstMiss]!.stoppedAtS,
  };
}

function hundredths(mps: number): number {
  return Math.round(100 * mps) / 100;
}
