import { type KeyboardEvent, useId } from 'react';
import { written as inUnit } from '#contract/words/written.ts';
import { Asked } from '#web/parts/Asked.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { repsWords, seenWords } from '#web/setup/setWords.ts';
import { toNeighbour, toNextSet } from './moveFocus.ts';
import type { SetOnPaper } from './setsOnPaper.ts';
import {
  asAsked,
  questionOf,
  shownOf,
  type WrittenField,
  type WrittenSet,
  wasAsked,
  withMiss,
  wrongWith,
} from './writtenSet.ts';

const columns = [
  { field: 'bar', word: 'Bar', mode: 'decimal' },
  { field: 'made', word: 'Reps made', mode: 'numeric' },
  { field: 'speeds', word: 'Speed', mode: 'decimal' },
  { field: 'remark', word: 'Remark', mode: 'text' },
] as const;

/** One set as on the paper. Enter: it was done as it stands, on to the next; x: a rep fewer; arrows: up and down. */
export function PaperLine(props: {
  name: string;
  set: SetOnPaper;
  written: WrittenSet;
  /** What is wrong with it is said; before, somebody is still typing. */
  told: boolean;
  onChange: (written: WrittenSet) => void;
  onTell: (told: boolean) => void;
}) {
  const { name, set, written, onChange, onTell } = props;
  const units = useUnits();
  const { mass } = units;
  const id = useId();
  const which = set.number === null ? 'one more set' : `set ${set.number}`;
  const planned = plannedText(set);
  if (set.logged !== null) {
    const { logged } = set;
    const said = [repsWords(logged, units), seenWords(logged), logged.note].filter((words) => words !== '');
    return (
      <tr className={classOf(set)}>
        <th scope="row">{planned}</th>
        <td colSpan={columns.length + 1} className="paper-kept">
          {said.join('; ')} <b>✓ on record</b>
        </td>
      </tr>
    );
  }
  const shown = shownOf(written, set);
  const wrong = written.done ? wrongWith(written, set, mass) : null;
  const told = props.told ? wrong : null;
  const question = written.done && props.told ? questionOf(written, set, mass) : null;
  const onKey = (event: KeyboardEvent<HTMLInputElement>, field: WrittenField) => {
    const input = event.currentTarget;
    if (event.key === 'Enter') {
      const done = { ...written, done: true };
      onTell(true);
      const isAsked = questionOf(done, set, mass) !== null && !wasAsked(done, set);
      onChange(isAsked ? asAsked(done, set) : done);
      if (wrongWith(done, set, mass) === null && !isAsked) toNextSet(input, field);
    } else if (event.key === 'ArrowDown') toNeighbour(input, field, 1);
    else if (event.key === 'ArrowUp') toNeighbour(input, field, -1);
    else if (event.key.toLowerCase() === 'x' && field !== 'remark') onChange(withMiss(written, set));
    else return;
    event.preventDefault();
  };
  return (
    <>
      <tr
        className={classOf(set, written.done)}
        onBlur={({ currentTarget, relatedTarget }) => {
          if (currentTarget.contains(relatedTarget)) return;
          onTell(true);
          // Who goes on to save has not seen the question yet, and is asked before anything is written.
          const saving =
            relatedTarget instanceof HTMLElement && relatedTarget.matches('[data-saves], [data-saves-all]');
          if (!saving && written.done && questionOf(written, set, mass) !== null)
            onChange(asAsked(written, set));
        }}
      >
        <th scope="row">{planned}</th>
        {columns.map(({ field, word, mode }) => (
          <td key={field} className={`paper-${field}`}>
            <input
              className="input"
              aria-label={`${word}, ${which} of ${name}`}
              data-field={field}
              data-set={set.key}
              data-more={set.number === null ? '' : undefined}
              inputMode={mode}
              autoComplete="off"
              value={shown[field]}
              aria-invalid={told?.field === field ? true : undefined}
              aria-describedby={told?.field === field || (question && field === 'bar') ? id : undefined}
              onFocus={(event) => event.target.select()}
              onChange={(event) => {
                onTell(false);
                onChange({ ...written, [field]: event.target.value, done: true });
              }}
              onKeyDown={(event) => onKey(event, field)}
            />
          </td>
        ))}
        <td className="paper-done">
          <input
            type="checkbox"
            aria-label={`Done, ${which} of ${name}`}
            checked={written.done}
            onChange={(event) => onChange({ ...written, done: event.target.checked })}
          />
        </td>
      </tr>
      {question && !told && (
        <tr>
          <td colSpan={columns.length + 2}>
            <Asked
              id={id}
              sentence={question.sentence}
              offers={question.offers}
              onTake={(meantKg) => onChange({ ...written, bar: inUnit(meantKg, mass) })}
            />
          </td>
        </tr>
      )}
      {told && (
        <tr>
          <td colSpan={columns.length + 2}>
            <p className="field-error" id={id} role="alert">
              {told.sentence}
            </p>
          </td>
        </tr>
      )}
    </>
  );
}

function plannedText({ number, draft, logged, printedBar }: SetOnPaper) {
  if (number === null) return logged === null ? '+ one more' : '+';
  return (
    <>
      <span className="quiet">{number}</span> {printedBar} × {draft.reps}
    </>
  );
}

function classOf({ isFirstOfStep }: { isFirstOfStep: boolean }, done = false): string {
  return [isFirstOfStep && 'paper-step', done && 'paper-marked'].filter(Boolean).join(' ');
}
