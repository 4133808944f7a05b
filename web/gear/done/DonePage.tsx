import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { Link } from 'wouter';
import type { DoneChange } from '#contract/changes/doneChange.ts';
import { doneSentence } from '#contract/words/doneSentence.ts';
import { refreshClub } from '#web/api/refreshClub.ts';
import { request } from '#web/api/request.ts';
import { doneKey, useDone } from '#web/api/useDone.ts';
import type { Gear } from '#web/gear/state/useGear.ts';
import { momentText } from '#web/parts/momentText.ts';
import { DoneLines } from './DoneLines.tsx';
import './done.css';

/** What was done to the club, by whom and when; the last of it is taken back here, one after the other, however long ago it was. */
export function DonePage({ gear }: { gear: Gear }) {
  const client = useQueryClient();
  const { data, error, isPending, fetchNextPage, hasNextPage, isFetchingNextPage } = useDone();
  const [busy, setBusy] = useState(false);
  const [refused, setRefused] = useState<string | null>(null);
  const { timeZone } = gear.club;
  const [newest] = data?.pages ?? [];
  const takeBack = async (seq: number) => {
    setBusy(true);
    setRefused(null);
    try {
      await request('POST', `/api/undo/${seq}`);
    } catch (fault) {
      setRefused((fault as Error).message);
    }
    // What is undone next is told before it can be asked for.
    await refreshClub(client)
      .then(() => client.invalidateQueries({ queryKey: doneKey }))
      .finally(() => setBusy(false));
  };
  return (
    <div className="stack loose">
      <div>
        <h1>What was done</h1>
        <p className="quiet">
          Everything that was changed here, newest first. Nothing in this list is ever deleted.
        </p>
      </div>
      {error && (
        <p className="stop" role="alert">
          The list could not be fetched: {error.message}
        </p>
      )}
      {isPending && <p className="quiet">Fetching what was done.</p>}
      {newest && (
        <section className="stack done-next" aria-label="Undo">
          <Next
            act="Undo"
            isFirst
            change={newest.undo}
            whyNot={newest.undo?.whyNot ?? null}
            timeZone={timeZone}
            busy={busy}
            onAct={takeBack}
          />
          {newest.undo?.replaced && (
            <Link href="/club" className="small">
              To the copies of the club
            </Link>
          )}
          {newest.redo && (
            <Next
              act="Do it again"
              change={{ ...newest.redo, back: null }}
              whyNot={null}
              timeZone={timeZone}
              busy={busy}
              onAct={takeBack}
            />
          )}
          <p className="field-error" role="alert">
            {refused ?? ''}
          </p>
        </section>
      )}
      {data && <DoneLines changes={data.pages.flatMap(({ changes }) => changes)} timeZone={timeZone} />}
      {hasNextPage && (
        <div>
          <button type="button" disabled={isFetchingNextPage} onClick={() => void fetchNextPage()}>
            Show older ones
          </button>
        </div>
      )}
    </div>
  );
}

/** One button that says beforehand what it will do. */
function Next(props: {
  act: string;
  isFirst?: boolean;
  change: DoneChange | null;
  whyNot: string | null;
  timeZone: string;
  busy: boolean;
  onAct: (seq: number) => Promise<void>;
}) {
  const { act, change, whyNot, timeZone, busy } = props;
  if (change === null) return <p>There is nothing to undo.</p>;
  const by = change.who ? `, by ${change.who.name}` : '';
  return (
    <div className="row">
      <button
        type="button"
        className={props.isFirst ? 'strong' : ''}
        disabled={busy || whyNot !== null}
        onClick={() => void props.onAct(change.seq)}
      >
        {act}
      </button>
      <p className="done-what">
        <strong>{doneSentence(change)}</strong>{' '}
        <span className="small quiet">
          {momentText(change.madeAt, timeZone)}
          {by}
        </span>
        {whyNot && <span className="small"> {whyNot}</span>}
      </p>
    </div>
  );
}
