import type { Lift } from '#contract/records/lift.ts';
import type { CapacityReport } from '#contract/strength/capacityReport.ts';
import { capacitySentences } from '#contract/words/capacitySentences.ts';
import { dateText } from '#contract/words/dateText.ts';
import { liftWord } from '#contract/words/liftWords.ts';
import { useCapacity } from '#web/api/useCapacity.ts';
import { CapacityTime } from '#web/charts/CapacityTime.tsx';
import { Choice } from '#web/parts/Choice.tsx';
import { MeasuredWidth } from '#web/parts/MeasuredWidth.tsx';
import { useInAddress } from '#web/parts/useInAddress.ts';
import { Awaited } from '../LiftsAwaited.tsx';
import { CapacityTable } from './CapacityTable.tsx';

const shares = [
  { value: '0.9', word: '90 %' },
  { value: '0.8', word: '80 %' },
] as const;
type Share = (typeof shares)[number]['value'];

/** Work capacity over the season: whether it rose or fell in a sentence, stretch by stretch as a picture and as a table. */
export function SeasonCapacity(props: { name: string; lifterId: string; lift: Lift }) {
  const { name, lifterId, lift } = props;
  const [shareAsked, setShare] = useInAddress('share', '0.8');
  const share = shares.find(({ value }) => value === shareAsked)?.value ?? '0.8';
  const { data, error } = useCapacity({ lifterId, lift });
  const telling = data?.stretches.some(({ told }) => told !== null) ?? false;
  return (
    <div className="stack">
      <div className="row ends">
        <h3>Over the season</h3>
        {telling && (
          <Choice label="Share of the maximum" options={shares} value={share} onChange={setShare} />
        )}
      </div>
      {error !== null && <p className="stop">Work capacity could not be fetched: {error.message}</p>}
      {error === null && data === undefined && <Awaited what="work capacity, twelve weeks at a time" />}
      {data && <p>{capacitySentences(data, dateText).join(' ')}</p>}
      {data && telling && (
        <>
          <MeasuredWidth>
            {(widthPx) => (
              <CapacityTime
                label={`Reps of ${name} at ${percentOf(share)} of the maximum, ${liftWord(lift)}`}
                stretches={data.stretches.map((stretch) => repsAt(stretch, Number(share)))}
                widthPx={widthPx}
                heightPx={220}
              />
            )}
          </MeasuredWidth>
          <p className="small quiet">
            Reps in one rested set at {percentOf(share)} of the maximum; 6.4 is six reps and part of the
            seventh. Each box goes by its own twelve weeks: the truth is in the inner range 80 % of the time,
            in the outer one 95 %. Few sets leave it wide and close to what the whole log says.
          </p>
          <CapacityTable stretches={data.stretches} />
        </>
      )}
    </div>
  );
}

function percentOf(share: Share): string {
  return shares.find(({ value }) => value === share)?.word ?? '';
}

function repsAt({ from, to, told }: CapacityReport['stretches'][number], wanted: number) {
  return { from, to, reps: told?.reps.find(({ share }) => share === wanted)?.belief ?? null };
}
