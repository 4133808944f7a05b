import type { Offer } from '#contract/words/meantInstead.ts';

/** A question beside a field, and what may have been meant: one tap takes it, nothing has to be answered. */
export function Asked(props: {
  id?: string;
  sentence: string | null;
  offers: readonly Offer[];
  onTake: (valueSi: number) => void;
}) {
  return (
    <div className="asked" id={props.id} role="alert">
      {props.sentence !== null && <p>{props.sentence}</p>}
      {props.offers.length > 0 && (
        <div className="row">
          {props.offers.map(({ word, valueSi }) => (
            <button key={word} type="button" onClick={() => props.onTake(valueSi)}>
              {word}
            </button>
          ))}
        </div>
      )}
    </div>
  );
}
