import type { ReactNode } from 'react';

/** A list with an entry for each week of a wave, or each wave of a phase: the fields of each, one more, one less. The last one stands for those that follow. */
export function InTurnFields<Each>(props: {
  /** What the list holds, for who hears the buttons. */
  label: string;
  per: 'week' | 'wave' | 'height';
  list: readonly Each[];
  /** How many there can be. */
  most: number;
  onChange: (list: Each[]) => void;
  /** `of`: what follows a label, ", week 2"; empty where one stands for all. */
  children: (each: Each, at: number, of: string, put: (next: Each) => void) => ReactNode;
}) {
  const { label, per, list, most, onChange, children } = props;
  const last = list[list.length - 1]!;
  return (
    <>
      {list.map((each, at) =>
        children(each, at, list.length === 1 ? '' : `, ${per} ${at + 1}`, (next) =>
          onChange(list.map((one, place) => (place === at ? next : one))),
        ),
      )}
      <div className="row season-in-turn">
        {list.length < most && (
          <button
            type="button"
            className="plain"
            aria-label={`${label}: another ${per}`}
            onClick={() => onChange([...list, last])}
          >
            Another {per}
          </button>
        )}
        {list.length > 1 && (
          <button
            type="button"
            className="plain"
            aria-label={`${label}: leave out ${per} ${list.length}`}
            onClick={() => onChange(list.slice(0, -1))}
          >
            Leave out {per} {list.length}
          </button>
        )}
      </div>
    </>
  );
}
