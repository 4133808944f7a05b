import { meantBars, withMeantBar } from '#contract/log/meantBar.ts';
import type { Lift } from '#contract/records/lift.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { dateText } from '#contract/words/dateText.ts';
import { slipQuestion } from '#contract/words/unitSlipSentence.ts';
import { useSetWriter } from '#web/api/useSets.ts';
import { useUndo } from '#web/api/useUndo.ts';
import { useToast } from '#web/parts/Toast.tsx';
import { MeantBars } from '#web/setup/MeantBars.tsx';
import { givenAgain } from '#web/setup/setDraft.ts';

/** Sets that look as if their bars had been written down in another unit, to be put right, or said to be right, at one tap; nothing where there are none. */
export function SlippedSets(props: {
  lift: Lift;
  slips: StrengthEstimate['slips'];
  setsById: ReadonlyMap<string, LoggedSet>;
  /** Ids of bests written down by hand. */
  bestIds: ReadonlySet<string>;
}) {
  return props.slips.map((slip) => {
    const found = slip.ids.flatMap((id) => props.setsById.get(id) ?? []);
    const sets = found.filter(({ struckAt }) => struckAt === null);
    const logged = sets.filter(({ id }) => !props.bestIds.has(id));
    return sets.length === 0 ? null : (
      <SlipOfLog key={slip.looksLike} {...{ lift: props.lift, looksLike: slip.looksLike, sets, logged }} />
    );
  });
}

function SlipOfLog(props: {
  lift: Lift;
  looksLike: StrengthEstimate['slips'][number]['looksLike'];
  /** Oldest first, not empty; `logged`: without bests written down by hand. */
  sets: readonly LoggedSet[];
  logged: readonly LoggedSet[];
}) {
  const { lift, looksLike, sets, logged } = props;
  const say = useToast();
  const undo = useUndo();
  const writer = useSetWriter();
  const [firstOn, lastOn] = [sets[0]!.doneOn, sets.at(-1)!.doneOn];
  const question = slipQuestion({ lift, looksLike, setCount: sets.length, firstOn, lastOn }, '', dateText);
  const meant = meantWords[looksLike];
  const count = logged.length === 1 ? 'one set' : `${logged.length} sets`;
  const correct = async (become: (set: LoggedSet) => LoggedSet | null, done: string) => {
    try {
      const seq = await writer.correctAll(
        logged.map((set) => {
          const corrected = become(set);
          return { id: set.id, set: corrected && givenAgain(corrected) };
        }),
      );
      say(`${done} ${count}.`, () => undo(seq));
    } catch (error) {
      say(error instanceof Error ? error.message : String(error));
    }
  };
  return (
    <section className="stack tight strength-slips" aria-label="Sets that look slipped">
      <p>
        <strong>{question}</strong> {sets.length === 1 ? 'It is' : 'They are'} kept out of the estimate.
      </p>
      <MeantBars bars={meantBars(sets, looksLike)} />
      {logged.length < sets.length && (
        <p className="small">
          {sets.length - logged.length === 1
            ? 'One of them is under Bests and is corrected there.'
            : `${sets.length - logged.length} of them are under Bests and are corrected there.`}
        </p>
      )}
      {logged.length > 0 && (
        <div className="row screen-only">
          <button
            type="button"
            disabled={writer.busy}
            onClick={() => void correct((set) => withMeantBar(set, looksLike), `${meant.done} in`)}
          >
            {meant.word} in {count}
          </button>
          <button
            type="button"
            disabled={writer.busy}
            onClick={() => void correct((set) => ({ ...set, barChecked: true }), 'Marked as right')}
          >
            {logged.length === 1 ? 'It is right' : 'They are right'}
          </button>
          <button type="button" disabled={writer.busy} onClick={() => void correct(() => null, 'Struck')}>
            Strike {logged.length === 1 ? 'it' : 'them'}
          </button>
        </div>
      )}
    </section>
  );
}

const meantWords = {
  pounds: { word: 'Turn pounds into kilograms', done: 'Turned pounds into kilograms' },
  tenfold: { word: 'Take a nought off', done: 'Took a nought off' },
};
