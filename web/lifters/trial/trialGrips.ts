import { oneDecimal } from '#contract/words/written.ts';
import type { SceneGrips } from '#web/charts/OnePicture.tsx';
import type { Units } from '#web/parts/ViewUnits.tsx';
import { barStepKg, startReachM, startStepM, type Trial } from './Trial.ts';

/** What one takes hold of in a trial's picture: the same as its sliders, by the same steps. */
export function trialGrips(of: {
  trial: Trial;
  name: string;
  toKg: number;
  gravityMps2: number;
  units: Pick<Units, 'mass' | 'length'>;
  onChange: (trial: Trial) => void;
}): SceneGrips {
  const { trial, name, units, onChange } = of;
  const { start, barKg } = trial;
  const [min, max] = startReachM(start);
  return {
    gravityMps2: of.gravityMps2,
    bar: {
      label: `Bar of ${name}`,
      value: barKg,
      valueText: `${oneDecimal(barKg, units.mass)} ${units.mass}`,
      min: 0,
      max: Math.ceil(of.toKg),
      stops: barStepKg,
      onMove: (kg) => onChange({ ...trial, barKg: kg }),
    },
    box:
      start.way === 'box' && start.heightM !== null
        ? {
            label: `Box of ${name}`,
            value: start.heightM,
            valueText: `${oneDecimal(start.heightM, units.length)} ${units.length}`,
            min,
            max,
            stops: startStepM,
            onMove: (heightM) => onChange({ ...trial, start: { ...start, heightM } }),
          }
        : null,
  };
}
