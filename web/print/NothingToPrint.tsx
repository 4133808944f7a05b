import { Link } from 'wouter';

/** Paper shows what was worked out; before that there is nothing to hang on a wall. */
export function NothingToPrint({ dayId }: { dayId: string }) {
  return (
    <div className="stack">
      <h1>Nothing to print yet</h1>
      <p>Put lifters on the racks and work the loads out; then you find the sheets and cards here.</p>
      <p>
        <Link href={`/${dayId}`} className="button">
          To the day
        </Link>
      </p>
    </div>
  );
}
