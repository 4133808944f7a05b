import { mostOf, type PhaseOfMethod } from '#contract/records/method.ts';
import { SelectField } from '#web/parts/SelectField.tsx';
import { useMethodFields } from './methodFields.ts';
import { OrderButtons } from './OrderButtons.tsx';
import { withCopyAfter } from './titledList.ts';

/** Which phase of a method is in view, and its place among the others. */
export function PhasePick(props: {
  phases: readonly PhaseOfMethod[];
  /** The place of the one in view. */
  at: number;
  onShow: (id: string) => void;
  /** `shown`: the place of the one to be looked at from then on. */
  onChange: (phases: PhaseOfMethod[], shown: number) => void;
}) {
  const { phases, at, onShow, onChange } = props;
  const field = useMethodFields('');
  return (
    <div className="season-whole season-part stack">
      <h3>Phases</h3>
      <div className="row season-pick">
        <SelectField
          {...field('phases', 'Phase')}
          value={phases[at]!.id}
          options={phases.map(({ id, title }, place) => ({ value: id, word: title || `phase ${place + 1}` }))}
          onChange={onShow}
        />
        <OrderButtons
          of="this phase"
          list={phases}
          at={at}
          withCopy={phases.length < mostOf.phases ? () => withCopyAfter(phases, at, 'phase') : null}
          onChange={onChange}
        />
      </div>
    </div>
  );
}
