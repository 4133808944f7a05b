import type { PhaseOfMethod } from '#contract/records/method.ts';
import { besideSentences } from '#contract/season/besideSentences.ts';
import { bandSteps, lengthWords, methodRows, rotations } from '#contract/season/methodRows.ts';
import { weekdayWord } from '#contract/words/dayWords.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';

/** A phase: what it is for, how long it may be, its weeks as rows and its days across, and what each day has beside its groups. */
export function PhaseWeeks({ phase }: { phase: PhaseOfMethod }) {
  const { mass } = useUnits();
  const notes = [...bandSteps(phase), ...rotations(phase)];
  const besides = phase.days.map((day) => besideSentences(day, mass));
  return (
    <section className="stack ruled">
      <h2>{phase.title}</h2>
      <p>
        {phase.goal} <span className="quiet">{lengthWords(phase)}</span>
      </p>
      {notes.length > 0 && (
        <ul className="stack tight small">
          {notes.map((note) => (
            <li key={note}>{note}</li>
          ))}
        </ul>
      )}
      <div className="table-scroll">
        <table className="table season-method" aria-label={`Weeks of ${phase.title}`}>
          <thead>
            <tr>
              <th scope="col">Week</th>
              {phase.days.map(({ weekday, title }) => (
                <th key={weekday} scope="col">
                  {weekdayWord(weekday)}: {title}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {methodRows(phase).map(({ week, days }) => (
              <tr key={week}>
                <th scope="row">{week}</th>
                {days.map(({ weekday, title: day, groups }) => (
                  <td key={weekday}>
                    <span className="phone-only small quiet">
                      {weekdayWord(weekday)}: {day}
                    </span>
                    {groups.map(({ title, aim, sets, start }) => (
                      <p key={title}>
                        <strong>{title}</strong> {sets}, {aim}
                        {start !== null && <span className="quiet">, {start}</span>}
                      </p>
                    ))}
                  </td>
                ))}
              </tr>
            ))}
            {besides.some((sentences) => sentences.length > 0) && (
              <tr>
                <th scope="row" className="season-every-week">
                  Every week
                </th>
                {phase.days.map(({ weekday, title }, at) => (
                  <td key={weekday}>
                    <span className="phone-only small quiet">
                      {weekdayWord(weekday)}: {title}
                    </span>
                    {besides[at]!.map((sentence, place) => (
                      <p key={place}>{sentence}</p>
                    ))}
                  </td>
                ))}
              </tr>
            )}
          </tbody>
        </table>
      </div>
    </section>
  );
}
