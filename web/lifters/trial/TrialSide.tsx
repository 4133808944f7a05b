import type { ClubRecords } from '#contract/records/allKinds.ts';
import { HeightPicture } from '#web/charts/HeightPicture.tsx';
import type { SharedReach } from '#web/charts/HeightScene.ts';
import { chartUnits } from '#web/parts/chartUnits.ts';
import { MeasuredWidth } from '#web/parts/MeasuredWidth.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import type { Trial } from './Trial.ts';
import { TrialChoices } from './TrialChoices.tsx';
import { TrialNumbers } from './TrialNumbers.tsx';
import { TrialSliders } from './TrialSliders.tsx';
import { trialFindings } from './trialFindings.ts';
import type { TrialResult } from './trialResult.ts';

/** One trial: its picture, its numbers, what to know, and everything one can turn. */
export function TrialSide(props: {
  club: ClubRecords;
  trial: Trial;
  result: TrialResult | null;
  reach: SharedReach | null;
  toKg: number;
  lifters?: readonly { value: string; word: string }[];
  onChange: (trial: Trial) => void;
}) {
  const { club, trial, result, reach } = props;
  const units = useUnits();
  return (
    <div className="stack trial-side">
      {result === null || reach === null ? (
        <p>
          No bar heights are known for this lift. Write down the stature, or measure bottom and lockout below;
          then this is drawn.
        </p>
      ) : (
        <div className="trial-picture">
          <MeasuredWidth>
            {(widthPx) => (
              <HeightPicture
                scenes={[result.scene]}
                reach={reach}
                units={chartUnits(units, result.load.gravityMps2)}
                widthPx={widthPx}
                heightPx={widthPx < 420 ? 280 : 400}
              />
            )}
          </MeasuredWidth>
        </div>
      )}
      <div className="stack">
        <TrialSliders trial={trial} toKg={props.toKg} onChange={props.onChange} />
        {result && <TrialNumbers club={club} result={result} />}
        {result && <Findings club={club} trial={trial} result={result} />}
        <TrialChoices
          club={club}
          trial={trial}
          onChange={props.onChange}
          {...(props.lifters ? { lifters: props.lifters } : {})}
        />
      </div>
    </div>
  );
}

function Findings(props: { club: ClubRecords; trial: Trial; result: TrialResult }) {
  const units = useUnits();
  const findings = trialFindings(props.club, props.trial, props.result, units);
  if (findings.length === 0) return null;
  return (
    <ul className="trial-findings small">
      {findings.map(({ stop, sentence }) => (
        <li key={sentence} className={stop ? 'stop' : ''}>
          {stop && <strong>Look: </strong>}
          {sentence}
        </li>
      ))}
    </ul>
  );
}
