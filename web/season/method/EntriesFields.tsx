import { type ReactNode, useRef } from 'react';
import { AnotherButton } from './AnotherButton.tsx';
import { placeIn } from './methodFields.ts';

/** A list that may be empty: the fields of each entry, another one, and each left out. */
export function EntriesFields<Each extends object>(props: {
  /** Path of the list. */
  at: string;
  title: string;
  /** One of them: "accessory". */
  one: string;
  list: readonly Each[];
  /** Its fields hold sentences. */
  isWide?: boolean;
  most: number;
  /** What another one begins as, before there is one to begin like. */
  first: Each;
  /** What one of them is called, for who hears the buttons. */
  nameOf: (each: Each) => string;
  onChange: (list: Each[]) => void;
  children: (one: { at: string; each: Each; put: (change: Partial<Each>) => void }) => ReactNode;
}) {
  const { at, title, one, list, most, first, nameOf, isWide = false, onChange, children } = props;
  const another = useRef<HTMLButtonElement>(null);
  return (
    <section className="stack tight">
      <h3>{title}</h3>
      {list.map((each, place) => (
        <fieldset
          key={`${list.length} ${place}`}
          className={isWide ? 'fields season-one season-wide' : 'fields season-one'}
          aria-label={`${title} ${place + 1}`}
        >
          {children({
            at: placeIn(at, place),
            each,
            put: (change) =>
              onChange(list.map((other, i) => (i === place ? { ...other, ...change } : other))),
          })}
          <button
            type="button"
            className="plain season-leave-out"
            aria-label={`Leave out ${nameOf(each)}`}
            onClick={() => {
              another.current?.focus();
              onChange(list.toSpliced(place, 1));
            }}
          >
            Leave out
          </button>
        </fieldset>
      ))}
      <AnotherButton
        ref={another}
        isPlain
        hasRoom={list.length < most}
        onAdd={() => onChange([...list, list.at(-1) ?? first])}
      >
        {list.length === 0 ? 'Add' : 'Another'} {one}
      </AnotherButton>
    </section>
  );
}
