import { type ReactNode, useDeferredValue, useMemo } from 'react';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { KnownHow } from '#contract/records/knownHow.ts';
import { percent } from '#contract/words/percent.ts';
import { oneDecimal } from '#contract/words/written.ts';
import type { ExplainedForce } from '#core/day/Explanation.ts';
import { compileLoad } from '#core/load/compileLoad.ts';
import { NORMAL_95 } from '#core/numeric/normal.ts';
import { expectedRep } from '#core/rep/expectedSpeed.ts';
import { maxBar } from '#core/rep/maxBar.ts';
import { fromSi } from '#core/units/units.ts';
import { knownOfEnds } from '#reckon/lifter/knownOfEnds.ts';
import { Known } from '#web/parts/Known.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { strengthWords } from './strengthWords.ts';
import type { TrialResult } from './trialResult.ts';

/** The numbers of a trial: what lies on the lifter at both ends, its parts, speed, and the heaviest bar of this setup. */
export function TrialNumbers({ club, result }: { club: ClubRecords; result: TrialResult }) {
  const { bottom, lockout, shares } = result.explanation;
  return (
    <dl className="trial-numbers">
      <End word="at the bottom" force={bottom} share={shares[0]?.share} result={result} />
      <End word="at lockout" force={lockout} share={shares.at(-1)?.share} result={result} />
      <Speed result={result} club={club} />
      <Heaviest result={result} club={club} />
    </dl>
  );
}

function Figure({ word, children }: { word: string; children: ReactNode }) {
  return (
    <div>
      <dt className="small quiet">{word}</dt>
      <dd>{children}</dd>
    </div>
  );
}

function End(props: { word: string; force: ExplainedForce; share: number | undefined; result: TrialResult }) {
  const { force, share, result } = props;
  const units = useUnits();
  const { load, heights, bandsMeasured } = result;
  const known = knownOfEnds(load, heights, bandsMeasured);
  const mass = (forceN: number) => fromSi(forceN / load.gravityMps2, units.mass);
  const spread = mass(force.high95N - force.totalN);
  const parts = [
    `${oneDecimal(load.barKg, units.mass)} bar`,
    force.chainN > 0 && `+ ${mass(force.chainN).toFixed(0)} chain`,
    load.bands.length + load.hungBands.length > 0 &&
      `${force.bandN < 0 ? '−' : '+'} ${Math.abs(mass(force.bandN)).toFixed(0)} band`,
    spread >= 0.5 && `± ${spread.toFixed(0)}`,
  ].filter(Boolean);
  return (
    <Figure word={props.word}>
      <Known
        value={mass(force.totalN).toFixed(0)}
        unit={units.mass}
        known={known}
        why={
          bandsMeasured
            ? heightsWhy[known]
            : 'A band here was never hung from a scale; its pull is a guess from its width. Measure it under Gear.'
        }
        size="lead"
      />
      <p className="small">{parts.join(' ')}</p>
      {share !== undefined && Number.isFinite(share) && (
        <p className="small quiet">{percent(share)} of strength there</p>
      )}
    </Figure>
  );
}

const heightsWhy: Partial<Record<KnownHow, string>> = {
  estimated:
    'The bar heights are estimated, and how hard bands and chains pull depends on height. Measure them with a tape.',
  assumed:
    'The bar heights are assumed, and how hard bands and chains pull depends on height. Measure them with a tape.',
};

function Speed({ result, club }: { result: TrialResult; club: ClubRecords }) {
  const units = useUnits();
  const { firstRep } = result.explanation;
  // The range takes two more reps: it may come a moment after the picture, so that dragging stays smooth.
  const { load, capability, strength } = useDeferredValue(result);
  const range = useMemo(() => {
    const compiled = compileLoad(load);
    const speedAt = (sd: number) => {
      const strengthN = capability.strengthN * Math.exp(sd * strength.strengthSdLn);
      const rep = expectedRep(compiled, { ...capability, strengthN }, 0, strength.speedCorrection);
      return rep.made ? rep.meanSpeedMps.toFixed(2) : 'no lift';
    };
    return `${speedAt(-NORMAL_95)} to ${speedAt(NORMAL_95)}`;
  }, [load, capability, strength]);
  if (!firstRep.made) {
    return (
      <Figure word="first rep">
        <span className="numeral lead stop">no lift</span>
      </Figure>
    );
  }
  return (
    <Figure word="mean speed, first rep">
      <Known
        value={firstRep.meanSpeedMps.toFixed(2)}
        unit="m/s"
        known={strength.known}
        interval={range}
        why={strengthWords(club, strength, units)}
        size="lead"
      />
      <p className="small">{firstRep.durationS.toFixed(1)} s to lockout</p>
    </Figure>
  );
}

/** The heaviest bar that would go up with these bands; it rests on one best and a usual shape. */
function Heaviest({ result, club }: { result: TrialResult; club: ClubRecords }) {
  const units = useUnits();
  const { load, capability, strength } = useDeferredValue(result);
  const heaviest = useMemo(() => maxBar(load, capability), [load, capability]);
  const spread = Math.exp(NORMAL_95 * strength.strengthSdLn);
  const mass = (kg: number) => fromSi(kg, units.mass).toFixed(0);
  return (
    <Figure word="heaviest bar in this setup">
      {heaviest === null ? (
        <span className="numeral lead stop">none</span>
      ) : (
        <Known
          value={mass(heaviest.barKg)}
          unit={units.mass}
          known={strength.known}
          interval={`${mass(heaviest.barKg / spread)} to ${mass(heaviest.barKg * spread)}`}
          why={strengthWords(club, strength, units)}
          size="lead"
        />
      )}
    </Figure>
  );
}
