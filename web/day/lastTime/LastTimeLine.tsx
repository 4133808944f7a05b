import { useLastTime } from './useLastTime.ts';

/** In one line what this lifter did the last time; nothing where the lift is new. */
export function LastTimeLine(props: { dayId: string; groupId: string; lifterId: string }) {
  const then = useLastTime(props.dayId, props.groupId, true)(props.lifterId);
  if (then === null) return null;
  const loads = then.bottom === null ? '' : `, ${then.bottom} at the bottom and ${then.lockout} at lockout`;
  return (
    <p className="small">
      <span className="quiet">Last time, {then.on}:</span> {then.work}, {then.setup}
      {loads}
      {then.speed !== '–' && `, ${then.speed}`}.
    </p>
  );
}
