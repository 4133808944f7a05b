import { useEffect } from 'react';
import { Link } from 'wouter';
import { localDate } from '#contract/records/kind.ts';
import { dateText } from '#contract/words/dateText.ts';
import { liftWords } from '#contract/words/liftWords.ts';
import type { SetsAsked } from '#web/api/fetchSets.ts';
import { logFilePath } from '#web/api/logFile.ts';
import { useClub } from '#web/api/useClub.ts';
import { useLogDays } from '#web/api/useSets.ts';
import { EmptyState } from '#web/parts/EmptyState.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { useInAddress } from '#web/parts/useInAddress.ts';
import { DayOfLog } from './DayOfLog.tsx';

/** What was done, newest day first; older days come when they are asked for, the sets of a day when it is opened. */
export function LogPage() {
  const club = useClub();
  const [lifterId, setLifterId] = useInAddress('lifter');
  const [liftAsked, setLift] = useInAddress('lift');
  const lift = liftWords.find(({ value }) => value === liftAsked)?.value ?? '';
  // Empty: everything up to now, and what was dated later by mistake.
  const [untilAsked, setUntil] = useInAddress('until');
  const until = isDate(untilAsked) ? untilAsked : '';
  const [words, setWords] = useInAddress('words');
  // The newest day is open and the others are closed, but for those that were turned.
  const [turnedText, setTurned] = useInAddress('turned');
  const turned = turnedText === '' ? [] : turnedText.split(',');
  const turn = (date: string) =>
    setTurned((turned.includes(date) ? turned.filter((one) => one !== date) : [...turned, date]).join(','));
  const narrowed: SetsAsked = {
    ...(lifterId && { lifterId }),
    ...(lift && { lift }),
    ...(words.trim() && { words }),
  };
  const asked = { ...narrowed, ...(until && { to: until }) };
  const { data, error, isPending, fetchNextPage, hasNextPage, isFetchingNextPage } = useLogDays(asked);
  // Older pages that were asked for come back with the address.
  const [pagesAsked, setPages] = useInAddress('pages', '1');
  const pages = /^[1-9]\d{0,2}$/.test(pagesAsked) ? Number(pagesAsked) : 1;
  const there = data?.pages.length ?? 0;
  useEffect(() => {
    if (there > 0 && there < pages && hasNextPage && !isFetchingNextPage) void fetchNextPage();
  }, [there, pages, hasNextPage, isFetchingNextPage, fetchNextPage]);
  const days = data?.pages.flatMap((page) => page.days) ?? [];
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
        <TextField label="Words in the notes" value={words} onChange={setWords} maxLength={200} />
      </div>
      {error && (
        <p className="stop" role="alert">
          The log could not be fetched: {error.message}
        </p>
      )}
      {isPending && <p className="quiet">Fetching the log.</p>}
      {days.map((day, index) => (
        <DayOfLog
          key={day.doneOn}
          day={day}
          asked={narrowed}
          open={(index === 0) !== turned.includes(day.doneOn)}
          onTurn={() => turn(day.doneOn)}
        />
      ))}
      {data && days.length === 0 && Object.keys(asked).length === 0 && <NothingYet />}
      {data && days.length === 0 && Object.keys(asked).length > 0 && (
        <p>{until ? `No such set up to ${dateText(until)}.` : 'No such set.'}</p>
      )}
      {days.length > 0 && (
        <p className="small quiet">
          Dots are mean speeds, a dot a rep; the dashed line is what the whole log, these sets included,
          expects of a rested first rep with the strength of that week.
        </p>
      )}
      {hasNextPage && (
        <div className="row">
          <button type="button" disabled={isFetchingNextPage} onClick={() => setPages(`${there + 1}`)}>
            Days before {dateText(days.at(-1)?.doneOn ?? '')}
          </button>
        </div>
      )}
    </div>
  );
}

function isDate(text: string): boolean {
  return localDate.safeParse(text).success;
}

function NothingYet() {
  return (
    <EmptyState
      title="Nothing was written down yet"
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
