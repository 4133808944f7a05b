import type { SlipAsked, SlipTaking } from '#contract/log/slipAsked.ts';
import { dateText } from '#contract/words/dateText.ts';
import { slipQuestion } from '#contract/words/unitSlipSentence.ts';
import { Choice } from '#web/parts/Choice.tsx';
import { MeantBars } from '#web/setup/MeantBars.tsx';

/** What the coach chose for each slip, by its key. */
export type SlipTakings = Record<string, SlipTaking>;

/** Sets of a file that look slipped, lifter by lifter, each with what can be done about it. */
export function SlipsFound(props: {
  slips: readonly SlipAsked[];
  takings: SlipTakings;
  onChoose: (takings: SlipTakings) => void;
}) {
  const { slips, takings, onChoose } = props;
  if (slips.length === 0) return null;
  return (
    <section className="stack" aria-label="Sets that look slipped">
      <h3>Look at these first</h3>
      {slips.map((slip) => (
        <div key={slip.key} className="stack tight">
          <p>{slipQuestion(slip, slip.lifter, dateText)}</p>
          <MeantBars bars={slip.bars} />
          <Choice
            label={`Take ${slip.setCount === 1 ? 'it' : 'them'}`}
            showLabel
            options={[
              { value: 'asMeant', word: meantWord[slip.looksLike] },
              { value: 'checked', word: 'as right' },
              { value: 'asWritten', word: 'look later' },
              { value: 'leftOut', word: 'leave out' },
            ]}
            value={takings[slip.key] ?? 'asWritten'}
            onChange={(taking) => onChoose({ ...takings, [slip.key]: taking })}
          />
        </div>
      ))}
      <p className="small quiet">
        Marked as right or left for later, bars stay as they are written. The estimate of strength uses those
        that are right; the others stay out of it, and the lifter's page asks about them.
      </p>
    </section>
  );
}

const meantWord: Record<SlipAsked['looksLike'], string> = {
  pounds: 'as pounds',
  tenfold: 'as a tenth',
};
