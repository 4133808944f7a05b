import { useState } from 'react';
import { fieldOf } from '#contract/records/fields.ts';
import { type PhaseOfMethod, phaseAsked } from '#contract/records/method.ts';
import { counted } from '#contract/words/counted.ts';
import { CheckField } from '#web/parts/CheckField.tsx';
import { FigureField } from '#web/parts/FigureField.tsx';
import { LongTextField } from '#web/parts/LongTextField.tsx';
import { textLimits } from '#web/parts/limits.ts';
import { SelectField } from '#web/parts/SelectField.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { limitsOf, useMethodFields } from './methodFields.ts';
import { withWaveWeeks } from './withWaveWeeks.ts';

const waveLengths = Array.from({ length: 12 }, (_, at) => at + 1);

/** A phase itself: what it is called and for, its waves, how long it is, and when it is laid. */
export function PhaseFields(props: {
  /** Path of the phase. */
  at: string;
  phase: PhaseOfMethod;
  onChange: (change: Partial<PhaseOfMethod>) => void;
}) {
  const { at, phase, onChange } = props;
  const field = useMethodFields(at);
  // Not asked of the figures at each letter: two that are the same for a moment would put other fields under the hand.
  const [isFixed, setFixed] = useState(phase.leastWeeks === phase.mostWeeks);
  return (
    <>
      <TextField
        {...field('title', 'Title of the phase')}
        {...textLimits(fieldOf('title', phaseAsked.shape.title))}
        value={phase.title}
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
          { value: 'between', word: 'as time allows' },
        ]}
        onChange={(length) => {
          setFixed(length === 'fixed');
          onChange({ mostWeeks: phase.leastWeeks + (length === 'fixed' ? 0 : phase.waveWeeks) });
        }}
      />
      {isFixed ? (
        <Weeks
          {...field('leastWeeks', 'Always')}
          value={phase.leastWeeks}
          onChange={(weeks) => onChange({ leastWeeks: weeks, mostWeeks: weeks })}
        />
      ) : (
        <>
          <Weeks
            {...field('leastWeeks', 'At least')}
            value={phase.leastWeeks}
            onChange={(leastWeeks) => onChange({ leastWeeks })}
          />
          <Weeks
            {...field('mostWeeks', 'At most')}
            value={phase.mostWeeks}
            onChange={(mostWeeks) => onChange({ mostWeeks })}
          />
        </>
      )}
      <FigureField
        {...field('keepsBefore', 'If weeks run short, kept as number')}
        {...limitsOf(phaseAsked.shape.keepsBefore)}
        value={phase.keepsBefore}
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
        <LongTextField
          {...field('goal', 'What it is for')}
          {...textLimits(fieldOf('goal', phaseAsked.shape.goal))}
          value={phase.goal}
          onChange={(goal) => onChange({ goal })}
        />
      </div>
    </>
  );
}

function Weeks(props: {
  id: string;
  label: string;
  error: string | null;
  value: number;
  onChange: (weeks: number) => void;
}) {
  return <FigureField {...props} {...limitsOf(phaseAsked.shape.leastWeeks)} word="weeks" />;
}
