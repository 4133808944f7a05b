import { unbroken } from '#contract/paper/effortWords.ts';
import type { WrittenStep } from '#contract/paper/RackSheetModel.ts';
import { Cell } from './Cell.tsx';

const columns = [
  'Step',
  'Rest',
  'First → last rep',
  'Up and down',
  'Half a minute less',
  'Strength to spare',
  'Chance of all reps',
] as const;

/** Every step of one lifter with what its sets do: speed of the first and the last rep, time, a shorter rest, strength to spare. */
export function StepEfforts({
  steps,
  unit,
  name,
}: {
  steps: readonly WrittenStep[];
  unit: string;
  name: string;
}) {
  return (
    <div className="stack tight ruled">
      <h4>Sets and rest</h4>
      <div className="table-scroll">
        <table className="table" aria-label={`Sets and rest of ${name}`}>
          <thead>
            <tr>
              {columns.map((column) => (
                <th key={column} scope="col">
                  {column}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {steps.map(({ sets, reps, bar, rest, effort }, index) => (
              <tr key={index}>
                <Cell head={columns[0]}>
                  {sets} × {reps}{' '}
                  <b>
                    {bar} {unit}
                  </b>
                </Cell>
                <Cell head={columns[1]}>{rest.replace('rest ', '')}</Cell>
                <Cell head={columns[2]}>{effort.speed}</Cell>
                <Cell head={columns[3]}>{effort.strain}</Cell>
                <Cell head={columns[4]}>{unbroken(effort.shorterRest) || (sets === 1 ? 'one set' : '')}</Cell>
                <Cell head={columns[5]}>{effort.spare}</Cell>
                <Cell head={columns[6]}>
                  {effort.inZone && `${effort.inZone}, all reps `}
                  {effort.allReps || 'no estimate'}
                </Cell>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p className="small quiet">
        Steps follow each other as written, and fatigue carries over. Strength to spare: how much weaker the
        lifter could be and still just make all reps. How soon lifters tire differs widely; until their own
        sets show it, all are treated alike.
      </p>
    </div>
  );
}
