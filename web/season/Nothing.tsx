import { Link } from 'wouter';

/** An address of the season that names what is not there. */
export function Nothing({ what }: { what: 'season' | 'method' | 'page' }) {
  return (
    <p>
      There is no such {what}; it may have been removed. <Link href="/">Season</Link>
    </p>
  );
}
