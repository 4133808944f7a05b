import { type ReactNode, useDeferredValue, useMemo } from 'react';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { LoadPoint } from '#core/load/loadCurve.ts';
import { maxBar } from '#core/rep/maxBar.ts';
import { simulateRep } from '#core/rep/simulateRep.ts';
import { shareOfCapability } from '#core/rep/strengthCurve.ts';
import { fromSi } from '#core/units/units.ts';
import { Known } from '#web/parts/Known.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { written } from '#web/parts/written.ts';
import { strengthWords } from './strengthWords.ts';
import type { TrialResult } from './trialResult.ts';
import type { TrialStrength } from './trialStrength.ts';

/** Two-sided 95 % of the normal distribution. */
const normal95 = 1.959963984540054;

/** The numbers of a trial: what lies on the lifter at both ends, its parts, speed, and the heaviest bar of this setup. */
export function TrialNumbers({ club, result }: { club: ClubRecords; result: TrialResult }) {
  const { curve, strength } = result;
  const bottom = curve.points[0];
  const lockout = curve.points[curve.points.length - 1];
  if (!bottom || !lockout) return null;
  return (
    <dl className="trial-numbers">
      <End word="at the bottom" point={bottom} result={result} />
      <End word="at lockout" point={lockout} result={result} />
      {strength && <Speed result={result} strength={strength} club={club} />}
      {strength && <Heaviest result={result} club={club} />}
    </dl>
  );
}

function Number({ word, children }: { word: string; children: ReactNode }) {
  return (
    <div>
      <dt className="small quiet">{word}</dt>
      <dd>{children}</dd>
    </div>
  );
}

function End({ word, point, result }: { word: string; point: LoadPoint; result: TrialResult }) {
  const units = useUnits();
  const { load, strength } = result;
  const mass = (forceN: number) => fromSi(forceN / load.gravityMps2, units.mass);
  const measured = load.bands.every((band) => band.curves.loading.known === 'measured');
  const spread = normal95 * mass(point.sdN);
  const hasBands = load.bands.length + load.hungBands.length > 0;
  const parts = [
    `${written(load.barKg, units.mass)} bar`,
    point.chainN > 0 && `+ ${mass(point.chainN).toFixed(0)} chain`,
    hasBands && `${point.bandN < 0 ? '−' : '+'} ${Math.abs(mass(point.bandN)).toFixed(0)} band`,
    spread >= 0.5 && `± ${spread.toFixed(0)}`,
  ].filter(Boolean);
  return (
    <Number word={word}>
      <Known
        value={mass(point.totalN).toFixed(0)}
        unit={units.mass}
        known={measured ? 'measured' : 'notMeasured'}
        why={
          measured
            ? undefined
            : 'A band here was never hung from a scale; its pull is a guess from its width. Measure it under Gear.'
        }
        size="lead"
      />
      <p className="small">{parts.join(' ')}</p>
      {strength && (
        <p className="small quiet">
          {(100 * shareOfCapability(point.totalN, strength.capability, point.zM, load.gravityMps2)).toFixed(
            0,
          )}{' '}
          % of strength
        </p>
      )}
    </Number>
  );
}

function Speed(props: { result: TrialResult; strength: TrialStrength; club: ClubRecords }) {
  const units = useUnits();
  const { result, strength, club } = props;
  const { load, rep } = result;
  const range = useMemo(() => {
    const speedAt = (factor: number) =>
      simulateRep(load, {
        ...strength.capability,
        strengthN: strength.capability.strengthN * Math.exp(factor * normal95 * strength.strengthSdLn),
      });
    return [speedAt(-1), speedAt(1)].map((one) => (one.made ? one.meanSpeedMps.toFixed(2) : 'no lift'));
  }, [load, strength]);
  if (rep === null) return null;
  if (!rep.made) {
    return (
      <Number word="first rep">
        <span className="numeral lead stop">no lift</span>
      </Number>
    );
  }
  return (
    <Number word="mean speed, first rep">
      <Known
        value={rep.meanSpeedMps.toFixed(2)}
        unit="m/s"
        known="estimated"
        interval={range.join(' to ')}
        why={strengthWords(club, strength, units)}
        size="lead"
      />
      <p className="small">{rep.durationS.toFixed(1)} s to lockout</p>
    </Number>
  );
}

/** The heaviest bar that would go up with these bands; an estimate, since it rests on one best and a usual shape. */
function Heaviest({ result, club }: { result: TrialResult; club: ClubRecords }) {
  const units = useUnits();
  // Takes as long as a dozen reps: it may come a moment after the picture, so that dragging stays smooth.
  const { load, strength } = useDeferredValue(result);
  const heaviest = useMemo(() => strength && maxBar(load, strength.capability), [load, strength]);
  if (strength === null) return null;
  const spread = Math.exp(normal95 * strength.strengthSdLn);
  const mass = (kg: number) => fromSi(kg, units.mass).toFixed(0);
  return (
    <Number word="heaviest bar in this setup">
      {heaviest === null ? (
        <span className="numeral lead stop">none</span>
      ) : (
        <Known
          value={mass(heaviest.barKg)}
          unit={units.mass}
          known="estimated"
          interval={`${mass(heaviest.barKg / spread)} to ${mass(heaviest.barKg * spread)}`}
          why={strengthWords(club, strength, units)}
          size="lead"
        />
      )}
    </Number>
  );
}
