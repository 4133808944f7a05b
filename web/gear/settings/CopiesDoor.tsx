import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { archiveWords } from '#contract/archive/archiveWords.ts';
import type { KeptCopy } from '#contract/archive/keptCopy.ts';
import type { Club } from '#contract/records/club.ts';
import { capital } from '#contract/words/capital.ts';
import { dateText } from '#contract/words/dateText.ts';
import { copiesKey, lookIntoCopy, removeCopy, restoreCopy, takeCopy, useCopies } from '#web/api/useCopies.ts';
import { momentText } from '#web/parts/momentText.ts';
import { useToast } from '#web/parts/Toast.tsx';
import { ArchiveHolds } from './ArchiveHolds.tsx';
import { CopyLines } from './CopyLines.tsx';

/** A copy that was asked about, and what the coach may decide of it. */
type Asked =
  | { of: KeptCopy; to: 'remove' }
  | { of: KeptCopy; to: 'restore'; found: Awaited<ReturnType<typeof lookIntoCopy>> };

/** Copies of the club that the program takes itself, and clubs that another took the place of: looked into, restored, removed. */
export function CopiesDoor({ club }: { club: Club }) {
  const client = useQueryClient();
  const say = useToast();
  const { data, error } = useCopies();
  const [asked, setAsked] = useState<Asked | null>(null);
  const [doing, setDoing] = useState<string | null>(null);
  const [refused, setRefused] = useState<string | null>(null);
  const nameOf = ({ kind, takenAt }: KeptCopy) =>
    `${kind === 'snapshot' ? 'the snapshot of' : 'the club until'} ${momentText(takenAt, club.timeZone)}`;
  const during = async (what: string, act: () => Promise<void>) => {
    setDoing(what);
    setRefused(null);
    try {
      await act();
      await client.invalidateQueries({ queryKey: copiesKey });
    } catch (fault) {
      setRefused(fault instanceof Error ? fault.message : String(fault));
    } finally {
      setDoing(null);
    }
  };
  const take = () =>
    during('Taking a snapshot.', async () => {
      await takeCopy();
      say('A snapshot of the club was taken and checked.');
    });
  const look = (of: KeptCopy) =>
    during('Looking into it.', async () => {
      setAsked(null);
      setAsked({ of, to: 'restore', found: await lookIntoCopy(of) });
    });
  const restore = (of: KeptCopy) =>
    during('Replacing everything.', async () => {
      await restoreCopy(of);
      setAsked(null);
      await client.invalidateQueries();
      say(`The club now holds what was in ${nameOf(of)}.`);
    });
  const remove = (of: KeptCopy) =>
    during('Removing it.', async () => {
      await removeCopy(of);
      setAsked(null);
      say(`Removed ${nameOf(of)}.`);
    });
  return (
    <section className="stack ruled">
      <h2>Copies of the club</h2>
      <p>
        In each hour in which something was changed the program takes a snapshot and checks it. The last of
        each of 24 hours and 14 days stay, and so does every club that another took the place of.
      </p>
      <div className="row">
        <button type="button" disabled={doing !== null} onClick={() => void take()}>
          Take a snapshot now
        </button>
      </div>
      {data?.fault && (
        <p className="stop" role="alert">
          {data.fault}
        </p>
      )}
      {error && <p className="stop">The copies could not be listed: {error.message}</p>}
      {data && (
        <CopyLines
          copies={data.copies}
          timeZone={club.timeZone}
          nameOf={nameOf}
          disabled={doing !== null}
          onLook={(of) => void look(of)}
          onRemove={(of) => setAsked({ of, to: 'remove' })}
        />
      )}
      <output className="small quiet">{doing ?? ''}</output>
      {asked?.to === 'restore' && (
        <Restore
          asked={asked}
          name={nameOf(asked.of)}
          busy={doing !== null}
          onRestore={restore}
          onLeave={() => setAsked(null)}
        />
      )}
      {asked?.to === 'remove' && (
        <div className="caution stack" role="alert">
          <p>Remove {nameOf(asked.of)}? It is gone for good.</p>
          <div className="row">
            <button
              type="button"
              className="strong"
              disabled={doing !== null}
              onClick={() => void remove(asked.of)}
            >
              Remove it
            </button>
            <button type="button" disabled={doing !== null} onClick={() => setAsked(null)}>
              Keep it
            </button>
          </div>
        </div>
      )}
      {refused && (
        <p className="field-error" role="alert">
          {refused} Nothing was changed.
        </p>
      )}
      {data && (
        <p className="small quiet">
          Snapshots lie in <span className="copies-folder">{data.folder}</span>, on the machine that runs the
          program. Best is a folder on another disk: <code>rackwright serve --snapshots folder</code>.
        </p>
      )}
    </section>
  );
}

function Restore(props: {
  asked: Extract<Asked, { to: 'restore' }>;
  name: string;
  busy: boolean;
  onRestore: (of: KeptCopy) => Promise<void>;
  onLeave: () => void;
}) {
  const { asked, name, busy } = props;
  const words = archiveWords(name, asked.found.archive, asked.found.here, dateText);
  return (
    <>
      <ArchiveHolds name={name} words={{ ...words, isOf: capital(words.isOf) }} />
      <div className="caution stack">
        <p>
          <strong>{words.replaced}</strong> What is here now is kept as another copy.
        </p>
        <div className="row">
          <button
            type="button"
            className="strong"
            disabled={busy}
            onClick={() => void props.onRestore(asked.of)}
          >
            Restore this copy
          </button>
          <button type="button" disabled={busy} onClick={props.onLeave}>
            Keep what is here
          </button>
        </div>
      </div>
    </>
  );
}
