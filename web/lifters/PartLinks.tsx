import { useEffect, useRef } from 'react';
import { Link, useSearchParams } from 'wouter';
import { lifterParts } from './lifterParts.tsx';
import { partAddress } from './partAddress.ts';

/** The row of links that stays in view: every part of the page is one tap away. The lift that was chosen goes along. */
export function PartLinks({ lifterId, current }: { lifterId: string; current: string }) {
  const row = useRef<HTMLElement>(null);
  const [search] = useSearchParams();
  const lift = search.get('lift');
  const along = lift === null ? '' : `?${new URLSearchParams({ lift })}`;
  useEffect(() => {
    // On a narrow screen the row goes on beyond the edge; where one is stays in sight, and the page itself does not move.
    const link = row.current?.querySelector<HTMLElement>(`[data-part='${CSS.escape(current)}']`);
    if (row.current && link)
      row.current.scrollLeft = link.offsetLeft - (row.current.clientWidth - link.offsetWidth) / 2;
  }, [current]);
  return (
    <nav className="lifters-parts screen-only" aria-label="Of this lifter" ref={row}>
      {lifterParts.map(({ id, word }) => (
        <Link
          key={id}
          data-part={id}
          href={`${partAddress(lifterId, id)}${along}`}
          aria-current={id === current ? 'page' : undefined}
        >
          {word}
        </Link>
      ))}
    </nav>
  );
}
