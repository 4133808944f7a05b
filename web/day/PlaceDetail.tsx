import { useEffect, useRef, useState } from 'react';
import type { OtherSetup } from '#contract/day/otherSetup.ts';
import { type Place, place as placeShape } from '#contract/records/day.ts';
import type { Start } from '#contract/records/lift.ts';
import { hasHeight } from '#contract/words/liftWords.ts';
import { useClub } from '#web/api/useClub.ts';
import { FigureField } from '#web/parts/FigureField.tsx';
import { fieldIn, textLimits } from '#web/parts/limits.ts';
import { TextField } from '#web/parts/TextField.tsx';
import { useToast } from '#web/parts/Toast.tsx';
import { useNewest } from '#web/parts/useNewest.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { StartFields } from '#web/setup/StartFields.tsx';
import { HungGear } from './HungGear.tsx';
import { LineInWords } from './LineInWords.tsx';
import type { Drop } from './MoveHandle.tsx';
import { OtherSetups } from './OtherSetups.tsx';
import { PlaceTrial } from './PlaceTrial.tsx';
import type { Seat } from './Seat.ts';
import { StepEfforts } from './StepEfforts.tsx';

/** Where the keyboard goes when a cell was opened to be changed. */
export type DetailField = 'bar' | 'bands';

const fieldOf: Record<DetailField, string> = { bar: '.number-input input', bands: '.band-fields select' };

const noteLimits = textLimits(fieldIn(placeShape.shape, 'note'));

/** One lifter opened: the picture of this prescription, what the coach fixes by hand, the own start, and where to lift. */
export function PlaceDetail(props: {
  seat: Seat;
  field: DetailField | null;
  onMove: (drop: Drop) => void;
  onChange: (place: Place) => void;
  onLeaveOut: () => void;
  onClose: () => void;
}) {
  const { seat, onChange, onMove, onClose } = props;
  const { group, place, rack, rackIds, order, name, line, solving } = seat;
  const records = useClub();
  const { mass } = useUnits();
  const say = useToast();
  const others = records.rack.filter((other) => rackIds.includes(other.id) && other.id !== rack.id);
  useEffect(() => {
    const leave = (event: KeyboardEvent) => event.key === 'Escape' && onClose();
    document.addEventListener('keydown', leave);
    return () => document.removeEventListener('keydown', leave);
  }, [onClose]);
  // A note is kept without the space at its end; who is typing keeps it until the next word.
  const note = place.note ?? '';
  const [typed, setTyped] = useState(note);
  const section = useRef<HTMLElement>(null);
  const { field } = props;
  useEffect(() => {
    if (field !== null) section.current?.querySelector<HTMLElement>(fieldOf[field])?.focus();
  }, [field]);
  const fix = async (fixed: Pick<Place, 'byCoach' | 'start'>) => {
    onChange({ ...place, ...fixed });
    await solving.solve();
  };
  // An undo comes later than the tap: it goes by the day as it is then.
  const fixNow = useNewest(fix);
  const take = async ({ barKg, set }: OtherSetup, words: string) => {
    const { byCoach: before, start } = place;
    const bands = set.bands.map(({ bandPairId, hookupId }) => ({ bandPairId, hookupId }));
    const chains = set.chains.map(({ chainPairId, pairs }) => ({ chainPairId, pairs }));
    await fix({ byCoach: { barKg, bands, chains }, start });
    say(`${name} takes ${words}.`, () => void fixNow.current({ byCoach: before, start }));
  };
  const keep = async (fixed: Pick<Place, 'byCoach' | 'start'>) => {
    const { byCoach, start } = place;
    await fix(fixed);
    say(`Kept for ${name}.`, () => void fixNow.current({ byCoach, start }));
  };
  return (
    <section ref={section} className="place-detail" aria-label={name}>
      {line && <LineInWords line={line} unit={mass} />}
      <PlaceTrial
        key={`${place.rackId} ${solving.prescription?.id}`}
        seat={seat}
        onFix={(fixed) => void keep(fixed)}
      />
      <OtherSetups
        prescription={solving.prescription}
        groupId={group.id}
        lifterId={place.lifterId}
        name={name}
        busy={solving.busy}
        onTake={(other, words) => void take(other, words)}
      />
      <HungGear seat={seat} />
      {line && <StepEfforts steps={line.steps} unit={mass} name={name} />}
      <div className="stack tight ruled">
        <TextField
          label="Note for the sheet"
          {...noteLimits}
          value={typed.trim() === note.trim() ? typed : note}
          hint={`For ${name} on this day alone; on sheet and card.`}
          onChange={(next) => {
            setTyped(next);
            onChange({ ...place, note: next });
          }}
        />
      </div>
      {group.aim.by !== 'speed' && (
        <div className="stack tight ruled">
          <FigureField
            label={`More than the group, ${name}`}
            value={place.moreShare}
            word="points"
            per={100}
            min={-0.3}
            max={0.3}
            hint="5 makes 55 % of the group's 50 %; -5 makes 45 %. It comes along to the next weeks."
            onChange={(moreShare) => onChange({ ...place, moreShare })}
          />
        </div>
      )}
      <div className="stack tight ruled">
        <h4>Start of {name}</h4>
        {place.start === null ? (
          <div>
            <button type="button" onClick={() => onChange({ ...place, start: group.start })}>
              Another start than the group
            </button>
          </div>
        ) : (
          <div className="fields own-start">
            <StartFields
              lift={group.lift}
              start={place.start}
              boxes={records.box}
              onChange={(start) => isWhole(start) && onChange({ ...place, start })}
            />
            <button type="button" className="plain" onClick={() => onChange({ ...place, start: null })}>
              Same start as the group
            </button>
          </div>
        )}
      </div>
      <div className="stack tight ruled">
        <h4>Place in the order</h4>
        <div className="row">
          <button
            type="button"
            disabled={order === 0}
            onClick={() => onMove({ rackId: rack.id, order: order - 1 })}
          >
            Lift earlier
          </button>
          <button type="button" onClick={() => onMove({ rackId: rack.id, order: order + 1 })}>
            Lift later
          </button>
          {others.map((other) => (
            <button
              key={other.id}
              type="button"
              onClick={() => onMove({ rackId: other.id, order: Number.MAX_SAFE_INTEGER })}
            >
              To {other.label}
            </button>
          ))}
          <button type="button" onClick={props.onLeaveOut}>
            Take off the group
          </button>
          <button type="button" className="plain" onClick={onClose}>
            Close
          </button>
        </div>
      </div>
    </section>
  );
}

/** While a height is being typed it may be unreadable; the day keeps the last one. */
function isWhole({ way, heightM }: Start): boolean {
  return heightM !== null || !hasHeight(way);
}
