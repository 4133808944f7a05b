import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { stallOf } from '#core/strength/stall.ts';
import { recentWork } from '#reckon/log/recentWork.ts';
import { stallSentences } from '#reckon/log/stallSentences.ts';
import { useClub } from '#web/api/useClub.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { setupWords } from '#web/setup/setWords.ts';

/** States a stall with what changed and what did not; nothing where strength rose or the log cannot tell. */
export function StallNote({ estimate, sets }: { estimate: StrengthEstimate; sets: readonly LoggedSet[] }) {
  const club = useClub();
  const units = useUnits();
  const stall = stallOf(estimate.rise);
  if (stall === null) return null;
  const work = recentWork(sets, estimate.lift, estimate.on, stall.weeks);
  // "box 33 cm" beside "box 33 cm with 13-A" would not say that it is another one.
  const textOf = (set: LoggedSet) => {
    const isStraight = set.setup.bands.length + set.setup.chains.length === 0;
    return `${setupWords(club, set, units)}${isStraight ? ' with straight weight' : ''}`;
  };
  const [first, ...rest] = stallSentences(stall, work, textOf);
  return (
    <div className="strength-stall">
      <p>
        <strong>{first}</strong>
      </p>
      {rest.length > 0 && <p>{rest.join(' ')}</p>}
    </div>
  );
}
