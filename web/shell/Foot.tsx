import { Link } from 'wouter';
import { Switches } from './Switches.tsx';

/** The general caution; the particular ones stand where the risk is. On a phone the switches of this device too. */
export function Foot() {
  return (
    <footer className="shell-foot small quiet">
      <Switches />
      <Link href="/gear/done">What was done, and undo</Link>
      <p>
        Rackwright works out loads. It is not a substitute for qualified coaching: local rules come first, and
        nobody lifts heavy without spotters and safeties.
      </p>
    </footer>
  );
}
