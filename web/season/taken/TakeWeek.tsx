import { Link } from 'wouter';
import { leftAloneSentence, type WeekTaking } from '#contract/season/weekTaking.ts';
import { counted } from '#contract/words/counted.ts';
import { shortDate } from '#contract/words/dayWords.ts';
import { useTakeWeek, useWeekTaking } from '#web/api/useSeason.ts';

/** What of the open week stands on the Day screen, and the button that puts it there for everybody of the season. */
export function TakeWeek({ seasonId, monday }: { seasonId: string; monday: string }) {
  const { data: taking } = useWeekTaking(seasonId, monday);
  const take = useTakeWeek(seasonId, monday);
  if (taking === undefined) return <p className="small quiet">Looking at the training days.</p>;
  const todo = taking.days.filter(({ groups }) => groups.some(({ what }) => what !== 'same'));
  const there = taking.days.filter(({ dayId }) => dayId !== null);
  return (
    <section className="stack tight screen-only" aria-label="On the Day screen">
      {todo.length > 0 && (
        <div className="row">
          <button type="button" className="strong" disabled={take.isPending} onClick={() => take.mutate()}>
            {there.length === 0 ? 'Put this week on the Day screen' : 'Bring those days up to the plan'}
          </button>
          <span>{willDo(todo)}</span>
        </div>
      )}
      {there.length > 0 && (
        <p>
          On the Day screen:{' '}
          {there.map(({ dayId, date, title }, at) => (
            <span key={date}>
              {at > 0 && ', '}
              <Link href={`~/day/${dayId}`}>
                {shortDate(date)} {title}
              </Link>
            </span>
          ))}
          .
        </p>
      )}
      {taking.left.map((one) => {
        const sentence = leftAloneSentence(one);
        return (
          <p key={sentence} className="small">
            {sentence}
          </p>
        );
      })}
      {taking.left.some(({ why }) => why === 'noRack') && (
        <p className="small">
          <Link href="~/gear/racks">Racks</Link>
        </p>
      )}
      {take.error && (
        <p className="stop" role="alert">
          {take.error.message}
        </p>
      )}
    </section>
  );
}

/** "4 days with 9 groups, for 8 lifters." */
function willDo(days: WeekTaking['days']): string {
  const groups = days.flatMap((day) => day.groups).filter(({ what }) => what !== 'same');
  const lifters = new Set(groups.flatMap(({ lifterIds }) => lifterIds));
  return `${counted(days.length, 'day')} with ${counted(groups.length, 'group')}, for ${counted(lifters.size, 'lifter')} of this season.`;
}
