import { useEffect } from 'react';
import type { RecordOf } from '#contract/records/allKinds.ts';
import type { Group, Place } from '#contract/records/day.ts';
import { useClub } from '#web/api/useClub.ts';
import type { LifterLine } from '#web/print/RackSheetModel.ts';
import { HandSettings } from './HandSettings.tsx';
import { LifterPicture } from './LifterPicture.tsx';
import type { Drop } from './MoveHandle.tsx';
import { StartFields } from './StartFields.tsx';
import type { Solving } from './useSolving.ts';

/** One lifter opened: the picture of this prescription, what the coach fixes by hand, the own start, and where to lift. */
export function PlaceDetail(props: {
  group: Group;
  place: Place;
  rack: RecordOf<'rack'>;
  order: number;
  name: string;
  line: LifterLine | null;
  solving: Solving;
  rackIds: readonly string[];
  onMove: (drop: Drop) => void;
  onChange: (place: Place) => void;
  onLeaveOut: () => void;
  onClose: () => void;
}) {
  const { group, place, rack, order, name, solving, onChange, onMove } = props;
  const records = useClub();
  const others = records.rack.filter((other) => props.rackIds.includes(other.id) && other.id !== rack.id);
  const { onClose } = props;
  useEffect(() => {
    const leave = (event: KeyboardEvent) => event.key === 'Escape' && onClose();
    document.addEventListener('keydown', leave);
    return () => document.removeEventListener('keydown', leave);
  }, [onClose]);
  const fix = async (byCoach: Place['byCoach']) => {
    onChange({ ...place, byCoach });
    await solving.solve();
  };
  return (
    <section className="place-detail" aria-label={name}>
      <div className="detail-picture">
        <LifterPicture prescription={solving.prescription} group={group} place={place} name={name} />
      </div>
      <div className="stack detail-hand">
        <HandSettings
          key={`${place.rackId} ${solving.prescription?.id}`}
          {...{ group, place, rack }}
          prescription={solving.prescription}
          busy={solving.busy}
          onFix={(byCoach) => void fix(byCoach)}
        />
        <div className="stack tight ruled">
          <h4>Start of {name}</h4>
          {place.start === null ? (
            <div>
              <button type="button" onClick={() => onChange({ ...place, start: group.start })}>
                Another start than the group
              </button>
            </div>
          ) : (
            <>
              <div className="fields">
                <StartFields
                  lift={group.lift}
                  start={place.start}
                  boxes={records.box}
                  onChange={(start) => onChange({ ...place, start })}
                />
              </div>
              <div>
                <button type="button" className="plain" onClick={() => onChange({ ...place, start: null })}>
                  Same start as the group
                </button>
              </div>
            </>
          )}
        </div>
        <div className="row ruled">
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
            Take off
          </button>
          <button type="button" className="plain" onClick={onClose}>
            Close
          </button>
        </div>
      </div>
    </section>
  );
}
