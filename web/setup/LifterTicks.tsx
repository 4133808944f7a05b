import { Link } from 'wouter';
import type { Lifter } from '#contract/records/lifters.ts';
import { hasLabel } from '#reckon/evidence/ofLabel.ts';
import { CheckField } from '#web/parts/CheckField.tsx';
import { labelsOf } from '#web/parts/labelsIn.ts';

/** Who takes part, ticked one by one or a label at a time. */
export function LifterTicks(props: {
  lifters: readonly Lifter[];
  ticked: readonly string[];
  onChange: (ticked: string[]) => void;
}) {
  const { lifters, ticked, onChange } = props;
  const sorted = lifters.toSorted((a, b) => a.name.localeCompare(b.name));
  const tick = (ids: readonly string[], isIn: boolean) =>
    onChange(isIn ? [...new Set([...ticked, ...ids])] : ticked.filter((id) => !ids.includes(id)));
  const idsOf = (label: string) => sorted.filter((one) => hasLabel(one, label)).map(({ id }) => id);
  return (
    <fieldset className="whole-line stack tight lifter-ticks">
      <legend className="field-label">Lifters</legend>
      <div className="row">
        {labelsOf(lifters).map((label) => {
          const ids = idsOf(label);
          const all = ids.every((id) => ticked.includes(id));
          return (
            <button key={label} type="button" aria-pressed={all} onClick={() => tick(ids, !all)}>
              {label}
            </button>
          );
        })}
      </div>
      {sorted.length === 0 && (
        <p>
          Nobody lifts here yet. <Link href="~/lifters/new">Add lifters first</Link>, each with a best in
          every lift.
        </p>
      )}
      <div className="lifter-ticks-each">
        {sorted.map(({ id, name }) => (
          <CheckField
            key={id}
            label={name}
            checked={ticked.includes(id)}
            onChange={(isIn) => tick([id], isIn)}
          />
        ))}
      </div>
    </fieldset>
  );
}
