import type { WrittenStep } from '#web/print/RackSheetModel.ts';

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
              <th scope="col">Step</th>
              <th scope="col">Rest</th>
              <th scope="col">First → last rep</th>
              <th scope="col">Up and down</th>
              <th scope="col">Half a minute less</th>
              <th scope="col">Strength to spare</th>
              <th scope="col">Chance of all reps</th>
            </tr>
          </thead>
          <tbody>
            {steps.map(({ sets, reps, bar, rest, effort }, index) => (
              <tr key={index}>
                <td>
                  {sets} × {reps}{' '}
                  <b>
                    {bar} {unit}
                  </b>
                </td>
                <td>{rest.replace('rest ', '')}</td>
                <td>{effort.speed}</td>
                <td>{effort.strain}</td>
                <td>{effort.shorterRest}</td>
                <td>{effort.spare}</td>
                <td>{effort.allReps || 'no estimate'}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p className="small quiet">
        Steps follow each other as written, and tiredness is carried on. Strength to spare: so much weaker,
        and all reps are just made. How soon lifters tire differs widely; until their own sets tell, all are
        taken alike.
      </p>
    </div>
  );
}
