import { useState } from 'react';
import type { ChartUnits } from './ChartUnits.ts';
import { type HeightScene, type SharedReach, sharedReach, widerReach } from './HeightScene.ts';
import { OnePicture, type SceneGrips } from './OnePicture.tsx';

/** From this width on two pictures stand side by side. */
const sideBySidePx = 320;
/**
 * The one picture: rack, load and speed on one height axis, for one lifter and setup or two to compare. The scale is the
 * same for all scenes, so that a taller lifter's band is drawn longer. With `grips`, bar and box are moved in it.
 */
export function HeightPicture(props: {
  scenes: readonly HeightScene[];
  units: ChartUnits;
  widthPx: number;
  /** From the floor to the top of what is drawn; given by the page, the same for all scenes. */
  heightPx?: number;
  /** What can be taken hold of in each scene. */
  grips?: readonly SceneGrips[];
}) {
  const { scenes, units, widthPx } = props;
  // While something is held, no axis shrinks: its edge stays under the finger.
  const [heldReach, setHeldReach] = useState<SharedReach | null>(null);
  const beside = scenes.length > 1 && widthPx >= sideBySidePx;
  const gapPx = widthPx > 600 ? 24 : 12;
  const eachPx = beside ? (widthPx - gapPx * (scenes.length - 1)) / scenes.length : widthPx;
  const heightPx = props.heightPx ?? Math.min(440, Math.max(260, eachPx * 0.72));
  const ownReach = sharedReach(scenes);
  const reach = heldReach === null ? ownReach : widerReach(heldReach, ownReach);
  return (
    <div
      style={{
        display: 'grid',
        gap: `0 ${gapPx}px`,
        gridTemplateColumns: beside ? `repeat(${scenes.length}, 1fr)` : '1fr',
      }}
    >
      {scenes.map((scene, i) => (
        <figure key={i} style={figureStyle}>
          <figcaption style={{ fontWeight: 640, lineHeight: 1.3 }}>{scene.title}</figcaption>
          <OnePicture
            {...{ scene, units, reach, heightPx }}
            widthPx={eachPx}
            grips={props.grips?.[i] ?? null}
            onHold={(held) => setHeldReach(held ? reach : null)}
          />
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
