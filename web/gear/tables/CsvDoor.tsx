import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { allKinds, type KindName } from '#contract/records/allKinds.ts';
import { type CsvAnswer, type CsvCounts, csvPath, type FirstProblems, sendCsv } from '#web/api/clubFiles.ts';
import { refreshClub } from '#web/api/refreshClub.ts';
import { useUndo } from '#web/api/useUndo.ts';
import { FilePick } from '#web/parts/FilePick.tsx';
import { FileProblems } from '#web/parts/FileProblems.tsx';
import { useToast } from '#web/parts/Toast.tsx';
import { csvCounts } from './csvCounts.ts';

/** A file that was read, and what the server found in it. */
interface Tried {
  name: string;
  text: string;
  answer: CsvAnswer;
}

/** Records of one kind out to a spreadsheet and in again; a file is first only read, and taken whole or not at all. */
export function CsvDoor({ kind }: { kind: KindName }) {
  const word = allKinds[kind].facts.many;
  const client = useQueryClient();
  const say = useToast();
  const undo = useUndo();
  const [tried, setTried] = useState<Tried | null>(null);
  const refresh = () => refreshClub(client);
  const fail = (error: Error) => say(error.message);

  const read = async (file: File) => {
    const text = await file.text();
    setTried({ name: file.name, text, answer: await sendCsv(kind, text, true) });
  };
  const take = async ({ text, name }: Tried) => {
    const answer = await sendCsv(kind, text, false);
    if (!answer.ok) return setTried({ name, text, answer });
    setTried(null);
    await refresh();
    say(`Imported ${csvCounts(answer)} from ${name}.`, () => undo(answer.seq));
  };
  return (
    <details className="csv-door">
      <summary>
        {word[0]?.toUpperCase()}
        {word.slice(1)} as a spreadsheet file
      </summary>
      <div className="stack">
        <div className="row">
          <a className="button" href={csvPath(kind)} download={`${kind}.csv`}>
            Download CSV
          </a>
          <FilePick word="Read a CSV" accept=".csv,text/csv" onPick={(file) => read(file).catch(fail)} />
        </div>
        <p className="small quiet">
          Download it first: the head line names every column with its unit. A line with a known id changes
          that record, a line without one adds a record. Nothing is imported before you have seen what would
          happen.
        </p>
        {tried?.answer.ok && (
          <output className="stack">
            <p>
              {tried.name} has no wrong line: {csvCounts(tried.answer)}.{' '}
              {changesNothing(tried.answer) ? 'There is nothing to import.' : 'Nothing is imported yet.'}
            </p>
            {tried.answer.questions.count > 0 && (
              <>
                <p className="caution">
                  Check these before you import the file: they may be right, but are probably slips.
                </p>
                <FileProblems
                  name={tried.name}
                  problems={tried.answer.questions.first}
                  count={tried.answer.questions.count}
                  what="odd"
                />
              </>
            )}
            <div className="row">
              {!changesNothing(tried.answer) && (
                <button type="button" className="strong" onClick={() => take(tried).catch(fail)}>
                  {tried.answer.questions.count > 0 ? 'They are right: take them' : 'Take them'}
                </button>
              )}
              <button type="button" onClick={() => setTried(null)}>
                {changesNothing(tried.answer) ? 'Close' : 'Leave it'}
              </button>
            </div>
          </output>
        )}
        {tried && !tried.answer.ok && <Wrong name={tried.name} problems={tried.answer.problems} />}
      </div>
    </details>
  );
}

function changesNothing({ added, changed }: CsvCounts): boolean {
  return added + changed === 0;
}

function Wrong({ name, problems: { first, count } }: { name: string; problems: FirstProblems }) {
  return (
    <div className="stack" role="alert">
      <p className="stop">
        Nothing from {name} was imported
        {count > first.length ? `: ${count} places of it are wrong, of which these are the first` : ''}.
        Correct them and read it again:
      </p>
      <FileProblems name={name} problems={first} count={count} />
    </div>
  );
}
