import { useId } from 'react';
import type { ChartUnits } from './ChartUnits.ts';
import { HeightAxis } from './HeightAxis.tsx';
import { type HeightScene, type SharedReach, sharedReach } from './HeightScene.ts';
import { heightScale } from './heightScale.ts';
import { LoadPane } from './LoadPane.tsx';
import { Patterns } from './Patterns.tsx';
import { RackPane } from './RackPane.tsx';
import { SpeedPane } from './SpeedPane.tsx';
import { sceneSummary } from './sceneSummary.ts';

/** From this width on two pictures stand side by side. */
const sideBySidePx = 320;
/** A picture narrower than this leaves the speed out, so that rack and load can still be read. */
const withSpeedPx = 270;
/** Room above the highest height for the number at lockout. */
const headroomPx = 44;
/** Room below the floor for figures and names of the axes. */
const footroomPx = 44;
/** The number at the bottom needs this much below its level; it may push the axis down. */
const bottomLabelPx = 46;

/**
 * The one picture: rack, load and speed on one height axis, for one lifter and setup or two to compare. The scale is the
 * same for all scenes, so that a taller lifter's band is drawn longer.
 */
export function HeightPicture(props: {
  scenes: readonly HeightScene[];
  units: ChartUnits;
  widthPx: number;
  /** From the floor to the top of what is drawn; given by the page, the same for all scenes. */
  heightPx?: number;
}) {
  const { scenes, units, widthPx } = props;
  const beside = scenes.length > 1 && widthPx >= sideBySidePx;
  const gapPx = widthPx > 600 ? 24 : 12;
  const eachPx = beside ? (widthPx - gapPx * (scenes.length - 1)) / scenes.length : widthPx;
  const heightPx = props.heightPx ?? Math.min(440, Math.max(260, eachPx * 0.72));
  const reach = sharedReach(scenes);
  return (
    <div
      style={{
        display: 'grid',
        gap: `0 ${gapPx}px`,
        gridTemplateColumns: beside ? `repeat(${scenes.length}, 1fr)` : '1fr',
      }}
    >
      {scenes.map((scene, i) => (
        <figure key={`${scene.title} ${i}`} style={figureStyle}>
          <figcaption style={{ fontWeight: 640, lineHeight: 1.3 }}>{scene.title}</figcaption>
          <Picture scene={scene} units={units} reach={reach} widthPx={eachPx} heightPx={heightPx} />
        </figure>
      ))}
    </div>
  );
}

/** Titles and drawings of pictures side by side begin on the same lines. */
const figureStyle = {
  margin: 0,
  minWidth: 0,
  display: 'grid',
  gridRow: 'span 2',
  gridTemplateRows: 'subgrid',
} as const;

function Picture(props: {
  scene: HeightScene;
  units: ChartUnits;
  reach: SharedReach;
  widthPx: number;
  heightPx: number;
}) {
  const { scene, units, reach, widthPx, heightPx } = props;
  const patterns = useId();
  const scale = heightScale(reach.topM, headroomPx, headroomPx + heightPx);
  const axisY = Math.max(scale.floorY + 18, scale.y(scene.bottomM) + bottomLabelPx + 14);
  const panes = placePanes(widthPx, scale.pxPerM);
  const height = axisY + footroomPx - 18;
  return (
    <svg
      width={widthPx}
      height={height}
      viewBox={`0 0 ${widthPx} ${height}`}
      role="img"
      aria-label={sceneSummary(scene, units)}
    >
      <Patterns id={patterns} />
      <HeightAxis
        scale={scale}
        units={units}
        x={panes.staffX}
        toX={widthPx - 4}
        bottomM={scene.bottomM}
        lockoutM={scene.lockoutM}
      />
      <LoadPane
        scale={scale}
        units={units}
        scene={scene.load}
        loadToN={reach.loadToN}
        patterns={patterns}
        axisY={axisY}
        {...panes.load}
      />
      <RackPane
        scale={scale}
        units={units}
        scene={scene.rack}
        bottomM={scene.bottomM}
        lockoutM={scene.lockoutM}
        patterns={patterns}
        {...panes.rack}
      />
      {scene.speed && panes.speed && (
        <SpeedPane
          scale={scale}
          scene={scene.speed}
          speedToMps={reach.speedToMps}
          axisY={axisY}
          {...panes.speed}
        />
      )}
    </svg>
  );
}

/** Shares the width out: the rack takes what its scale asks for up to a third, speed a fifth, the load the rest. */
function placePanes(widthPx: number, pxPerM: number) {
  const staffX = widthPx < withSpeedPx ? 32 : 36;
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
