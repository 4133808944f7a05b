import { Fragment } from 'react';
import { Link } from 'wouter';
import { reasonSentence, weekDifferenceSentences } from '#contract/season/differenceSentences.ts';
import type { LifterDifference } from '#contract/season/planDifferences.ts';
import type { SeasonOffer } from '#contract/season/seasonOffer.ts';
import { counted } from '#contract/words/counted.ts';
import { useClub } from '#web/api/useClub.ts';
import { useTakePlan } from '#web/api/useSeason.ts';
import { TakenWhen } from './TakenWhen.tsx';

/** What differs from the plan that holds, lifter by lifter and why, before it is taken; and every plan that was taken. */
export function ChangesPart({ offer }: { offer: SeasonOffer }) {
  const { lifter } = useClub();
  const { seasonId } = offer.plan;
  const take = useTakePlan(seasonId);
  const holds = offer.taken.at(-1);
  const { differences } = offer;
  const nameOf = (id: string) => lifter.find((one) => one.id === id)?.name ?? 'somebody who is gone';
  return (
    <div className="stack loose">
      <section className="stack">
        <h2>
          {holds === undefined
            ? 'No plan has been taken yet'
            : differences.length === 0
              ? 'Nothing differs from the plan that holds'
              : `${counted(differences.length, 'lifter')} with changes`}
        </h2>
        <p>
          {holds === undefined
            ? 'Take the plan as it stands. When a meet, an absence or the method changes later, you see lifter by lifter what would be different, before it holds.'
            : differences.length === 0
              ? 'When a meet moves, somebody is away or the method changes, you see here what follows, before it holds.'
              : `Until you take them, plan ${holds.number} holds. What is past stays as it was.`}
        </p>
        {(holds === undefined || differences.length > 0) && (
          <div>
            <button
              type="button"
              className="strong"
              disabled={take.isPending}
              onClick={() => take.mutate(null)}
            >
              {holds === undefined ? 'Take this plan' : 'Take these changes'}
            </button>
          </div>
        )}
        {take.error && (
          <p className="stop" role="alert">
            {take.error.message}
          </p>
        )}
        <ul className="stack">
          {alike(differences).map((same) => (
            <OfLifters key={same[0]!.lifterId} same={same} nameOf={nameOf} seasonId={seasonId} />
          ))}
        </ul>
      </section>
      {offer.taken.length > 0 && (
        <section className="stack ruled">
          <h2>Plans that were taken</h2>
          <ol className="stack tight">
            {offer.taken.toReversed().map((head) => (
              <li key={head.number}>
                <Link href={`/${seasonId}/taken/${head.number}`}>Plan {head.number}</Link>
                <TakenWhen head={head} />
                {head === holds && '. It holds.'}
              </li>
            ))}
          </ol>
        </section>
      )}
    </div>
  );
}

/** How many weeks are told before the rest is asked for. */
const shownAtFirst = 3;

/** Lifters of whom the same is told stand together. */
function alike(differences: readonly LifterDifference[]): LifterDifference[][] {
  const found = new Map<string, LifterDifference[]>();
  for (const difference of differences) {
    const { what, why, weeks } = difference;
    const key = JSON.stringify([what, why, weeks]);
    found.set(key, [...(found.get(key) ?? []), difference]);
  }
  return [...found.values()];
}

function OfLifters(props: {
  same: readonly LifterDifference[];
  nameOf: (lifterId: string) => string;
  seasonId: string;
}) {
  const { same, nameOf, seasonId } = props;
  const { what, why, weeks } = same[0]!;
  const sentences = weeks.flatMap(weekDifferenceSentences);
  return (
    <li className="stack tight ruled">
      <h3>
        {same.map(({ lifterId }, at) => (
          <Fragment key={lifterId}>
            {at > 0 && ', '}
            {what === 'gone' ? (
              nameOf(lifterId)
            ) : (
              <Link href={`/${seasonId}/lifter/${lifterId}`}>{nameOf(lifterId)}</Link>
            )}
          </Fragment>
        ))}
        {what === 'new' && ': new in this season'}
        {what === 'gone' && ': no longer in this season'}
      </h3>
      {why.map((reason) => {
        const sentence = reasonSentence(reason);
        return (
          <p key={sentence}>
            <strong>{sentence}</strong>
          </p>
        );
      })}
      <Sentences sentences={sentences.slice(0, shownAtFirst)} />
      {sentences.length > shownAtFirst && (
        <details className="fold">
          <summary>{counted(sentences.length - shownAtFirst, 'more change')}</summary>
          <Sentences sentences={sentences.slice(shownAtFirst)} />
        </details>
      )}
    </li>
  );
}

function Sentences({ sentences }: { sentences: readonly string[] }) {
  return (
    <ul className="stack tight">
      {sentences.map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
    </ul>
  );
}
