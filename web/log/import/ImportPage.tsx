import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { Link } from 'wouter';
import type { LogFileAnswer } from '#contract/log/logFileAnswer.ts';
import type { ColumnMap } from '#contract/log/suggestColumns.ts';
import { logFilePath, sendLogFile } from '#web/api/logFile.ts';
import { refreshClub } from '#web/api/refreshClub.ts';
import { useUndo } from '#web/api/useUndo.ts';
import { FilePick, tableFile } from '#web/parts/FilePick.tsx';
import { useToast } from '#web/parts/Toast.tsx';
import { ColumnMatch } from './ColumnMatch.tsx';
import type { SlipTakings } from './SlipsFound.tsx';
import { WhatIsFound } from './WhatIsFound.tsx';

interface Tried {
  name: string;
  text: string;
  /** As the coach matched them; what the server suggested at first. */
  columns: ColumnMap;
  answer: LogFileAnswer;
  slips: SlipTakings;
}

/** A club's own file of sets: read, matched column by column, looked at, and then taken whole or not at all. */
export function ImportPage() {
  const client = useQueryClient();
  const say = useToast();
  const undo = useUndo();
  const [tried, setTried] = useState<Tried | null>(null);
  const [busy, setBusy] = useState(false);
  const during = async (act: () => Promise<void>) => {
    setBusy(true);
    try {
      await act();
    } catch (error) {
      say(error instanceof Error ? error.message : String(error));
    } finally {
      setBusy(false);
    }
  };
  const read = (file: File) =>
    during(async () => {
      const text = await file.text();
      const answer = await sendLogFile({ text, columns: null }, true);
      setTried({ name: file.name, text, columns: answer.suggested, answer, slips: {} });
    });
  const match = (columns: ColumnMap) =>
    during(async () => {
      if (tried === null) return;
      setTried({ ...tried, columns });
      const answer = await sendLogFile({ text: tried.text, columns }, true);
      setTried({ ...tried, columns, answer, slips: {} });
    });
  const take = () =>
    during(async () => {
      if (tried === null) return;
      const { name, text, columns, slips } = tried;
      const { added, seq } = await sendLogFile({ text, columns, slips }, false);
      setTried(null);
      await refreshClub(client);
      say(`Imported ${added === 1 ? 'one set' : `${added} sets`} from ${name}.`, () => undo(seq));
    });
  return (
    <div className="stack loose">
      <div className="stack">
        <p>
          <Link href="/" className="log-back">
            The log
          </Link>
        </p>
        <h1>Sets from a file</h1>
        <p>
          A table with one set a line, saved as CSV. Its columns may have your own names: you match them here.
          Nothing is imported before you have seen what would happen, and a set that is in the log already is
          not taken twice.
        </p>
        <div className="row">
          <FilePick
            word={tried ? 'Read another file' : 'Choose a file'}
            accept={tableFile}
            strong
            onPick={(file) => void read(file)}
          />
          <a className="button" href={logFilePath} download="log.csv">
            Download the log as an example
          </a>
        </div>
        <output className="small quiet">{busy ? 'Reading the file.' : ''}</output>
      </div>
      {tried && (
        <>
          <WhatIsFound
            name={tried.name}
            answer={tried.answer}
            slips={tried.slips}
            onChoose={(slips) => setTried({ ...tried, slips })}
            busy={busy}
            onTake={() => void take()}
            onLeave={() => setTried(null)}
          />
          {tried.answer.headers.length > 0 && (
            <ColumnMatch
              key={tried.name}
              {...{ text: tried.text, columns: tried.columns, answer: tried.answer, busy }}
              onMatch={(columns) => void match(columns)}
            />
          )}
        </>
      )}
    </div>
  );
}
