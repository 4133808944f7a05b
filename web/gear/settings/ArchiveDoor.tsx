import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { archiveWords } from '#contract/archive/archiveWords.ts';
import type { Club } from '#contract/records/club.ts';
import { dateText } from '#contract/words/dateText.ts';
import { type ArchiveAnswer, restoreArchive, tryArchive } from '#web/api/clubFiles.ts';
import { FilePick } from '#web/parts/FilePick.tsx';
import { FileProblems } from '#web/parts/FileProblems.tsx';
import { useToast } from '#web/parts/Toast.tsx';
import './archive.css';
import { ArchiveHolds } from './ArchiveHolds.tsx';

/** A file that was read, and what the server found in it. */
interface Tried {
  file: File;
  answer: ArchiveAnswer;
}

/** The whole club as one file: to keep safe, to move to another machine; looked into before it may take this club's place. */
export function ArchiveDoor({ club }: { club: Club }) {
  const client = useQueryClient();
  const say = useToast();
  const [tried, setTried] = useState<Tried | null>(null);
  const [doing, setDoing] = useState<'reading' | 'replacing' | null>(null);
  const [refused, setRefused] = useState<string | null>(null);
  const during = async (what: 'reading' | 'replacing', act: () => Promise<void>) => {
    setDoing(what);
    setRefused(null);
    try {
      await act();
    } catch (error) {
      setRefused(error instanceof Error ? error.message : String(error));
    } finally {
      setDoing(null);
    }
  };
  const read = (file: File) =>
    during('reading', async () => {
      setTried(null);
      setTried({ file, answer: await tryArchive(file) });
    });
  const restore = ({ file }: Tried) =>
    during('replacing', async () => {
      await restoreArchive(file);
      setTried(null);
      await client.invalidateQueries();
      say(`The club now holds what was in ${file.name}.`);
    });
  const words =
    tried?.answer.ok && archiveWords(tried.file.name, tried.answer.archive, tried.answer.here, dateText);
  return (
    <section className="stack ruled">
      <h2>Everything in one file</h2>
      <p>
        The archive holds all of {club.name}: gear, readings, lifters, bests, days and the log. Keep a copy
        where this machine is not; restored, it gives back exactly what was.
      </p>
      <div className="row">
        <a className="button strong" href="/api/archive" download>
          Download the archive
        </a>
        <FilePick
          word="Look into an archive"
          accept=".json,application/json"
          onPick={(file) => void read(file)}
        />
      </div>
      <output className="small quiet">{doing === 'reading' ? 'Reading the file.' : ''}</output>
      {tried?.answer.ok === false && (
        <div className="stack" role="alert">
          <p className="stop">
            {tried.file.name} cannot replace this club. Nothing was changed; this is wrong in it:
          </p>
          <FileProblems
            name={tried.file.name}
            problems={tried.answer.problems}
            count={tried.answer.problems.length}
          />
        </div>
      )}
      {tried && words && (
        <>
          <ArchiveHolds name={tried.file.name} words={words} />
          <div className="caution stack">
            <p>
              <strong>{words.replaced}</strong> There is no undo here: download the archive first if you may
              want it back.
            </p>
            <div className="row">
              <button
                type="button"
                className="strong"
                disabled={doing !== null}
                onClick={() => void restore(tried)}
              >
                {doing === 'replacing' ? 'Replacing everything' : 'Replace everything'}
              </button>
              <button type="button" disabled={doing !== null} onClick={() => setTried(null)}>
                Keep what is here
              </button>
            </div>
          </div>
        </>
      )}
      {refused && (
        <p className="field-error" role="alert">
          {refused} Nothing was changed.
        </p>
      )}
    </section>
  );
}
