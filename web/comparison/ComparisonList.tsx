import { Link } from 'wouter';
import { dateText } from '#contract/words/dateText.ts';
import { outcomeText } from '#contract/words/outcomeText.ts';
import { useClub, useClubSettings } from '#web/api/useClub.ts';
import { EmptyState } from '#web/parts/EmptyState.tsx';
import { localToday } from '#web/parts/localToday.ts';
import { standingText } from './standingText.ts';

/** The comparisons of the club, the newest first. */
export function ComparisonList() {
  const { comparison } = useClub();
  const today = localToday(useClubSettings().timeZone);
  const newestFirst = comparison.toSorted((a, b) =>
    b.planDocument.startsOn.localeCompare(a.planDocument.startsOn),
  );
  const plan = (
    <Link href="/new" className="button strong">
      Plan a comparison
    </Link>
  );
  return (
    <div className="stack loose">
      <div className="row ends base">
        <h1>Two ways compared</h1>
        {comparison.length > 0 && plan}
      </div>
      <p>
        <Link href="~/season">Season</Link>
      </p>
      {comparison.length === 0 ? (
        <EmptyState
          title="No comparison is planned yet"
          steps={[
            'Two crews train by different waves, and afterwards one is better. You can only tell whether it was the wave if lots decided beforehand who got which.',
            'Choose two ways that you would give to each of these lifters anyway, and say what you will look at: strength, a gym setup, or the platform.',
            'You see at once how large a difference must be to show, with so many lifters over so many weeks. With eight it is often more than anybody gains.',
            'Similar lifters are paired, and a coin says who of each pair gets which. Minors are never drawn, and anybody can be taken out at any time.',
          ]}
          action={plan}
        />
      ) : (
        <ul className="stack">
          {newestFirst.map(({ id, title, lift, family, planDocument: of }) => (
            <li key={id}>
              <strong>
                <Link href={`/${id}`}>{title}</Link>
              </strong>
              : "{of.ways[0]}" or "{of.ways[1]}", {outcomeText(of.outcome, lift, family)}.{' '}
              <span className="quiet">
                {dateText(of.startsOn)} to {dateText(of.endsOn)}; {standingText(of, today)}.
              </span>
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}
