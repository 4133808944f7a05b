import { liftWord, startText } from '#contract/words/liftWords.ts';
import { oneDecimal, written } from '#contract/words/written.ts';
import { gravityOf } from '#reckon/gear/gravityOf.ts';
import { useClub } from '#web/api/useClub.ts';
import { useEstimates } from '#web/api/useEstimates.ts';
import { HeightLegend } from '#web/charts/HeightLegend.tsx';
import { HeightPicture } from '#web/charts/HeightPicture.tsx';
import { chartUnits } from '#web/parts/chartUnits.ts';
import { MeasuredWidth } from '#web/parts/MeasuredWidth.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { onBarText } from '#web/setup/onBarText.ts';
import { type LifterRecords, straightBest } from '../lifterRecords.ts';
import type { Trial } from './Trial.ts';
import { TrialChoices } from './TrialChoices.tsx';
import { TrialReading } from './TrialReading.tsx';
import { trialGrips } from './trialGrips.ts';
import { trialResult } from './trialResult.ts';
import { useTrials } from './useTrials.ts';

/** "What would this setup be for this lifter", live while one drags; a second lifter or setup beside it. */
export function TrialSection({ id, own, today }: { id: string; own: LifterRecords; today: string }) {
  const club = useClub();
  const units = useUnits();
  const gravityMps2 = gravityOf(club);
  const [{ trial, other }, change] = useTrials(own, club);
  const setTrial = (next: Trial) => change({ trial: next });
  const setOther = (next: Trial | null) => change({ other: next });
  const ofOwn = useEstimates(own.lifter.id);
  const ofOther = useEstimates(other?.lifterId ?? own.lifter.id);
  const estimates = [...ofOwn.estimates, ...ofOther.estimates];
  const trials = other === null ? [trial] : [trial, other];
  const [result = '', otherResult = ''] = trials.map((one) =>
    trialResult(club, one, titleOf(one), today, estimates),
  );
  const drawn = [
    { trial, result, onChange: setTrial },
    { trial: other ?? trial, result: otherResult, onChange: setOther },
  ].flatMap(({ result: one, ...rest }) => (typeof one === 'string' ? [] : { ...rest, scene: one.scene }));
  const scenes = drawn.map(({ scene }) => scene);
  const toKg = Math.max(60, ...trials.map((one) => 1.15 * (bestKg(one) ?? 150)));
  const lifters = club.lifter
    .map(({ id, name, statureM }) => ({
      value: id,
      word: statureM === null ? name : `${name}, ${written(statureM, units.length)} ${units.length}`,
    }))
    .sort((a, b) => a.word.localeCompare(b.word));
  return (
    <section id={id} className="stack ruled">
      <div className="row ends">
        <h2>What would this setup be?</h2>
        {other === null ? (
          <div className="row">
            <button type="button" onClick={() => setOther({ ...trial, lifterId: mostUnlike(own) })}>
              Beside another lifter
            </button>
            <button type="button" onClick={() => setOther(trial)}>
              Beside another setup
            </button>
          </div>
        ) : (
          <button type="button" onClick={() => setOther(null)}>
            Only {own.lifter.name}
          </button>
        )}
      </div>
      <HeightLegend
        lifts={scenes.some(({ load }) => load.points.some(({ bandN }) => bandN < 0))}
        moves={trials.some(({ start }) => start.way === 'box') ? 'drag bar and box' : 'drag the bar'}
      />
      <div className={other === null ? 'trial one' : 'trial two'}>
        {scenes.length > 0 && (
          <div className="trial-picture">
            <MeasuredWidth>
              {(widthPx) => (
                <HeightPicture
                  scenes={scenes}
                  units={chartUnits(units, gravityMps2)}
                  widthPx={widthPx}
                  heightPx={widthPx < 480 ? 220 : 400}
                  grips={drawn.map(({ trial: one, onChange }) =>
                    trialGrips({ trial: one, name: nameOf(one), toKg, gravityMps2, units, onChange }),
                  )}
                />
              )}
            </MeasuredWidth>
          </div>
        )}
        <TrialReading club={club} trial={trial} result={result} toKg={toKg} onChange={setTrial} />
        <TrialChoices club={club} trial={trial} lifters={null} onChange={setTrial} />
        {other && (
          <>
            <TrialReading club={club} trial={other} result={otherResult} toKg={toKg} onChange={setOther} />
            <TrialChoices club={club} trial={other} lifters={lifters} onChange={setOther} />
          </>
        )}
      </div>
      <p className="small quiet">Speeds are for a first, rested rep; fatigue within a set is not counted.</p>
    </section>
  );

  function titleOf(one: Trial): string {
    const bar = `${oneDecimal(one.barKg, units.mass)} ${units.mass}`;
    const on = onBarText(one, club);
    return `${nameOf(one)}: ${liftWord(one.lift)}, ${startText(one.lift, one.start, units.length)}, ${bar}${on && ` with ${on}`}`;
  }

  function nameOf({ lifterId }: Trial): string {
    return club.lifter.find(({ id }) => id === lifterId)?.name ?? '';
  }

  function bestKg(one: Trial): number | null {
    const bests = club.best.filter((best) => best.lifterId === one.lifterId);
    return straightBest(bests, one.lift)?.setup.barKg ?? null;
  }

  /** The lifter whose stature differs most: where the same bands differ most. */
  function mostUnlike({ lifter }: LifterRecords): string {
    const away = (statureM: number | null) =>
      statureM === null ? 0 : Math.abs(statureM - (lifter.statureM ?? 1.7));
    const others = club.lifter.filter(({ id, leftOn }) => id !== lifter.id && leftOn === null);
    return others.sort((a, b) => away(b.statureM) - away(a.statureM))[0]?.id ?? lifter.id;
  }
}
