import { useState } from 'react';
import { Link } from 'wouter';
import type { Absence, Meet, SeasonEntry } from '#contract/records/season.ts';
import { className } from '#contract/season/classSentences.ts';
import { nearWeeksSentence } from '#contract/season/nearUntil.ts';
import { counted } from '#contract/words/counted.ts';
import { dateText } from '#contract/words/dateText.ts';
import { longDate } from '#contract/words/dayWords.ts';
import { firstAndMore } from '#contract/words/firstAndMore.ts';
import { useClub } from '#web/api/useClub.ts';
import { type Column, DataTable } from '#web/parts/DataTable.tsx';
import { AbsenceForm } from '#web/setup/AbsenceForm.tsx';
import { methodWord } from '../methodWord.ts';
import type { SeasonView } from '../SeasonView.ts';
import { AddLifters } from './AddLifters.tsx';
import { EntryForm } from './EntryForm.tsx';
import { MeetForm } from './MeetForm.tsx';
import { SeasonForm } from './SeasonForm.tsx';

/** Which form of the part is open: one at a time. */
type Open =
  | { what: 'season' }
  | { what: 'meet'; meet: Meet | null }
  | { what: 'entry'; entry: SeasonEntry }
  | { what: 'lifters' }
  | { what: 'absence'; absence: Absence | null }
  | null;

/** What a season is planned from: its method, meets, lifters, and the days without training. */
export function WhoPart({ season }: { season: SeasonView }) {
  const club = useClub();
  const [open, setOpen] = useState<Open>(null);
  const leave = () => setOpen(null);
  const kept = club.season.find(({ id }) => id === season.id)!;
  const entries = club.seasonEntry.filter(({ seasonId }) => seasonId === season.id);
  const nameOf = new Map(club.lifter.map(({ id, name }) => [id, name]));
  const byName = entries.toSorted((a, b) =>
    (nameOf.get(a.lifterId) ?? '').localeCompare(nameOf.get(b.lifterId) ?? ''),
  );
  const meets = club.meet.toSorted((a, b) => a.date.localeCompare(b.date));
  const own = meets.filter(
    ({ id, date }) => date >= season.today || entries.some((one) => one.meetIds.includes(id)),
  );
  const inSeason = new Set(entries.map(({ lifterId }) => lifterId));
  const absences = club.absence
    .filter(
      ({ lifterId, untilOn }) => untilOn >= kept.fromOn && (lifterId === null || inSeason.has(lifterId)),
    )
    .sort((a, b) => a.fromOn.localeCompare(b.fromOn));
  const method = club.method.find(({ id }) => id === kept.methodId);
  const columns: Column<SeasonEntry>[] = [
    { key: 'name', head: 'Lifter', cell: ({ lifterId }) => nameOf.get(lifterId) ?? 'somebody' },
    {
      key: 'meets',
      head: 'Trains for',
      cell: ({ meetIds, classes }) =>
        meets
          .filter(({ id }) => meetIds.includes(id))
          .map(({ id, title, date }) => {
            const said = classes.find(({ meetId }) => meetId === id);
            return `${title}, ${dateText(date)}${said ? ` (${className(said.upToKg)})` : ''}`;
          })
          .join('; '),
    },
  ];
  return (
    <div className="stack loose">
      <section className="stack">
        <div className="row ends base">
          <h2>This season</h2>
          <button type="button" onClick={() => setOpen({ what: 'season' })}>
            Change
          </button>
        </div>
        {open?.what === 'season' && <SeasonForm season={kept} onLeave={leave} />}
        <p>
          From {longDate(kept.fromOn)}, by {method ? methodWord(method) : 'a method that is not here'}.{' '}
          {kept.note}
        </p>
        {method && (
          <p className="small">
            {nearWeeksSentence(club.club[0], method.methodDocument)}{' '}
            <Link href="~/gear/club">Change it for the club</Link>
          </p>
        )}
      </section>
      <section className="stack ruled">
        <div className="row ends base">
          <h2>Meets</h2>
          <button type="button" onClick={() => setOpen({ what: 'meet', meet: null })}>
            Add a meet
          </button>
        </div>
        {open?.what === 'meet' && <MeetForm key={open.meet?.id ?? 'new'} meet={open.meet} onLeave={leave} />}
        <ul className="stack tight">
          {own.map((meet) => {
            const names = byName
              .filter(({ meetIds }) => meetIds.includes(meet.id))
              .map(({ lifterId }) => nameOf.get(lifterId) ?? '');
            return (
              <li key={meet.id} className="row ends base">
                <span>
                  <strong>{meet.title}</strong>, {longDate(meet.date)}.{' '}
                  <span className="quiet">
                    {names.length === 0
                      ? 'Nobody in this season trains for it.'
                      : `${counted(names.length, 'lifter')}: ${firstAndMore(names)}.`}
                  </span>
                </span>
                <button
                  type="button"
                  className="plain"
                  aria-label={`Change ${meet.title}`}
                  onClick={() => setOpen({ what: 'meet', meet })}
                >
                  Change
                </button>
              </li>
            );
          })}
        </ul>
      </section>
      <section className="stack ruled">
        <div className="row ends base">
          <h2>Lifters</h2>
          <button type="button" onClick={() => setOpen({ what: 'lifters' })}>
            Add lifters
          </button>
        </div>
        {open?.what === 'lifters' && <AddLifters season={season} meets={own} onLeave={leave} />}
        {open?.what === 'entry' && (
          <EntryForm
            key={open.entry.id}
            entry={open.entry}
            name={nameOf.get(open.entry.lifterId) ?? 'somebody'}
            meets={own}
            onLeave={leave}
          />
        )}
        <DataTable
          label="Lifters of this season"
          columns={columns}
          rows={byName}
          keyOf={({ id }) => id}
          nameOf={({ lifterId }) => nameOf.get(lifterId) ?? ''}
          onOpen={(entry) => setOpen({ what: 'entry', entry })}
        />
        <p className="small quiet">
          Open a row to give that lifter another meet or class, or to take them out.
        </p>
      </section>
      <section className="stack ruled">
        <div className="row ends base">
          <h2>Days without training</h2>
          <button type="button" onClick={() => setOpen({ what: 'absence', absence: null })}>
            Add days
          </button>
        </div>
        {open?.what === 'absence' && (
          <AbsenceForm
            key={open.absence?.id ?? 'new'}
            absence={open.absence}
            of={{ lifters: club.lifter.filter(({ id }) => inSeason.has(id)) }}
            today={season.today}
            onLeave={leave}
          />
        )}
        {absences.length === 0 && <p>None: holidays, a closed gym, somebody away.</p>}
        <ul className="stack tight">
          {absences.map((absence) => (
            <li key={absence.id} className="row ends base">
              <span>
                <strong>
                  {absence.lifterId === null ? 'The club is closed' : nameOf.get(absence.lifterId)}
                </strong>{' '}
                {dateText(absence.fromOn)} to {dateText(absence.untilOn)}: {absence.why}
              </span>
              <button
                type="button"
                className="plain"
                aria-label={`Change ${absence.why}`}
                onClick={() => setOpen({ what: 'absence', absence })}
              >
                Change
              </button>
            </li>
          ))}
        </ul>
      </section>
    </div>
  );
}
