import { useRef } from 'react';
import { fieldOf } from '#contract/records/fields.ts';
import type { GroupAsked, Variant } from '#contract/records/method.ts';
import { mostOf, variant as variantShape } from '#contract/records/method.ts';
import { startAskedText } from '#contract/season/depthWords.ts';
import { useClub } from '#web/api/useClub.ts';
import { FigureField } from '#web/parts/FigureField.tsx';
import { textLimits } from '#web/parts/limits.ts';
import { TextField } from '#web/parts/TextField.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { AnotherButton } from './AnotherButton.tsx';
import { variantOf } from './groupToBegin.ts';
import { placeIn, useMethodFields } from './methodFields.ts';
import { OrderButtons } from './OrderButtons.tsx';
import { StartAskedFields } from './StartAskedFields.tsx';
import { withCopyAfter } from './titledList.ts';

/** The start of a group, or the starts that it rotates through and the weeks that each rests. */
export function StartsFields(props: {
  at: string;
  group: GroupAsked;
  onChange: (change: Pick<GroupAsked, 'variants' | 'restWeeks'>) => void;
}) {
  const { at, group, onChange } = props;
  const { lift, variants, restWeeks } = group;
  const { length } = useUnits();
  const field = useMethodFields(at);
  const put = (next: Variant[]) => onChange({ variants: next, restWeeks: next.length === 1 ? 0 : restWeeks });
  const another = useRef<HTMLButtonElement>(null);
  const hasRoom = variants.length < mostOf.variants;
  return (
    <>
      {variants.map((variant, place) => (
        <fieldset key={variant.id} className="stack tight season-one" aria-label={`Start ${place + 1}`}>
          <OneStart
            at={placeIn(placeIn(at, 'variants'), place)}
            lift={lift}
            variant={variant}
            onChange={(next) => put(variants.with(place, next))}
          />
          {variants.length > 1 && (
            <OrderButtons
              of={`start ${place + 1}, ${variant.title}`}
              list={variants}
              at={place}
              after={another}
              onChange={put}
              withCopy={hasRoom ? () => withCopyAfter(variants, place, 'start') : null}
            />
          )}
        </fieldset>
      ))}
      <AnotherButton
        ref={another}
        isPlain
        hasRoom={hasRoom}
        onAdd={() => put([...variants, variantOf(lift, variants.at(-1)!.start, variants, length)])}
      >
        Another start to rotate through
      </AnotherButton>
      {variants.length > 1 && (
        <div className="fields">
          <FigureField
            {...field('restWeeks', 'A start comes again after')}
            value={restWeeks}
            word="weeks"
            min={0}
            max={variants.length - 1}
            whole
            hint="Weeks that pass before the same start comes again; fewer than there are starts."
            onChange={(weeks) => onChange({ variants, restWeeks: weeks })}
          />
        </div>
      )}
    </>
  );
}

/** A start, and what it is called: by what it is, until somebody calls it something else; another way to begin is called by what it is again. */
function OneStart(props: {
  at: string;
  lift: GroupAsked['lift'];
  variant: Variant;
  onChange: (variant: Variant) => void;
}) {
  const { at, lift, variant, onChange } = props;
  const { box } = useClub();
  const { length } = useUnits();
  const field = useMethodFields(at);
  const isOwnTitle = variant.title !== startAskedText(lift, variant.start, length);
  return (
    <div className="fields">
      <StartAskedFields
        lift={lift}
        start={variant.start}
        boxes={box}
        onChange={(start) =>
          onChange({
            ...variant,
            start,
            title:
              isOwnTitle && start.way === variant.start.way
                ? variant.title
                : startAskedText(lift, start, length),
          })
        }
      />
      <TextField
        {...field('title', 'Called')}
        {...textLimits(fieldOf('title', variantShape.shape.title))}
        value={variant.title}
        onChange={(title) => onChange({ ...variant, title })}
      />
    </div>
  );
}
