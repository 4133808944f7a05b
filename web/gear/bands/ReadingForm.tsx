import { type FormEvent, useEffect, useRef, useState } from 'react';
import { dateText } from '#contract/words/dateText.ts';
import { forceMeant, type ReadingQuestion, readingQuestions } from '#contract/words/readingQuestions.ts';
import { unitWord, written } from '#contract/words/written.ts';
import { useRecords } from '#web/api/useRecords.ts';
import type { PairState, SideState } from '#web/gear/state/pairState.ts';
import { Asked } from '#web/parts/Asked.tsx';
import { Choice } from '#web/parts/Choice.tsx';
import { NumberField } from '#web/parts/NumberField.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { useRecordFields } from '#web/parts/useRecordFields.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';

/**
 * Readings one after another: length, Enter, scale, Enter, and the next. Which band, which direction and which day stay as
 * they are. What cannot be is refused beside the field, before anything is kept; what is odd is asked about as soon as the field
 * is left, or at the first press, and kept on the next.
 */
export function ReadingForm(props: {
  state: PairState;
  side: SideState;
  today: string;
  onAdded: (id: string) => void;
}) {
  const { side } = props;
  const { pair, sides } = props.state;
  const units = useUnits();
  const forceUnit = units.mass === 'kg' ? 'kgf' : 'lbf';
  const readings = useRecords('bandReading');
  const form = useRef<HTMLFormElement>(null);
  const [direction, setDirection] = useState<'loading' | 'unloading'>('loading');
  const [takenOn, setTakenOn] = useState(props.today);
  const [lengthM, setLengthM] = useState<number | null>(null);
  const [forceN, setForceN] = useState<number | null>(null);
  const [refused, setRefused] = useState<string | null>(null);
  const [odd, setOdd] = useState<ReadingQuestion | null>(null);
  const [kept, setKept] = useState(0);

  const draft = { bandPairId: pair.id, side: side.side, takenOn, lengthM, forceN, direction };
  const fields = useRecordFields('bandReading', draft, null, labels);

  const inputs = () => form.current?.querySelectorAll<HTMLInputElement>('.number-input input') ?? [];
  useEffect(() => {
    if (kept > 0) form.current?.querySelector<HTMLInputElement>('.number-input input')?.focus();
  }, [kept]);

  const askAnew = () => {
    setRefused(null);
    setOdd(null);
  };
  const say = (m: number) => `${written(m, units.length)} ${unitWord(units.length)}`;
  const questionOf = () => {
    if (lengthM === null || forceN === null) return null;
    const had = { a: sides[0].everything, b: sides[1].everything };
    const writes = { lengthText: say, dateText };
    return readingQuestions(pair, side.side, had, [{ ...draft, lengthM, forceN }], writes)[0] ?? null;
  };
  const keep = async (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    setRefused(null);
    const [length, force] = inputs();
    // Enter after the length goes on to the scale.
    if (document.activeElement === length && force?.value === '') return force.focus();
    if (!event.currentTarget.checkValidity()) {
      event.currentTarget.querySelector<HTMLElement>(':invalid:not(fieldset)')?.focus();
      return;
    }
    if (lengthM === null || forceN === null || readings.busy) return;
    const reading = { ...draft, lengthM, forceN };
    const question = questionOf();
    // What is odd is asked about once; a second press says that it is right.
    if (question && odd === null) return setOdd(question);
    try {
      const { id } = await readings.create(reading);
      setLengthM(null);
      setForceN(null);
      setOdd(null);
      setKept(kept + 1);
      props.onAdded(id);
    } catch (error) {
      setRefused(error instanceof Error ? error.message : String(error));
    }
  };

  return (
    <form ref={form} className="reading-form stack" noValidate onSubmit={keep} aria-label="Next reading">
      <div className="row">
        <Choice
          label="Weight"
          showLabel
          options={directionWords}
          value={direction}
          onChange={(next) => {
            setDirection(next);
            askAnew();
          }}
        />
      </div>
      <div className="reading-fields" key={kept}>
        <NumberField
          {...fields.quantity('lengthM')}
          valueSi={lengthM}
          unit={units.length}
          onChange={(value) => {
            setLengthM(value);
            askAnew();
          }}
        />
        <div
          onBlur={(event) => {
            // On the way to the button nothing may move under the finger; pressing it asks anyway.
            if (!(event.relatedTarget instanceof HTMLButtonElement)) setOdd(questionOf());
          }}
        >
          <NumberField
            {...fields.quantity('forceN')}
            valueSi={forceN}
            unit={forceUnit}
            onChange={(value) => {
              setForceN(value);
              askAnew();
            }}
            error={refused ?? fields.quantity('forceN').error}
          />
        </div>
        <button type="submit" className="strong">
          {odd === null ? 'Keep reading' : 'It is right: keep it'}
        </button>
      </div>
      {odd !== null && (
        <Asked
          sentence={odd.sentence}
          offers={odd.farOff ? forceMeant(odd.farOff, forceUnit) : []}
          onTake={(meantN) => {
            setForceN(meantN);
            askAnew();
            inputs()[1]?.focus();
          }}
        />
      )}
      <p className="field-hint">
        Enter goes on to the next. Any unit may be typed with the number: 1.6 m, 63 in, 35 kg, 78 lb, 350 N.
      </p>
      <TextField
        {...fields.text('takenOn')}
        type="date"
        value={takenOn}
        onChange={(date) => {
          setTakenOn(date);
          askAnew();
        }}
      />
    </form>
  );
}

const labels = { lengthM: 'Loop length', forceN: 'Scale shows', takenOn: 'Read on' };

const directionWords = [
  { value: 'loading', word: 'going on' },
  { value: 'unloading', word: 'coming off' },
] as const;
