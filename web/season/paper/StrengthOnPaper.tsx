import { pxPerMm } from '#contract/paper/paperSize.ts';
import type { Lift } from '#contract/records/lift.ts';
import { capital } from '#contract/words/capital.ts';
import { liftWord, liftWords } from '#contract/words/liftWords.ts';
import { SeasonStrength, SeasonStrengthAxis } from '#web/charts/SeasonStrength.tsx';
import { strengthSpan } from '#web/charts/SeasonStrengthScene.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import type { LifterSeason, SeasonView } from '../SeasonView.ts';
import type { SeasonScene } from '../seasonRows.ts';
import { strengthInSeason, weeksOfScene } from '../strengthInSeason.ts';
import { useKnownStrength } from '../useKnownStrength.ts';

const axisMm = 14;
const gapMm = 3;
const highMm = 21;

/** The maximum of each lift over the season, beside each other; a lift of which nothing is known says so. */
export function StrengthOnPaper(props: {
  season: SeasonView;
  of: LifterSeason;
  scene: SeasonScene;
  wideMm: number;
}) {
  const eachMm = (props.wideMm - gapMm * (liftWords.length - 1)) / liftWords.length;
  return (
    <div className="season-paper-strength">
      {liftWords.map(({ value }) => (
        <OfLift key={value} {...props} lift={value} wideMm={eachMm} />
      ))}
    </div>
  );
}

function OfLift(props: {
  season: SeasonView;
  of: LifterSeason;
  scene: SeasonScene;
  lift: Lift;
  wideMm: number;
}) {
  const { season, of, scene, lift, wideMm } = props;
  const { mass } = useUnits();
  const known = useKnownStrength(season, of, lift);
  const drawn = strengthInSeason(known, weeksOfScene(scene, { season, of, lift, mass }));
  const weeks = scene.mondays.length;
  const heightPx = highMm * pxPerMm;
  const frame = {
    weekPx: ((wideMm - axisMm) * pxPerMm) / weeks,
    weeks,
    rowPx: heightPx,
    todayAt: scene.todayAt,
  };
  return (
    <div>
      <p>{capital(liftWord(lift))}</p>
      {strengthSpan(drawn) === null ? (
        <p className="fine">Nothing is known of it.</p>
      ) : (
        <div className="season-paper-picture" style={{ gridTemplateColumns: `${axisMm}mm 1fr` }}>
          <SeasonStrengthAxis scene={drawn} widthPx={axisMm * pxPerMm} heightPx={heightPx} />
          <SeasonStrength scene={drawn} frame={frame} />
        </div>
      )}
    </div>
  );
}
