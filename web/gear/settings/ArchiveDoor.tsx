import { useQueryClient } from '@tanstack/react-query';
import { useId, useState } from 'react';
import type { Club } from '#contract/records/club.ts';
import { restoreArchive } from '#web/api/clubFiles.ts';
import { useToast } from '#web/parts/Toast.tsx';

/** The whole club as one file: to keep safe, to move to another machine, to put in this club's place. */
export function ArchiveDoor({ club }: { club: Club }) {
  const id = useId();
  const client = useQueryClient();
  const say = useToast();
  const [chosen, setChosen] = useState<{ name: string; text: string } | null>(null);
  const [refused, setRefused] = useState<string | null>(null);
  const restore = async ({ name, text }: { name: string; text: string }) => {
    await restoreArchive(text);
    setChosen(null);
    await client.invalidateQueries();
    say(`The club is now what ${name} holds.`);
  };
  const fail = (error: Error) => setRefused(error.message);
  return (
    <section className="stack ruled">
      <h2>Everything in one file</h2>
      <p>
        The archive holds all of {club.name}: gear, readings, lifters, bests and days. Keep a copy where this
        machine is not; restored, it gives back exactly what was.
      </p>
      <div className="row">
        <a className="button strong" href="/api/archive" download>
          Download the archive
        </a>
        <label className="button" htmlFor={id}>
          Restore from an archive
        </label>
        <input
          id={id}
          className="only-read"
          type="file"
          accept=".json,application/json"
          onChange={(event) => {
            const file = event.target.files?.[0];
            event.target.value = '';
            setRefused(null);
            file?.text().then((text) => setChosen({ name: file.name, text }), fail);
          }}
        />
      </div>
      {chosen && (
        <div className="caution stack" role="alert">
          <p>
            <strong>Everything that {club.name} holds now would be replaced</strong> by what {chosen.name}{' '}
            holds. There is no undo: download the archive first if you may want it back.
          </p>
          <div className="row">
            <button type="button" className="strong" onClick={() => restore(chosen).catch(fail)}>
              Replace everything
            </button>
            <button type="button" onClick={() => setChosen(null)}>
              Keep what is here
            </button>
          </div>
        </div>
      )}
      {refused && (
        <p className="field-error" role="alert">
          {refused} Nothing was changed.
        </p>
      )}
    </section>
  );
}
