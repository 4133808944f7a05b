import type { PhaseOfMethod } from '#contract/records/method.ts';
import { bandSteps, lengthWords, methodRows } from '#contract/season/methodRows.ts';
import { weekdayWord } from '#contract/words/dayWords.ts';

/** A phase: what it is for, how long it may be, its weeks as rows and its days across. */
export function PhaseWeeks({ phase }: { phase: PhaseOfMethod }) {
  return (
    <section className="stack ruled">
      <h2>{phase.title}</h2>
      <p>
        {phase.goal} <span className="quiet">{lengthWords(phase)}</span>
      </p>
      {bandSteps(phase).map((sentence) => (
        <p key={sentence} className="small">
          {sentence}
        </p>
      ))}
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
                    {groups.map(({ title, aim, sets }) => (
                      <p key={title}>
                        <strong>{title}</strong> {sets}, {aim}
                      </p>
                    ))}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}
