import { Link } from 'wouter';
import type { LiftProjection } from '#contract/projection/liftProjection.ts';
import { capital } from '#contract/words/capital.ts';
import { dateText } from '#contract/words/dateText.ts';
import { equipmentWord, liftWord } from '#contract/words/liftWords.ts';
import { percent } from '#contract/words/percent.ts';
import { signedText } from '#contract/words/signedText.ts';
import { written } from '#contract/words/written.ts';
import { fromSi } from '#core/units/units.ts';
import { DataTable } from '#web/parts/DataTable.tsx';
import { MeasuredWidth } from '#web/parts/MeasuredWidth.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { ChanceCurve } from './ChanceCurve.tsx';

/** The table asks for the heaviest bar that is made so often. */
const ASKED = [0.95, 0.9, 0.8, 0.7, 0.5, 0.3, 0.1];

/** One lift on the day of the meet: the sentence, chances by bar, what it rests on, cautions. */
export function MeetDayView({ projection }: { projection: LiftProjection }) {
  const { lift, on, equipment, maxKg, chances, bestSoFarKg, rule } = projection;
  const { mass } = useUnits();
  const whole = (kg: number) => `${Math.round(fromSi(kg, mass))}`;
  const rows = barsToAskFor(chances);
  const name = `${capital(liftWord(lift))} on ${dateText(on)}, ${equipmentWord(equipment)}`;
  return (
    <>
      <p className="projection-said">
        {name}: the best single of the day is most likely about{' '}
        <strong>
          {whole(maxKg.median)}&nbsp;{mass}
        </strong>
        . It lies between {whole(maxKg.low80)} and {whole(maxKg.high80)}&nbsp;{mass} 80 % of the time, and
        between {whole(maxKg.low95)} and {whole(maxKg.high95)}&nbsp;{mass} 95 % of the time.
      </p>
      <div className="projection-both">
        <MeasuredWidth>
          {(widthPx) => (
            <ChanceCurve
              label={`Chance that a bar is made. ${name}`}
              chances={chances}
              marks={[
                ...(bestSoFarKg === null ? [] : [{ barKg: bestSoFarKg, word: 'best so far' }]),
                ...(rule === null ? [] : [{ barKg: rule.barKg, word: 'by the rule of gym gain' }]),
              ]}
              unit={mass}
              widthPx={widthPx}
            />
          )}
        </MeasuredWidth>
        <DataTable
          label="Chance by bar"
          columns={[
            {
              key: 'bar',
              head: 'Heaviest bar',
              numeric: true,
              cell: ({ barKg }) => `${written(barKg, mass, 1)} ${mass}`,
            },
            { key: 'chance', head: 'is made', numeric: true, cell: ({ chance }) => timesText(chance) },
          ]}
          rows={rows}
          keyOf={({ barKg }) => `${barKg}`}
          nameOf={({ barKg }) => written(barKg, mass)}
        />
      </div>
      <RestsOn projection={projection} />
      <p className="caution small">
        <strong>An estimate is not permission.</strong> Attempts are for the lifter and a qualified coach to
        choose, by what warm-up and opener show. Cutting body mass for a class is no part of this: nothing
        here says what it does to strength or health.
      </p>
    </>
  );
}

function RestsOn({ projection }: { projection: LiftProjection }) {
  const { from, on, platformShare, meets, rule, taperShare, bodyMassKg } = projection;
  const { mass } = useUnits();
  const days = Math.round((Date.parse(on) - Date.parse(from)) / 86_400_000);
  return (
    <ul className="small quiet projection-rests">
      <li>
        From the log up to {dateText(from)}, carried {days} {days === 1 ? 'day' : 'days'} forward as this
        lifter has been changing, at {written(bodyMassKg, mass, 1)} {mass} of body mass.
      </li>
      <li>
        What the platform adds to an average gym day: {signedFigure(platformShare.median)} %; 80 % of the time
        it is {signedFigure(platformShare.low80)} to {signedFigure(platformShare.high80)} %.{' '}
        {meets === 0
          ? 'No meet of this lifter is known, so this is what others in the club show.'
          : `From ${meets} ${meets === 1 ? 'meet' : 'meets'} of this lifter, and from what others in the club show.`}{' '}
        The usual last weeks before a meet are already counted in it.
      </li>
      <li>
        {taperShare === 0
          ? 'Taper: nothing is added for it.'
          : `Taper: ${percent(taperShare)} is added. That is your assumption.`}{' '}
        Surveys say how powerlifters taper (7 to 10 days, volume cut by 41 to 50 %: Travis et al. 2021), not
        how much it adds to a maximum.
      </li>
      <li>
        {rule === null
          ? "The trade's rule, that a kilogram more at one exact gym setup is a kilogram more on the platform, has nothing to go by: it needs a meet in this equipment, and one setup done hard on two days before it and on two days since."
          : `By the trade's rule, that a kilogram more at one exact gym setup is a kilogram more on the platform: ${written(rule.barKg, mass)} ${mass}, from ${written(rule.lastMeetKg, mass)} ${mass} on ${dateText(rule.lastMeetOn)} and ${written(rule.gainKg, mass)} ${mass} gained since. A hypothesis.`}{' '}
        <Link href="~/evidence/backtest">How well estimate and rule forecast past meets</Link>.
      </li>
    </ul>
  );
}

function signedFigure(share: number): string {
  return signedText(100 * share, { decimals: 1, plus: true });
}

/** For each chance asked for the heaviest bar that still has it; each bar once. */
function barsToAskFor(chances: LiftProjection['chances']): LiftProjection['chances'] {
  const bars = ASKED.flatMap((asked) => chances.findLast(({ chance }) => chance >= asked) ?? []);
  return bars.filter((bar, i) => bar.barKg !== bars[i - 1]?.barKg);
}

function timesText(chance: number): string {
  return `${Math.round(100 * chance)} %`;
}
