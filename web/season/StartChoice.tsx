import { useMemo } from 'react';
import { isSameStart } from '#contract/day/isSameStart.ts';
import type { GroupAsked } from '#contract/records/method.ts';
import type { PlannedByHand } from '#contract/records/season.ts';
import type { GroupOfLifter } from '#contract/season/seasonPlan.ts';
import { daysSince, startSentences } from '#contract/season/startSentences.ts';
import { shortDate } from '#contract/words/dayWords.ts';
import { proposeStart } from '#reckon/season/proposeStart.ts';
import { useClub } from '#web/api/useClub.ts';
import { useEvidence } from '#web/api/useEvidence.ts';
import { useLifterSets } from '#web/api/useLifterSets.ts';
import { useRecords } from '#web/api/useRecords.ts';
import type { LifterSeason, SeasonView } from './SeasonView.ts';

/** The starts that a group rotates through, when each was done last, and which one might be done by this lifter; what the coach chose stands. */
export function StartChoice(props: {
  date: string;
  group: GroupOfLifter;
  method: GroupAsked;
  hand: PlannedByHand | null;
  season: SeasonView;
  of: LifterSeason;
}) {
  const { date, group, method, hand, season, of } = props;
  const club = useClub();
  const records = useRecords('plannedByHand');
  const { data: sets } = useLifterSets(of.lifter.id);
  const { report, error } = useEvidence('');
  const proposal = useMemo(() => {
    if (sets === undefined) return null;
    const planned = of.plan.weeks.flatMap(({ days }) =>
      days.flatMap((day) =>
        day.date === date
          ? []
          : day.groups
              .filter(({ askedId }) => askedId === method.id)
              .map(({ start }) => ({ date: day.date, start })),
      ),
    );
    const asked = {
      lifterId: of.lifter.id,
      date,
      group: method,
      hasBands: (group.bandShare ?? 0) > 0,
      planned,
      ownBoxes: of.ownBoxes,
    };
    const evidence = report?.answers.find(({ question }) => question === 'variants')?.lines ?? [];
    const bests = club.best.filter(({ lifterId }) => lifterId === of.lifter.id);
    return proposeStart(club, asked, { sets, bests, evidence });
  }, [club, sets, report, of, date, group, method]);
  if (proposal === null) return <p className="small quiet">The log of this lifter is being read.</p>;
  const chosen = hand?.instead?.start ?? null;
  const { proposed } = proposal;
  const isOther = proposed !== null && !isSameStart(proposed.start, group.start);
  const take = async () => {
    if (proposed === null) return;
    const own = hand !== null && hand.lifterId !== null ? hand : null;
    const instead = { aim: null, blocks: null, ...hand?.instead, start: proposed.variant.start };
    const called = `${method.title} on ${shortDate(date)}`;
    const wanted = {
      seasonId: season.id,
      lifterId: of.lifter.id,
      date,
      askedId: method.id,
      instead,
      note: hand?.note ?? '',
    };
    await (own ? records.update({ ...wanted, id: own.id }, called) : records.create(wanted, called));
  };
  return (
    <div className="stack tight small season-starts">
      <ul className="stack tight" aria-label={`Starts of ${method.title}`}>
        {proposal.starts.map(({ variant, start, lastDoneOn, hasRested }) => (
          <li key={variant.id}>
            {isSameStart(start, group.start) ? <strong>{variant.title}</strong> : variant.title}:{' '}
            {daysSince(lastDoneOn, date)}
            {!hasRested && ', has not rested long enough'}
          </li>
        ))}
      </ul>
      {chosen !== null && <p>You chose the start of this day, and it stands.</p>}
      {startSentences(proposal, date).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {error !== null ? (
        <p>{error.message}</p>
      ) : (
        report === undefined && <p className="quiet">What carried over is still being worked out.</p>
      )}
      {proposed !== null && isOther && (
        <button type="button" disabled={records.busy} onClick={() => void take()}>
          Set {proposed.variant.title} for {of.lifter.name}
        </button>
      )}
    </div>
  );
}
