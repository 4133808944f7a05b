import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import type { ToldComparison } from '#contract/comparison/toldComparison.ts';
import type { Comparison } from '#contract/records/comparison.ts';
import { longDate } from '#contract/words/dayWords.ts';
import { drawnSentence } from '#contract/words/drawnSentence.ts';
import { notDrawnSentence } from '#contract/words/notDrawnSentence.ts';
import { outcomeText } from '#contract/words/outcomeText.ts';
import { useClub, useClubSettings } from '#web/api/useClub.ts';
import { useToldComparison } from '#web/api/useComparison.ts';
import { useRecords } from '#web/api/useRecords.ts';
import { localToday } from '#web/parts/localToday.ts';
import { DifferencePicture } from './DifferencePicture.tsx';
import { NoteForm } from './NoteForm.tsx';
import { Cautions } from './OutlookView.tsx';
import { standingText } from './standingText.ts';
import { WhoByWhich } from './WhoByWhich.tsx';

/** A comparison that was drawn: what it shows by now, what could be seen of it, who trains by which way, and who was taken out. */
export function ComparisonPage({ comparison }: { comparison: Comparison }) {
  const { id, title, lift, family, planDocument: plan, note } = comparison;
  const { told, error } = useToldComparison(id);
  const today = localToday(useClubSettings().timeZone);
  const [, go] = useLocation();
  const records = useRecords('comparison');
  const [isNoting, setNoting] = useState(false);
  return (
    <div className="stack loose comparison">
      <div className="stack tight">
        <div className="row ends base">
          <h1>{title}</h1>
          <p className="row screen-only">
            <Link href={`/${id}/paper`}>On paper</Link>
            <Link href="/">All comparisons</Link>
          </p>
        </div>
        <p>
          "{plan.ways[0]}" or "{plan.ways[1]}": {outcomeText(plan.outcome, lift, family)}, from{' '}
          {longDate(plan.startsOn)} to {longDate(plan.endsOn)}, {standingText(plan, today)}.{' '}
          <Methods of={comparison} />
        </p>
        <p className="small quiet">
          {drawnSentence(comparison)} Only the note and who was taken out can still be changed.
        </p>
      </div>
      <section className="stack paper-whole" aria-labelledby="comparison-shows">
        <h2 id="comparison-shows">What it shows</h2>
        {error && <p role="alert">{error.message}</p>}
        {told === undefined && !error && (
          <p className="quiet" aria-busy="true">
            Working out what was lifted since.
          </p>
        )}
        {told && <Shown told={told} />}
      </section>
      <section className="stack paper-whole" aria-labelledby="comparison-seen">
        <h2 id="comparison-seen">What could be seen, as said before anybody started</h2>
        {told?.foretold.map((sentence, at) => (
          <p key={sentence} className={at === 0 ? 'comparison-answer' : undefined}>
            {sentence}
          </p>
        ))}
      </section>
      <WhoByWhich comparison={comparison} today={today} />
      {plan.notDrawn.length > 0 && (
        <p className="small quiet">{plan.notDrawn.map(notDrawnSentence).join(' ')}</p>
      )}
      <section className="stack ruled" aria-labelledby="comparison-note">
        <div className="row ends base">
          <h2 id="comparison-note">Note</h2>
          <button type="button" className="screen-only" onClick={() => setNoting(true)}>
            Change the note
          </button>
        </div>
        {isNoting ? (
          <NoteForm comparison={comparison} onLeave={() => setNoting(false)} />
        ) : (
          <p className={note === '' ? 'quiet' : 'comparison-note'}>{note === '' ? 'None.' : note}</p>
        )}
      </section>
      {told && <Cautions cautions={told.cautions} />}
      <p className="screen-only">
        <button
          type="button"
          className="plain"
          onClick={() => {
            go('/');
            void records.remove(id, title);
          }}
        >
          Remove this comparison
        </button>
      </p>
    </div>
  );
}

function Shown({ told: { report, sentences } }: { told: ToldComparison }) {
  return (
    <>
      {sentences.map((sentence, at) => (
        <p key={sentence} className={at === 0 ? 'comparison-answer' : undefined}>
          {sentence}
        </p>
      ))}
      {report && <DifferencePicture report={report} />}
    </>
  );
}

/** The methods of the club that the ways go by, where they were named. */
function Methods({ of: { firstMethodId, secondMethodId, planDocument } }: { of: Comparison }) {
  const { method } = useClub();
  const named = [firstMethodId, secondMethodId].flatMap((id, at) => {
    const one = method.find((kept) => kept.id === id);
    return one ? [{ way: planDocument.ways[at], ...one }] : [];
  });
  return (
    <>
      {named.map(({ way, id, methodDocument: { title, version } }) => (
        <span key={way}>
          "{way}" goes by{' '}
          <Link href={`~/season/methods/${id}`}>
            {title}, version {version}
          </Link>
          .{' '}
        </span>
      ))}
    </>
  );
}
