import { startOf } from '#contract/day/startOf.ts';
import { chancesLine, unbroken } from '#contract/paper/effortWords.ts';
import type { WrittenLoad } from '#contract/paper/RackSheetModel.ts';
import { startText } from '#contract/words/liftWords.ts';
import { Known } from '#web/parts/Known.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { Cell } from './Cell.tsx';
import { StepDone } from './log/StepDone.tsx';
import type { PlaceLog } from './log/useDayLog.ts';
import { type Drop, MoveHandle } from './MoveHandle.tsx';
import type { DetailField } from './PlaceDetail.tsx';
import type { Seat } from './Seat.ts';
import { triedKey, useTried } from './tried.ts';

/** A lifter in a rack's table. Without a line nothing was worked out for this lifter yet. */
export function PlaceRow(props: {
  seat: Seat;
  open: boolean;
  /** What of it is on record; null where nothing was worked out. */
  log: PlaceLog | null;
  logging: boolean;
  onOpen: (field: DetailField | null) => void;
  onLog: () => void;
  onMove: (drop: Drop) => void;
}) {
  const { log, open, onOpen } = props;
  const { group, place, order, name, line, problem, solving, rackIds, overtaken, lastTime } = props.seat;
  const tried = useTried(triedKey(props.seat.day.id, group.id, place.lifterId));
  const units = useUnits();
  const drop = { 'data-rack': place.rackId, 'data-order': order };
  const who = (
    <th scope="row">
      <div className="who">
        <MoveHandle
          name={name}
          of={`${group.id}-${place.lifterId}`}
          at={{ rackId: place.rackId, order }}
          rackIds={rackIds}
          onDrop={props.onMove}
        />
        <div>
          <button
            type="button"
            id={`lifter-${group.id}-${place.lifterId}`}
            className="lifter-name"
            aria-expanded={open}
            onClick={() => onOpen(null)}
          >
            <span className="order">{order + 1}</span> {name}
          </button>
          <p className="small quiet start">
            {startText(group.lift, startOf(group, place), units.length)}
            {place.start !== null && ', own start'}
          </p>
          {tried && (
            <p className="small">
              <span className="mark own">tried, not kept</span>
            </p>
          )}
          {line !== null &&
            overtaken?.map((sentence) => (
              <p key={sentence} className="small overtaken-why">
                {sentence}
              </p>
            ))}
        </div>
      </div>
    </th>
  );
  if (line === null) {
    return (
      <tr {...drop}>
        {who}
        <td colSpan={8} className="quiet">
          {solving.busy ? 'Being worked out.' : (problem ?? 'Not worked out yet.')}
        </td>
      </tr>
    );
  }
  const why = line.assumed.map(({ sentence }) => sentence).join(' ');
  const own = <span className="mark own">coach's own</span>;
  const marks = [line.cautions.length > 0 && 'has-cautions', overtaken !== null && 'overtaken'];
  return (
    <tr {...drop} className={marks.filter(Boolean).join(' ')}>
      {who}
      <Cell head="Bar" place="at-bar">
        <div className="bar-line">
          <button
            type="button"
            className="cell"
            aria-label={`Bar of ${name}: ${line.bar} ${units.mass}. Change it`}
            onClick={() => onOpen('bar')}
          >
            <span className="numeral bar-mass">
              {line.bar}
              <span className="unit">{units.mass}</span>
            </span>
          </button>
          {line.trueBar && <span className="small quiet">{unbroken(line.trueBar)}</span>}
        </div>
        {place.byCoach?.barKg != null && own}
        <p className="small quiet a-side">
          <Known
            value={line.aSide}
            unit=""
            known={line.barKnown}
            why={line.barKnown === 'measured' ? '' : why}
          />
        </p>
        <Then said={lastTime && `${lastTime.on}: ${lastTime.bar}`} />
      </Cell>
      <Cell head="At the bottom" place="at-bottom">
        <LoadCell load={line.bottom} why={why} />
        <Then said={lastTime?.bottom ?? null} />
      </Cell>
      <Cell head="At lockout" place="at-lockout">
        <LoadCell load={line.lockout} why={why} />
        <Then said={lastTime?.lockout ?? null} />
      </Cell>
      <Cell head="Bands" place="at-bands">
        <button
          type="button"
          className="cell"
          aria-label={`Bands of ${name}: ${line.hung.join(', ') || 'none'}. Change them`}
          onClick={() => onOpen('bands')}
        >
          {line.hung.length === 0 ? 'none' : line.hung.map((hung) => <span key={hung}>{hung}</span>)}
        </button>
        {place.byCoach?.bands != null && own}
        {line.changes && <p className="small quiet">{line.changes}</p>}
        <Then said={lastTime?.setup ?? null} />
      </Cell>
      <Cell head="Sets × reps" place="at-sets">
        {line.steps.map((step, index) => (
          <p key={index} className={index < line.steps.length - 1 ? 'quiet' : ''}>
            {step.sets} × {step.reps} <span className="quiet">at</span> <b>{step.bar}</b>
            {log && <StepDone log={log} step={index} />}
          </p>
        ))}
        <Then said={lastTime?.work ?? null} />
      </Cell>
      <Cell head="First → last rep" place="at-speed">
        <p>{unbroken(line.effort.speed)}</p>
        <p className="small quiet">{chancesLine(line.effort)}</p>
        <Then said={lastTime?.speed ?? null} />
      </Cell>
      <Cell head="Percentages" place="at-percent">
        <p className="small">{line.percentages}</p>
      </Cell>
      <td className="at-log screen-only">
        {log && (
          <button
            type="button"
            id={`log-${group.id}-${place.lifterId}`}
            className="log-sets"
            aria-expanded={props.logging}
            aria-label={`Log sets of ${name}`}
            onClick={props.onLog}
          >
            Log sets
          </button>
        )}
      </td>
    </tr>
  );
}

function LoadCell({ load, why }: { load: WrittenLoad; why: string }) {
  const { mass } = useUnits();
  return (
    <>
      <span className="load">
        <Known value={load.load} unit={mass} known={load.known} why={load.known === 'measured' ? '' : why} />
      </span>
      <p className="small quiet">{[load.interval, load.share].filter((said) => said !== '').join(' · ')}</p>
    </>
  );
}

/** The same of the last time, under what it is to be compared with. */
function Then({ said }: { said: string | null }) {
  if (said === null) return null;
  return (
    <p className="small then">
      <span className="only-read">Last time: </span>
      {said}
    </p>
  );
}
