import type { Setup, Start } from '#contract/records/lift.ts';
import { foreAftSentence } from '#contract/words/foreAftSentence.ts';
import { massText } from '#contract/words/massText.ts';
import { useClub } from '#web/api/useClub.ts';
import { HeightLegend } from '#web/charts/HeightLegend.tsx';
import { HeightPicture } from '#web/charts/HeightPicture.tsx';
import type { SceneGrips } from '#web/charts/OnePicture.tsx';
import { chartUnits } from '#web/parts/chartUnits.ts';
import { MeasuredWidth } from '#web/parts/MeasuredWidth.tsx';
import { type SceneStrength, type SetupScene, setupScene } from '#web/parts/setupScene.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import type { Seat } from './Seat.ts';
import type { OnBar } from './solvedSetup.ts';

/** Rack, load and speed of what stands in the fields beside it, for this lifter on this day. */
export function LifterPicture(props: {
  seat: Seat;
  onBar: OnBar;
  start: Start;
  grips: SceneGrips;
  strength: SceneStrength | null;
}) {
  const { onBar, start } = props;
  const { day, group, place, name, gravityMps2 } = props.seat;
  const records = useClub();
  const units = useUnits();
  const setup: Setup = { rackId: place.rackId, start, ...onBar };
  const scene = sceneOrWhy(() =>
    setupScene(records, {
      lifterId: place.lifterId,
      lift: group.lift,
      setup,
      on: day.date,
      title: name,
      strength: props.strength,
    }),
  );
  if (typeof scene === 'string') return <p role="alert">{scene}</p>;
  return (
    <div className="stack">
      <MeasuredWidth>
        {(widthPx) => (
          <HeightPicture
            scenes={[scene]}
            units={chartUnits(units, gravityMps2)}
            widthPx={widthPx}
            grips={[props.grips]}
          />
        )}
      </MeasuredWidth>
      <HeightLegend
        lifts={scene.load.points.some(({ bandN }) => bandN < 0)}
        moves={start.way === 'box' ? 'drag bar and box' : 'drag the bar'}
      />
      {scene.foreAft && (
        <p className="small">
          {foreAftSentence(scene.foreAft, (newtons) => massText(newtons, units.mass, gravityMps2))}
        </p>
      )}
      <p className="small quiet">
        The speed is that of the first rep of its step; how it slows over the sets is in the table.
      </p>
    </div>
  );
}

/** A setup that nobody can lift from is told in the sentence that refuses it. */
function sceneOrWhy(draw: () => SetupScene): SetupScene | string {
  try {
    return draw();
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}
