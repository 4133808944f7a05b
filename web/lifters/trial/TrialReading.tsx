import type { PlanCaution } from '#contract/day/explainedBar.ts';
import { referenceWords } from '#contract/paper/referenceWords.ts';
import { sayCaution } from '#contract/paper/sayCaution.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import { foreAftSentence } from '#contract/words/foreAftSentence.ts';
import { massText } from '#contract/words/massText.ts';
import { oneDecimal } from '#contract/words/written.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import type { Trial } from './Trial.ts';
import { TrialNumbers } from './TrialNumbers.tsx';
import { TrialSliders } from './TrialSliders.tsx';
import type { TrialResult } from './trialResult.ts';

/** One trial beside its picture: what one drags, its numbers, what to know. */
export function TrialReading(props: {
  club: ClubRecords;
  trial: Trial;
  /** Or the sentence that says what is missing. */
  result: TrialResult | string;
  toKg: number;
  onChange: (trial: Trial) => void;
}) {
  const { club, trial, result, onChange } = props;
  return (
    <div className="stack trial-reading">
      {typeof result === 'string' ? (
        <>
          <TrialSliders trial={trial} toKg={props.toKg} onChange={onChange} />
          <p className="stop">{result}</p>
        </>
      ) : (
        <>
          <h3 className="trial-whose">{result.scene.title}</h3>
          <TrialSliders trial={trial} toKg={props.toKg} onChange={onChange} />
          <TrialNumbers club={club} result={result} />
          <Percentages result={result} />
          <ForeAftLine result={result} />
          <Cautions club={club} result={result} />
        </>
      )}
    </div>
  );
}

/** What the bands do besides pulling down; nothing where none hangs by geometry. */
function ForeAftLine({ result }: { result: TrialResult }) {
  const units = useUnits();
  const { load, heights, explanation } = result;
  if (load.bands.length === 0) return null;
  const foreAft = { ...explanation.foreAft, pathMeasured: heights.bottomForwardM !== null };
  const force = (newtons: number) => massText(newtons, units.mass, load.gravityMps2);
  return <p className="small">{foreAftSentence(foreAft, force)}</p>;
}

/** Shares of the maximum, each named by what it counts. */
function Percentages({ result }: { result: TrialResult }) {
  const units = useUnits();
  const { reference } = result.strength;
  const mass = (kg: number) => `${oneDecimal(kg, units.mass)} ${units.mass}`;
  const shares = result.explanation.percentages.map(
    ({ basis, share }) => `${basis} ${Math.round(100 * share)}\u00a0%`,
  );
  return (
    <p className="small">
      Of {mass(reference.kg)}, {referenceWords(reference, mass)}: {shares.join(', ')}.
    </p>
  );
}

function Cautions({ club, result }: { club: ClubRecords; result: TrialResult }) {
  const units = useUnits();
  const speak = { ...units, gravityMps2: result.load.gravityMps2 };
  return (
    <ul className="trial-cautions small">
      {result.cautions.map((caution) => {
        const stop = toLookAt.has(caution.code);
        const sentence = sayCaution(caution, club, speak);
        return (
          <li key={sentence} className={stop ? 'stop' : ''}>
            {stop && <strong>Look: </strong>}
            {sentence}
          </li>
        );
      })}
    </ul>
  );
}

/** Cautions that somebody must look at before the bar is lifted. */
const toLookAt = new Set<PlanCaution['code']>([
  'overstretched',
  'anchorOverloaded',
  'anchorNotRated',
  'notMade',
  'lightened',
]);
