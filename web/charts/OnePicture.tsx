import { useId } from 'react';
import type { ChartUnits } from './ChartUnits.ts';
import { DragGrip } from './DragGrip.tsx';
import type { Grip } from './Grip.ts';
import { HeightAxis, staffWidthPx } from './HeightAxis.tsx';
import type { HeightScene, SharedReach } from './HeightScene.ts';
import { heightScale } from './heightScale.ts';
import { LoadPane } from './LoadPane.tsx';
import { Patterns } from './Patterns.tsx';
import { RackPane } from './RackPane.tsx';
import { boxSpanM, rackScale } from './rackScale.ts';
import { SpeedPane } from './SpeedPane.tsx';
import { sceneSummary } from './sceneSummary.ts';

/** What can be moved in a picture: the bar's mass (kg), sideways, and the top of the box (m), up and down. */
export interface SceneGrips {
  bar: Grip | null;
  box: Grip | null;
  gravityMps2: number;
}

/** A picture narrower than this leaves the speed out, so that rack and load can still be read. */
const withSpeedPx = 270;
/** Room above the highest height for the number at lockout. */
const headroomPx = 44;
/** Room below the floor for figures and names of the axes. */
const footroomPx = 44;
/** The number at the bottom needs this much below its level; it may push the axis down. */
const bottomLabelPx = 46;

/** Rack, load and speed of one scene, and what one takes hold of on top of them. */
export function OnePicture(props: {
  scene: HeightScene;
  units: ChartUnits;
  reach: SharedReach;
  widthPx: number;
  heightPx: number;
  grips: SceneGrips | null;
  onHold: (held: boolean) => void;
}) {
  const { scene, units, reach, widthPx, heightPx, grips, onHold } = props;
  const { bottomM, lockoutM } = scene;
  const patterns = useId();
  const scale = heightScale(reach.topM, headroomPx, headroomPx + heightPx);
  const axisY = Math.max(scale.floorY + 18, scale.y(bottomM) + bottomLabelPx + 14);
  const panes = placePanes(widthPx, scale.pxPerM, staffWidthPx(units, [bottomM, lockoutM]));
  const across = rackScale(scene.rack, panes.rack, scale.pxPerM);
  const height = axisY + footroomPx - 18;
  const box = { x: across.px(boxSpanM.from), toX: across.px(boxSpanM.to) };
  return (
    <svg width={widthPx} height={height} viewBox={`0 0 ${widthPx} ${height}`}>
      <Patterns id={patterns} />
      <g role="img" aria-label={sceneSummary(scene, units)}>
        <HeightAxis {...{ scale, units, bottomM, lockoutM }} x={panes.staffX} toX={widthPx - 4} />
        <LoadPane
          {...{ scale, units, patterns, axisY }}
          scene={scene.load}
          loadToN={reach.loadToN}
          {...panes.load}
        />
        <RackPane {...{ scale, units, bottomM, lockoutM, patterns, across }} scene={scene.rack} />
        {scene.speed && panes.speed && (
          <SpeedPane
            {...{ scale, axisY }}
            scene={scene.speed}
            speedToMps={reach.speedToMps}
            {...panes.speed}
          />
        )}
      </g>
      {grips?.box && scene.rack.boxHeightM !== null && (
        <DragGrip
          grip={grips.box}
          way="upwards"
          x={(box.x + box.toX) / 2}
          y={scale.y(scene.rack.boxHeightM)}
          alongPx={box.toX - box.x}
          perPx={1 / scale.pxPerM}
          onHold={onHold}
        />
      )}
      {grips?.bar && (
        <DragGrip
          grip={grips.bar}
          way="sideways"
          x={panes.load.x + (panes.load.width * (scene.load.points[0]?.barN ?? 0)) / reach.loadToN}
          y={scale.y((bottomM + lockoutM) / 2)}
          alongPx={(lockoutM - bottomM) * scale.pxPerM}
          perPx={reach.loadToN / panes.load.width / grips.gravityMps2}
          onHold={onHold}
        />
      )}
    </svg>
  );
}

/** Shares the width out: the rack takes what its scale asks for up to a third, speed a fifth, the load the rest. */
function placePanes(widthPx: number, pxPerM: number, staffX: number) {
  const gap = widthPx > 460 ? 24 : 14;
  const rackWidth = Math.min(0.95 * pxPerM, (widthPx - staffX) * 0.32);
  const loadX = staffX + 4 + rackWidth + gap;
  const speedWidth = Math.max(64, (widthPx - staffX) * 0.18);
  const speedX = widthPx - speedWidth - 12;
  const loadToX = widthPx < withSpeedPx ? widthPx - 6 : speedX - gap;
  return {
    staffX,
    rack: { x: staffX + 4, width: rackWidth },
    load: { x: loadX, width: loadToX - loadX },
    speed: widthPx < withSpeedPx ? null : { x: speedX, width: speedWidth },
  };
}
