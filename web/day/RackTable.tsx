import { Fragment, type ReactNode, useState } from 'react';
import { cautionsByName } from '#contract/paper/cautionsByName.ts';
import { overtaken } from '#contract/paper/overtaken.ts';
import type { RecordOf } from '#contract/records/allKinds.ts';
import type { Day, Group, Place } from '#contract/records/day.ts';
import { startText } from '#contract/words/liftWords.ts';
import { useClub } from '#web/api/useClub.ts';
import { useLabel } from '#web/parts/useLabel.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { useBeside, useLastTime } from './lastTime/useLastTime.ts';
import { lifterName } from './lifterName.ts';
import { useDayLog } from './log/useDayLog.ts';
import type { Drop } from './MoveHandle.tsx';
import { LogPanel, PlaceDetail } from './onDemand.tsx';
import type { DetailField } from './PlaceDetail.tsx';
import { PlaceRow } from './PlaceRow.tsx';
import { rackElementId } from './rackElementId.ts';
import type { Seat } from './Seat.ts';
import type { GroupLines } from './useLines.ts';
import type { Solving } from './useSolving.ts';

const columns = [
  { head: 'Lifter', place: 'at-lifter' },
  { head: 'Bar', says: 'discs a side, kg', place: 'at-bar' },
  { head: 'At the bottom', says: 'range · of strength', place: 'at-bottom' },
  { head: 'At lockout', says: 'range · of strength', place: 'at-lockout' },
  { head: 'Bands', place: 'at-bands' },
  { head: 'Sets × reps', place: 'at-sets' },
  { head: 'First → last rep', place: 'at-speed' },
  { head: 'Percentages', place: 'at-percent' },
  { head: 'Log', place: 'at-log' },
];

/** One rack: its lifters in lifting order, each with all that was worked out; a lifter opens into the picture and the coach's own settings. */
export function RackTable(props: {
  day: Day;
  group: Group;
  rack: RecordOf<'rack'>;
  rackIds: readonly string[];
  places: readonly Place[];
  lines: GroupLines;
  solving: Solving;
  onMove: (lifterId: string, drop: Drop) => void;
  onChangePlace: (place: Place) => void;
  onLeaveOut: (place: Place, name: string) => void;
  /** Sends everybody to other racks; null where there is no other. */
  onClear: (() => void) | null;
  add: ReactNode;
}) {
  const { day, group, rack, rackIds, places, lines, solving } = props;
  const records = useClub();
  const { length } = useUnits();
  const { isShown } = useLabel(records.lifter);
  const isHidden = ({ lifterId }: Place) =>
    records.lifter.some((lifter) => lifter.id === lifterId && !isShown(lifter));
  const [opened, setOpened] = useState<{ id: string; field: DetailField | 'log' | null } | null>(null);
  const [beside] = useBeside();
  const lastTimeOf = useLastTime(day.id, group.id, beside);
  const logOf = useDayLog(day, solving.prescription);
  const close = () => {
    if (opened !== null) {
      const from = opened.field === 'log' ? 'log' : 'lifter';
      document.getElementById(`${from}-${group.id}-${opened.id}`)?.focus();
    }
    setOpened(null);
  };
  const overtakenBy = (place: Place) => {
    const planned = lines.placeOf(place.lifterId);
    if (!solving.stale || lines.plan === null || planned === null) return null;
    return overtaken(lines.plan, planned, { group, place, date: day.date }, records, (lift, start) =>
      startText(lift, start, length),
    );
  };
  const shown = places.flatMap((place) => lines.of(place.lifterId) ?? []);
  const told = cautionsByName(shown, (line) => line.cautions);
  return (
    <section
      id={rackElementId(group.id, rack.id)}
      className="rack"
      data-rack={rack.id}
      aria-label={rack.label}
    >
      <div className="row base rack-head">
        <h3>{rack.label}</h3>
        <p className="small quiet">{lines.rackSays(rack.id)}</p>
        {props.onClear !== null && places.length > 0 && (
          <button type="button" className="plain small screen-only" onClick={props.onClear}>
            Clear this rack
          </button>
        )}
      </div>
      {places.length === 0 ? (
        <p className="quiet rack-empty">Nobody lifts here. Drag a lifter here, or pick one below.</p>
      ) : (
        <table className="table allocation" aria-label={`${rack.label}, in lifting order`}>
          <colgroup>
            {columns.map(({ place }) => (
              <col key={place} className={place} />
            ))}
          </colgroup>
          <thead>
            <tr>
              {columns.map(({ head, says, place }) => (
                <th key={head} scope="col" className={place}>
                  {head}
                  {says && <small>{says}</small>}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {places.map((place, order) => {
              if (isHidden(place)) return null;
              const openedHere = opened?.id === place.lifterId ? opened : null;
              const log = logOf(group.id, place.lifterId);
              const logging = openedHere?.field === 'log' && log !== null;
              const open = openedHere !== null && openedHere.field !== 'log';
              const seat: Seat = {
                day,
                group,
                place,
                rack,
                rackIds,
                order,
                solving,
                name: lifterName(records.lifter, place.lifterId),
                line: lines.of(place.lifterId),
                problem: lines.problemOf(place.lifterId),
                overtaken: overtakenBy(place),
                lastTime: lastTimeOf(place.lifterId),
                gravityMps2: lines.gravityMps2,
              };
              return (
                <Fragment key={place.lifterId}>
                  <PlaceRow
                    {...{ seat, open, log, logging }}
                    onOpen={(field) =>
                      open && field === null ? close() : setOpened({ id: place.lifterId, field })
                    }
                    onLog={() => (logging ? close() : setOpened({ id: place.lifterId, field: 'log' }))}
                    onMove={(drop) => props.onMove(place.lifterId, drop)}
                  />
                  {logging && (
                    <tr className="detail">
                      <td colSpan={columns.length}>
                        <LogPanel
                          dayId={day.id}
                          groupId={group.id}
                          dayDate={day.date}
                          lifterId={place.lifterId}
                          name={seat.name}
                          log={log}
                          steps={seat.line?.steps ?? []}
                          onClose={close}
                        />
                      </td>
                    </tr>
                  )}
                  {openedHere !== null && openedHere.field !== 'log' && (
                    <tr className="detail">
                      <td colSpan={columns.length}>
                        <PlaceDetail
                          seat={seat}
                          field={openedHere.field}
                          onMove={(drop) => props.onMove(place.lifterId, drop)}
                          onChange={props.onChangePlace}
                          onLeaveOut={() => {
                            setOpened(null);
                            props.onLeaveOut(place, seat.name);
                          }}
                          onClose={close}
                        />
                      </td>
                    </tr>
                  )}
                </Fragment>
              );
            })}
          </tbody>
        </table>
      )}
      {told.length > 0 && (
        <ul className="rack-cautions small" aria-label={`What to know at ${rack.label}`}>
          {told.map((sentence) => (
            <li key={sentence} className="caution">
              {sentence}
            </li>
          ))}
        </ul>
      )}
      {props.add}
    </section>
  );
}
