import { boxHeights } from '#contract/day/boxHeights.ts';
import type { Box } from '#contract/records/gear.ts';
import type { Lift, Start } from '#contract/records/lift.ts';
import { StartHeightField } from './StartHeightField.tsx';
import { StartWayField } from './StartWayField.tsx';

/** How the way up begins, and its height. */
export function StartFields(props: {
  lift: Lift;
  start: Start;
  boxes?: readonly Box[];
  /** A height that cannot be read is null here: the form is not saved then. */
  onChange: (start: Start) => void;
}) {
  const { lift, start, boxes = [], onChange } = props;
  return (
    <>
      <StartWayField lift={lift} start={start} built={boxHeights(boxes)} onChange={onChange} />
      <StartHeightField start={start} boxes={boxes} onChange={onChange} />
    </>
  );
}
