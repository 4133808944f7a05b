import { Link } from 'wouter';
import { localDate } from '#contract/records/kind.ts';
import { dateText } from '#contract/words/dateText.ts';
import { daysLater } from '#contract/words/dayWords.ts';
import { liftWords } from '#contract/words/liftWords.ts';
import { logFilePath } from '#web/api/logFile.ts';
import { useClub, useClubSettings } from '#web/api/useClub.ts';
import { type SetsAsked, useSets } from '#web/api/useSets.ts';
import { EmptyState } from '#web/parts/EmptyState.tsx';
import { localToday } from '#web/parts/localToday.ts';
import { SelectField } from '#web/parts/SelectField.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { useInAddress } from '#web/parts/useInAddress.ts';
import { byDay } from './byDay.ts';
import { DayOfLog } from './DayOfLog.tsx';

/** So many days are fetched at a time. */
const windowDays = 28;

/** What was done, newest day first; older weeks come when they are asked for. */
export function LogPage() {
  const club = useClub();
  const today = localToday(useClubSettings().timeZone);
  const [lifterId, setLifterId] = useInAddress('lifter');
  const [liftAsked, setLift] = useInAddress('lift');
  const lift = liftWords.find(({ value }) => value === liftAsked)?.value ?? '';
  // Empty: everything up to now, and what was dated later by mistake.
  const [untilAsked, setUntil] = useInAddress('until');
  const until = isDate(untilAsked) ? untilAsked : '';
  const [windowsAsked, setWindows] = useInAddress('windows', '1');
  const windows = /^[1-9]\d{0,3}$/.test(windowsAsked) ? Number(windowsAsked) : 1;
  // The newest day is open and the others are closed, but for those that were turned.
  const [turnedText, setTurned] = useInAddress('turned');
  const turned = turnedText === '' ? [] : turnedText.split(',');
  const turn = (date: string) =>
    setTurned((turned.includes(date) ? turned.filter((one) => one !== date) : [...turned, date]).join(','));
  const from = daysLater(until || today, 1 - windows * windowDays);
  const asked: SetsAsked = { from, ...(until && { to: until }), ...(lifterId && { lifterId }) };
  const { data, error, isPending } = useSets(asked);
  const sets = (data?.sets ?? []).filter((set) => lift === '' || set.lift === lift);
  const days = byDay(sets);
  const filtered = lifterId !== '' || lift !== '' || until !== '';
  return (
    <div className="stack loose log-page">
      <header className="row ends base">
        <h1>Log</h1>
        <div className="row">
          <Link href="/new" className="button strong">
            Enter a set
          </Link>
          <Link href="/file" className="button">
            Read a file
          </Link>
          <a className="button" href={logFilePath} download="log.csv">
            Download all
          </a>
        </div>
      </header>
      <div className="fields log-filter">
        <SelectField
          label="Lifter"
          value={lifterId}
          options={[
            { value: '', word: 'everybody' },
            ...club.lifter.map(({ id, name }) => ({ value: id, word: name })),
          ]}
          onChange={setLifterId}
        />
        <SelectField
          label="Lift"
          value={lift}
          options={[{ value: '', word: 'every lift' }, ...liftWords]}
          onChange={setLift}
        />
        <TextField label="Up to" type="date" value={until} onChange={setUntil} />
      </div>
      {error && (
        <p className="stop" role="alert">
          The log could not be fetched: {error.message}
        </p>
      )}
      {isPending && <p className="quiet">Fetching the log.</p>}
      {days.map((day, index) => (
        <DayOfLog
          key={day.date}
          day={day}
          open={(index === 0) !== turned.includes(day.date)}
          onTurn={() => turn(day.date)}
          formerLabels={data?.formerLabels ?? {}}
        />
      ))}
      {data && days.length === 0 && !filtered && windows === 1 && <NothingYet from={from} />}
      {data && days.length === 0 && (filtered || windows > 1) && (
        <p>
          No such set {until ? `from ${dateText(from)} to ${dateText(until)}` : `since ${dateText(from)}`}.
        </p>
      )}
      {days.length > 0 && (
        <p className="small quiet">
          Dots are mean speeds, a dot a rep; the dashed line is what the whole log, these sets included,
          expects of a rested first rep with the strength of that week.
        </p>
      )}
      {data && (
        <div className="row">
          <button type="button" onClick={() => setWindows(`${windows + 1}`)}>
            Four weeks before {dateText(from)}
          </button>
        </div>
      )}
    </div>
  );
}

function isDate(text: string): boolean {
  return localDate.safeParse(text).success;
}

function NothingYet({ from }: { from: string }) {
  return (
    <EmptyState
      title={`Nothing was written down since ${dateText(from)}`}
      steps={[
        <>
          Open a training day whose loads are worked out, and tap <b>Log sets</b> beside a lifter: bar, bands
          and reps are filled in already.
        </>,
        'A set that was not planned is entered by hand here.',
        'Years of sets in a spreadsheet come in as one file; you see what it would do before anything is imported.',
      ]}
      action={
        <Link href="~/day" className="button">
          Training days
        </Link>
      }
    />
  );
}
