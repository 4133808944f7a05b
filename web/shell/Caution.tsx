/** The general caution; the particular ones stand where the risk is. */
export function Caution() {
  return (
    <footer className="shell-foot small quiet">
      <p>
        Rackwright works out loads. It is not a substitute for qualified coaching: local rules come first, and
        nobody lifts heavy without spotters and safeties.
      </p>
    </footer>
  );
}
