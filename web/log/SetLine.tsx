import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { liftWord } from '#contract/words/liftWords.ts';
import { useClub } from '#web/api/useClub.ts';
import { useSetWriter } from '#web/api/useSets.ts';
import { useToast } from '#web/parts/Toast.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import type { FormerLabels } from '#web/setup/onBarText.ts';
import { repsWords, seenWords, setupWords } from '#web/setup/setWords.ts';

/** One set of the log on a line, to be struck as a mistake and brought back. */
export function SetLine(props: {
  set: LoggedSet;
  before: LoggedSet | null;
  /** The place stands above already. */
  placeSaid: boolean;
  formerLabels: FormerLabels;
}) {
  const { set, before } = props;
  const club = useClub();
  const units = useUnits();
  const say = useToast();
  const writer = useSetWriter();
  const words = (one: LoggedSet) =>
    `${liftWord(one.lift)}, ${setupWords(club, one, units, props.formerLabels)}`;
  const alike = before !== null && words(before) === words(set);
  const seen = [
    seenWords(set),
    set.platform ? 'at a meet' : '',
    props.placeSaid ? '' : set.place,
    set.note,
  ].filter(Boolean);
  const struck = set.struckAt !== null;
  const fail = (error: Error) => say(error.message);
  const what = `set ${set.order}, ${repsWords(set, units)}`;
  const strike = async () => {
    await writer.strike(set.id);
    say(`Struck ${what}.`, () => {
      writer.restore(set.id).catch(fail);
    });
  };
  return (
    <li className={`set-line${struck ? ' struck' : ''}`}>
      <span className="quiet set-order">{set.order}</span>
      <span className="set-reps">{repsWords(set, units)}</span>
      <span className={alike ? 'quiet set-setup' : 'set-setup'}>{alike ? 'the same' : words(set)}</span>
      {seen.length > 0 && <span className="small quiet set-seen">{seen.join('; ')}</span>}
      <span className="set-act">
        {struck && <span className="mark">struck</span>}
        <button
          type="button"
          className="plain"
          disabled={writer.busy}
          aria-label={struck ? `Bring back ${what}` : `Strike ${what}`}
          onClick={() => void (struck ? writer.restore(set.id) : strike()).catch(fail)}
        >
          {struck ? 'Bring back' : 'Strike'}
        </button>
      </span>
    </li>
  );
}
