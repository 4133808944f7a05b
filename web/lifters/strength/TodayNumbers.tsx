import type { Belief, StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { counted } from '#contract/words/counted.ts';
import { dateText } from '#contract/words/dateText.ts';
import { equipmentWord } from '#contract/words/liftWords.ts';
import { narrowSentence } from '#contract/words/narrowSentence.ts';
import { fromSi } from '#core/units/units.ts';
import { Known } from '#web/parts/Known.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { newestWords } from './setWords.ts';

/** Today's maximum, raw and in the equipment that the log knows, and on how much it rests. */
export function TodayNumbers({ estimate }: { estimate: StrengthEstimate }) {
  const { mass, length } = useUnits();
  const { observations, maxKg, inEquipment, setCount, lastSetOn, bodyMassKg, bodyMassKnown, on } = estimate;
  const body = `${Math.round(fromSi(bodyMassKg, mass))} ${mass}`;
  const why = `Worked out for ${dateText(on)} from ${counted(setCount, 'set')}: straight weight, an average rested day, at ${body} of body mass${bodyMassKnown === 'measured' ? '' : ', which is assumed'}. ${middleWords(maxKg, mass)}`;
  const narrow = narrowSentence(maxKg);
  return (
    <div className="stack tight">
      <dl className="lifters-facts">
        <Maximum word="today's maximum, raw" belief={maxKg} why={why} />
        {inEquipment.map(({ equipment, maxKg: dressed }) => (
          <Maximum
            key={equipment}
            word={equipmentWord(equipment)}
            belief={dressed}
            why={`What the log knows of this lifter in ${equipmentWord(equipment)}. ${middleWords(dressed, mass)}`}
          />
        ))}
      </dl>
      <p className="small quiet">
        {setCount === 0
          ? 'No set is logged yet: this is what is usual at this body mass, and the range is as wide as people differ.'
          : `Rests on ${counted(setCount, 'set')}${lastSetOn === null ? '' : `, the newest from ${dateText(lastSetOn)}`}. ${newestWords(observations, { mass, length })}`}
      </p>
      {narrow !== null && <p className="small quiet">{narrow}</p>}
    </div>
  );
}

function Maximum({ word, belief, why }: { word: string; belief: Belief; why: string }) {
  const { mass } = useUnits();
  const whole = (kg: number) => Math.round(fromSi(kg, mass));
  return (
    <div>
      <dt className="small quiet">{word}</dt>
      <dd>
        <Known
          value={`${whole(belief.median)}`}
          unit={mass}
          known="estimated"
          interval={`${whole(belief.low95)} to ${whole(belief.high95)}`}
          why={why}
          size="lead"
        />
      </dd>
    </div>
  );
}

function middleWords({ low80, high80 }: Belief, mass: 'kg' | 'lb'): string {
  const whole = (kg: number) => Math.round(fromSi(kg, mass));
  return `It lies between ${whole(low80)} and ${whole(high80)} ${mass} 80 % of the time.`;
}
