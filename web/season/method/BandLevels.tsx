import { useRef } from 'react';
import { type AimInTurn, aimInTurn, mostOf } from '#contract/records/method.ts';
import { FigureField } from '#web/parts/FigureField.tsx';
import { AnotherButton } from './AnotherButton.tsx';
import { firstLevelTimesBodyMass, levelStepTimesBodyMass } from './firstEntries.ts';
import { limitsOf, placeIn, useMethodFields } from './methodFields.ts';
import { ShareFields } from './ShareFields.tsx';

type BarAndBands = Extract<AimInTurn, { by: 'barAndBands' }>;

const strengthLimits = limitsOf(aimInTurn.options[1].shape.levels.unwrap().element.shape.leastTimesBodyMass);

/** Other band shares for the strong, by how many body masses the maximum is. */
export function BandLevels(props: {
  at: string;
  aim: BarAndBands;
  limits: { min: number; max: number };
  onChange: (aim: BarAndBands) => void;
}) {
  const { aim, limits, onChange } = props;
  const { levels } = aim;
  const at = placeIn(props.at, 'levels');
  const put = (next: BarAndBands['levels']) => onChange({ ...aim, levels: next });
  const last = levels.at(-1);
  const another = useRef<HTMLButtonElement>(null);
  return (
    <>
      {levels.map((level, place) => (
        <div key={`${levels.length} ${place}`} className="fields">
          <LeastStrength
            at={placeIn(at, place)}
            value={level.leastTimesBodyMass}
            onChange={(leastTimesBodyMass) => put(levels.with(place, { ...level, leastTimesBodyMass }))}
          />
          <ShareFields
            at={placeIn(placeIn(at, place), 'bandShares')}
            label="Their bands at lockout"
            per="wave"
            most={mostOf.inTurn}
            shares={level.bandShares}
            limits={limits}
            onChange={(bandShares) => put(levels.with(place, { ...level, bandShares }))}
          />
          <button
            type="button"
            className="plain"
            onClick={() => {
              another.current?.focus();
              put(levels.toSpliced(place, 1));
            }}
          >
            Leave these bands out
          </button>
        </div>
      ))}
      <AnotherButton
        ref={another}
        isPlain
        hasRoom={levels.length < mostOf.levels}
        onAdd={() =>
          put([
            ...levels,
            {
              leastTimesBodyMass: last
                ? last.leastTimesBodyMass + levelStepTimesBodyMass
                : firstLevelTimesBodyMass,
              bandShares: last?.bandShares ?? aim.bandShares,
            },
          ])
        }
      >
        Other bands for the strong
      </AnotherButton>
    </>
  );
}

function LeastStrength(props: { at: string; value: number; onChange: (value: number) => void }) {
  const field = useMethodFields(props.at);
  return (
    <FigureField
      {...field('leastTimesBodyMass', 'With a maximum from')}
      {...strengthLimits}
      word="body masses"
      value={props.value}
      onChange={props.onChange}
    />
  );
}
