import type { Lift } from '#contract/records/lift.ts';
import { liftWord, liftWords } from '#contract/words/liftWords.ts';

/** Which lifts the server still works out; what is there already stands below meanwhile. */
export function LiftsAwaited({ awaited }: { awaited: readonly Lift[] }) {
  if (awaited.length === 0) return null;
  const done = { value: liftWords.length - awaited.length, max: liftWords.length };
  return <Awaited what={awaited.map(liftWord).join(', ')} done={done} />;
}

/** The sign that something is worked out from the log; without `done` nobody knows how far it is. */
export function Awaited(props: { what: string; done?: { value: number; max: number } }) {
  return (
    <label className="small quiet lifters-progress lifters-awaited" aria-busy="true">
      <progress {...props.done} /> Working out from the log: {props.what}
    </label>
  );
}
