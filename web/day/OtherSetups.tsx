import type { PlanPlace } from '#contract/day/dayPlan.ts';
import type { OtherSetup } from '#contract/day/otherSetup.ts';
import { raisedAim } from '#contract/day/raisedAim.ts';
import type { SignedPrescription } from '#contract/day/signedPrescription.ts';
import { barText, hungWords } from '#contract/paper/lifterLine.ts';
import { speaksForSentence } from '#contract/words/speaksForSentence.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { againstAim } from './againstAim.ts';
import { goneBy } from './goneBy.ts';
import { hungElsewhere } from './hungElsewhere.ts';

/** Folded away: what else would do for this lifter, what speaks for each, and one tap to take it. */
export function OtherSetups(props: {
  prescription: SignedPrescription | null;
  groupId: string;
  lifterId: string;
  name: string;
  busy: boolean;
  onTake: (other: OtherSetup, words: string) => void;
}) {
  const { prescription, groupId, lifterId, name } = props;
  const units = useUnits();
  const plan = prescription?.document ?? null;
  const group = plan?.groups.find((candidate) => candidate.groupId === groupId);
  const place: PlanPlace | undefined = group?.places.find((seat) => seat.lifterId === lifterId);
  if (!group || !place?.solved || place.solved.others.length === 0) return null;
  const { others } = place.solved;
  const aim = raisedAim(group.aim, place.moreShare);
  const mass = (kg: number) => `${barText(kg, units.mass)} ${units.mass}`;
  const lowered = goneBy(aim, place.solved, mass);
  return (
    <details className="fold other-setups">
      <summary>
        {others.length === 1 ? 'Another proposal' : `${others.length} other proposals`} for {name}
      </summary>
      <p className="small quiet">
        Best first, beside what is on the bar now. The one you take stays, and the rest is worked out around
        it.
      </p>
      {lowered && <p className="small">{lowered}</p>}
      <ul aria-label={`Other proposals for ${name}`}>
        {others.map((other) => {
          const hung = hungWords(other.set);
          const words = `${mass(other.barKg)}, ${hung.length === 0 ? 'no bands' : hung.join('; ')}`;
          const elsewhere = hungElsewhere(group, place, other);
          return (
            <li key={words}>
              <p className="numeral other-bar">
                {barText(other.barKg, units.mass)}
                <span className="unit">{units.mass}</span>
              </p>
              <div className="stack tight">
                <p className="other-hung">
                  {hung.length === 0 ? 'No bands' : hung.map((line) => <span key={line}>{line}</span>)}
                </p>
                <p>{speaksForSentence(other.speaksFor, mass)}</p>
                <p className="small quiet">{againstAim(aim, other)}.</p>
                {elsewhere && <p className="small quiet">{elsewhere}</p>}
              </div>
              <button
                type="button"
                disabled={props.busy}
                aria-label={`Take ${words} for ${name}`}
                onClick={() => props.onTake(other, words)}
              >
                Take it
              </button>
            </li>
          );
        })}
      </ul>
    </details>
  );
}
