import { useId, useRef } from 'react';
import { Link } from 'wouter';
import { numberLine } from '#contract/paper/numberLine.ts';
import type { Day } from '#contract/records/day.ts';
import { dateText } from '#contract/words/dateText.ts';
import { longDate } from '#contract/words/dayWords.ts';
import { useClubSettings } from '#web/api/useClub.ts';
import { useEarlierPrescription, usePrescription } from '#web/api/usePrescription.ts';
import { useInAddress } from '#web/parts/useInAddress.ts';
import { NothingToPrint } from '#web/print/NothingToPrint.tsx';
import { useSheetsOf } from '#web/print/useSheetsOf.ts';
import { useDayLog } from '../log/useDayLog.ts';
import { toField, toNextLifter } from './moveFocus.ts';
import { PaperLifter } from './PaperLifter.tsx';
import { setsOnPaper } from './setsOnPaper.ts';
import { type LifterOnPaper, setsWord, useSaving } from './useSaving.ts';
import { useWritten } from './useWritten.ts';

/** What was written on the blank sheets of a day, typed in the order in which it stands there, without a mouse. */
export function FromPaper({ day }: { day: Day }) {
  const club = useClubSettings();
  const select = useId();
  const page = useRef<HTMLDivElement>(null);
  const { data: last } = usePrescription(day.id);
  const latest = last?.number ?? 0;
  const [asked, setAsked] = useInAddress('number');
  const number = Number(asked) >= 1 && Number(asked) < latest ? Number(asked) : null;
  const { data: earlier } = useEarlierPrescription(day.id, number);
  const prescription = number === null ? last : earlier;
  const sheetsOf = useSheetsOf(day, prescription);
  const logOf = useDayLog(day, prescription ?? null);
  const typed = useWritten(day.id);
  const { save, busy, marked } = useSaving(typed);
  if (sheetsOf === undefined) return <p className="quiet">Fetching what was worked out.</p>;
  if (sheetsOf === null || !prescription) return <NothingToPrint dayId={day.id} />;

  const sheets = sheetsOf().map((sheet) => ({
    ...sheet,
    lifters: sheet.lifters.flatMap((line): LifterOnPaper[] => {
      const log = logOf(sheet.groupId, line.lifterId);
      if (log === null) return [];
      const key = `${prescription.number} ${sheet.groupId} ${line.lifterId}`;
      const sets = setsOnPaper({
        log,
        steps: line.steps,
        mass: sheet.unit,
        dayId: day.id,
        lifterId: line.lifterId,
        key,
      });
      return [{ line, sets, doneOn: log.doneOn }];
    }),
  }));
  const lifters = sheets.flatMap((sheet) => sheet.lifters);
  const saveAll = (of: readonly LifterOnPaper[]) =>
    save(of, (key, field) => page.current && toField(page.current, key, field));
  const [first] = lifters;
  return (
    <div ref={page} className="stack from-paper">
      <header className="stack tight">
        <p className="small">
          <Link href={`/${day.id}`}>Back to the day</Link>
        </p>
        <div className="row ends base">
          <h1>From the blank sheets</h1>
          <Link href={`/${day.id}/blank`}>Blank sheets</Link>
        </div>
        <p>
          {longDate(day.date)}
          {day.title && `, ${day.title}`}. {numberLine(prescription, club.timeZone)}.
        </p>
        {latest > 1 && (
          <p className="earlier">
            <label htmlFor={select}>Number on the sheet in your hand</label>
            <select
              id={select}
              className="input"
              value={prescription.number}
              onChange={({ target }) => setAsked(Number(target.value) === latest ? '' : target.value)}
            >
              {Array.from({ length: latest }, (_, index) => latest - index).map((each) => (
                <option key={each}>{each}</option>
              ))}
            </select>
          </p>
        )}
        <p className="quiet with-keys">
          Enter: done as it stands, on to the next set. x: one rep fewer was made. Arrows: a line up or down.
          Tab: the next field.
        </p>
        <p className="quiet">Only sets that are marked as done are saved.</p>
        {first && first.doneOn !== day.date && (
          <p className="small">
            This day is planned for {dateText(day.date)}; what you enter now counts as done today.
          </p>
        )}
      </header>
      {sheets.map((sheet) => (
        <section key={sheet.key} className="stack ruled" aria-label={`${sheet.rack}, ${sheet.group}`}>
          <h2>
            {sheet.rack} <span className="quiet">{sheet.group}</span>
          </h2>
          {sheet.lifters.map((lifter) => (
            <PaperLifter
              key={lifter.line.lifterId}
              line={lifter.line}
              sets={lifter.sets}
              writtenOf={(key) => typed.written[key]}
              busy={busy}
              onChange={typed.put}
              onSave={async (button) => {
                if (await saveAll([lifter])) toNextLifter(button);
              }}
            />
          ))}
        </section>
      ))}
      <div className="row ruled">
        <button
          type="button"
          className="strong"
          data-saves-all
          disabled={busy}
          onClick={() => void saveAll(lifters)}
        >
          Save all: {setsWord(lifters.flatMap(marked).length)}
        </button>
      </div>
    </div>
  );
}
