import { useState } from 'react';
import type { PhaseOfMethod } from '#contract/records/method.ts';
import { counted } from '#contract/words/counted.ts';
import { CheckField } from '#web/parts/CheckField.tsx';
import { FigureField } from '#web/parts/FigureField.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { withWaveWeeks } from './withWaveWeeks.ts';

const waveLengths = Array.from({ length: 12 }, (_, at) => at + 1);

/** A phase itself: what it is called and for, its waves, how long it is, and when it is laid. */
export function PhaseFields(props: {
  phase: PhaseOfMethod;
  onChange: (change: Partial<PhaseOfMethod>) => void;
}) {
  const { phase, onChange } = props;
  // Not asked of the figures at each letter: two that are the same for a moment would put other fields under the hand.
  const [isFixed, setFixed] = useState(phase.leastWeeks === phase.mostWeeks);
  return (
    <>
      <TextField
        label="Title of the phase"
        value={phase.title}
        required
        maxLength={60}
        onChange={(title) => onChange({ title })}
      />
      <SelectField
        label="A wave"
        value={String(phase.waveWeeks)}
        options={waveLengths.map((weeks) => ({ value: String(weeks), word: counted(weeks, 'week') }))}
        hint="The phase is whole waves long. In a shorter wave the figures of its last weeks go."
        onChange={(weeks) => onChange(withWaveWeeks(phase, Number(weeks)))}
      />
      <SelectField
        label="Length"
        value={isFixed ? 'fixed' : 'between'}
        options={[
          { value: 'fixed', word: 'always the same' },
          { value: 'between', word: 'as the time to the meet allows' },
        ]}
        onChange={(length) => {
          setFixed(length === 'fixed');
          onChange({ mostWeeks: phase.leastWeeks + (length === 'fixed' ? 0 : phase.waveWeeks) });
        }}
      />
      {isFixed ? (
        <Weeks
          label="Always"
          value={phase.leastWeeks}
          onChange={(weeks) => onChange({ leastWeeks: weeks, mostWeeks: weeks })}
        />
      ) : (
        <>
          <Weeks
            label="At least"
            value={phase.leastWeeks}
            onChange={(leastWeeks) => onChange({ leastWeeks })}
          />
          <Weeks label="At most" value={phase.mostWeeks} onChange={(mostWeeks) => onChange({ mostWeeks })} />
        </>
      )}
      <FigureField
        label="If weeks run short, kept as number"
        value={phase.keepsBefore}
        min={0}
        max={99}
        whole
        hint="The phase with the lowest number keeps its weeks first."
        onChange={(keepsBefore) => onChange({ keepsBefore })}
      />
      <div className="row season-whole">
        <CheckField
          label="Repeated where there is more time"
          checked={phase.isRound}
          onChange={(isRound) => onChange({ isRound })}
        />
        <CheckField
          label="Only right after a meet"
          checked={phase.onlyAfterMeet}
          onChange={(onlyAfterMeet) => onChange({ onlyAfterMeet })}
        />
      </div>
      <div className="season-whole">
        <TextField
          label="What it is for"
          value={phase.goal}
          required
          maxLength={600}
          onChange={(goal) => onChange({ goal })}
        />
      </div>
    </>
  );
}

function Weeks(props: { label: string; value: number; onChange: (weeks: number) => void }) {
  return <FigureField {...props} word="weeks" min={1} max={52} whole />;
}
