import { notTakenSentence } from '#contract/log/columnsNotTaken.ts';
import type { LogFileAnswer } from '#contract/log/logFileAnswer.ts';
import { dateText } from '#contract/words/dateText.ts';
import { FileProblems } from '#web/parts/FileProblems.tsx';
import { SlipsFound, type SlipTakings } from './SlipsFound.tsx';

/** What a file would do to the log, or everything that keeps it from being taken. */
export function WhatIsFound(props: {
  name: string;
  answer: LogFileAnswer;
  slips: SlipTakings;
  onChoose: (slips: SlipTakings) => void;
  busy: boolean;
  onTake: () => void;
  onLeave: () => void;
}) {
  const { name, answer, slips, busy } = props;
  const right = answer.problemCount === 0;
  const left = notTakenSentence(answer.notTaken);
  const leftOut = answer.slips.filter(({ key }) => slips[key] === 'leftOut');
  const taken = answer.added - leftOut.reduce((sum, { setCount }) => sum + setCount, 0);
  return (
    <section className="stack" aria-label={`What ${name} holds`}>
      <h2>{headingOf(answer)}</h2>
      {right ? <p>{wouldTake(name, answer)}</p> : <Problems name={name} answer={answer} />}
      {answer.readAs.map((said) => (
        <p key={said}>{said}</p>
      ))}
      {left && <p>{left}</p>}
      {right && <SlipsFound slips={answer.slips} takings={slips} onChoose={props.onChoose} />}
      <div className="row">
        {right && taken > 0 && (
          <button type="button" className="strong" disabled={busy} onClick={props.onTake}>
            {taken === 1 ? 'Import one set' : `Import ${taken} sets`}
          </button>
        )}
        <button type="button" disabled={busy} onClick={props.onLeave}>
          Leave it
        </button>
      </div>
    </section>
  );
}

function headingOf({ problemCount, added }: LogFileAnswer): string {
  if (problemCount > 0) return 'Nothing can be imported yet';
  return added > 0 ? 'This would be imported' : 'There is nothing new in it';
}

function wouldTake(name: string, answer: LogFileAnswer): string {
  const { rows, added, alreadyThere, firstOn, lastOn, lifters } = answer;
  const lines = rows === 1 ? '1 line' : `${rows} lines`;
  const known = alreadyThere === 0 ? '' : `, ${alreadyThere} in the log already`;
  const dates =
    firstOn === null || lastOn === null
      ? ''
      : firstOn === lastOn
        ? ` Done on ${dateText(firstOn)}.`
        : ` From ${dateText(firstOn)} to ${dateText(lastOn)}.`;
  const people = lifters.length === 0 ? '' : ` Of ${listed(lifters)}.`;
  return `${name} has ${lines}: ${added === 1 ? '1 new set' : `${added} new sets`}${known}.${dates}${people}`;
}

function listed(names: readonly string[]): string {
  if (names.length > 8) return `${names.slice(0, 7).join(', ')} and ${names.length - 7} more`;
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}

function Problems({ name, answer }: { name: string; answer: LogFileAnswer }) {
  const { problems, problemCount } = answer;
  return (
    <div className="stack" role="alert">
      <p className="stop">
        {problemCount === 1 ? 'One place' : `${problemCount} places`} of {name} cannot be understood.{' '}
        {answer.headers.length > 0 && 'Match the columns below, or '}
        {answer.headers.length > 0 ? 'correct' : 'Correct'} the file and read it again.
      </p>
      <FileProblems name={name} problems={problems} count={problemCount} />
    </div>
  );
}
