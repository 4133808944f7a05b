import type { KeyboardEvent, PointerEvent } from 'react';

/** Where a lifter was let go: a rack and a place in its order. */
export interface Drop {
  rackId: string;
  order: number;
}

/**
 * The grip of a lifter's row. Dragged with mouse or thumb to a row or rack marked `data-rack` and `data-order`; with the
 * keyboard, up and down change the order, left and right the rack.
 */
export function MoveHandle(props: {
  name: string;
  /** Tells this lifter's grip from all others of the page. */
  of: string;
  at: Drop;
  /** Racks from left to right. */
  rackIds: readonly string[];
  onDrop: (drop: Drop) => void;
}) {
  const { at, rackIds, onDrop } = props;
  const id = `grip-${props.of}`;

  const letGo = (event: PointerEvent<HTMLButtonElement>) => {
    if (!event.currentTarget.hasPointerCapture(event.pointerId)) return;
    event.currentTarget.releasePointerCapture(event.pointerId);
    mark(null);
    const drop = dropUnder(event);
    if (drop !== null && (drop.rackId !== at.rackId || drop.order !== at.order)) onDrop(drop);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const step = { ArrowUp: -1, ArrowDown: 1 }[event.key];
    const side = { ArrowLeft: -1, ArrowRight: 1 }[event.key];
    const rackId = side === undefined ? undefined : rackIds[rackIds.indexOf(at.rackId) + side];
    if (step !== undefined) onDrop({ rackId: at.rackId, order: Math.max(0, at.order + step) });
    else if (rackId !== undefined) onDrop({ rackId, order: at.order });
    else return;
    event.preventDefault();
    // The row moves, perhaps to another table: the keyboard stays with the lifter.
    requestAnimationFrame(() => document.getElementById(id)?.focus());
  };
  return (
    <button
      id={id}
      type="button"
      className="grip screen-only"
      aria-label={`Move ${props.name}: up and down change the order, left and right the rack`}
      onPointerDown={(event) => event.currentTarget.setPointerCapture(event.pointerId)}
      onPointerMove={(event) => {
        if (event.currentTarget.hasPointerCapture(event.pointerId)) mark(placeUnder(event));
      }}
      onPointerUp={letGo}
      onPointerCancel={letGo}
      onKeyDown={onKeyDown}
    >
      <svg width="12" height="18" aria-hidden="true">
        {[3, 9, 15].map((y) => (
          <path key={y} d={`M0 ${y}h12`} stroke="currentColor" strokeWidth="2" />
        ))}
      </svg>
    </button>
  );
}

function placeUnder(event: PointerEvent): HTMLElement | null {
  const under = document.elementFromPoint(event.clientX, event.clientY);
  return under?.closest<HTMLElement>('[data-rack]') ?? null;
}

function dropUnder(event: PointerEvent): Drop | null {
  const place = placeUnder(event);
  const rackId = place?.dataset['rack'];
  if (rackId === undefined) return null;
  return { rackId, order: Number(place?.dataset['order'] ?? Number.MAX_SAFE_INTEGER) };
}

/** Shows where the lifter would go; one place at a time. */
function mark(place: HTMLElement | null): void {
  for (const marked of document.querySelectorAll('.drop-here')) {
    if (marked !== place) marked.classList.remove('drop-here');
  }
  place?.classList.add('drop-here');
}
