import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { dateText } from '#contract/words/dateText.ts';
import { useClub } from '#web/api/useClub.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { repsWords, seenWords, setupWords } from '#web/setup/setWords.ts';
import { isDoubted, movedWords, straightWords, surpriseWords } from './setWords.ts';

/** The set that was tapped in the picture: what it was, what it stands for, how well it was believed. */
export function ChosenSet(props: {
  observation: StrengthEstimate['observations'][number] | undefined;
  set: LoggedSet | undefined;
}) {
  const { observation, set } = props;
  const club = useClub();
  const units = useUnits();
  if (observation === undefined || set === undefined) {
    return (
      <p className="small quiet strength-chosen screen-only">
        Tap a mark, or walk the marks with the arrow keys, to read what set it was.
      </p>
    );
  }
  const seen = seenWords(set);
  const surprise = surpriseWords(observation);
  return (
    <div className="strength-chosen">
      <p>
        <strong>{repsWords(set, units)}</strong>, {setupWords(club, set, units)}{' '}
        <span className="quiet">
          · {dateText(set.doneOn)}
          {set.platform && (set.place ? `, meet, ${set.place}` : ', meet')}
        </span>
      </p>
      {seen && <p className="small">{seen[0]?.toUpperCase() + seen.slice(1)}.</p>}
      <p className="small">
        Stands for {straightWords(observation, units)} straight:{' '}
        <span className={isDoubted(observation) ? 'stop' : ''}>{surprise}</span>;{' '}
        {movedWords(observation, units)}.
      </p>
      {set.note !== '' && <p className="small quiet">{set.note}</p>}
    </div>
  );
}
