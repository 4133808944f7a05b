import type { LiftProjection } from '#contract/projection/liftProjection.ts';
import type { Meet } from '#contract/records/season.ts';
import { capital } from '#contract/words/capital.ts';
import { counted } from '#contract/words/counted.ts';
import { dateText } from '#contract/words/dateText.ts';
import { percentToTenth } from '#contract/words/percent.ts';
import { fromSi } from '#core/units/units.ts';
import type { Approach, SetupApproaches } from '#reckon/season/approaches.ts';
import { type Column, DataTable } from '#web/parts/DataTable.tsx';
import { Known } from '#web/parts/Known.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';

/** Fewer cases than this are said to be few: their range leans on how alike two or three happened to be. Judgement. */
const FEW = 5;

/** One exact setup: each approach with what came of it, and what it foretells of the one under way. */
export function ApproachOfSetup(props: {
  name: string;
  approaches: SetupApproaches;
  meet: Meet | undefined;
  projected: LiftProjection | undefined;
}) {
  const { name, meet, projected } = props;
  const { cases, now, foretold } = props.approaches;
  const { mass } = useUnits();
  const tenth = (kg: number) => `${Number(fromSi(kg, mass).toFixed(1))}`;
  const whole = (kg: number) => `${Math.round(fromSi(kg, mass))}`;
  const columns: Column<Approach>[] = [
    { key: 'meet', head: 'Meet', cell: (one) => dateText(one.meet.doneOn) },
    { key: 'reached', head: 'Reached on', cell: (one) => dateText(one.lift.doneOn), wideOnly: true },
    { key: 'bar', head: `Bar, ${mass}`, numeric: true, cell: (one) => tenth(one.lift.barKg) },
    { key: 'lockout', head: `At lockout, ${mass}`, numeric: true, cell: (one) => tenth(one.lockoutKg) },
    { key: 'platform', head: `Platform, ${mass}`, numeric: true, cell: (one) => tenth(one.meet.barKg) },
    {
      key: 'ratio',
      head: 'Platform over lockout',
      numeric: true,
      cell: (one) => percentToTenth(one.meet.barKg / one.lockoutKg),
    },
  ];
  return (
    <div className="stack tight">
      <h3>{capital(name)}</h3>
      {cases.length > 0 && (
        <DataTable
          label={`Approaches with ${name}`}
          columns={columns}
          rows={cases}
          keyOf={(one) => one.meet.doneOn}
          nameOf={(one) => dateText(one.meet.doneOn)}
        />
      )}
      {now === null ? (
        <p className="quiet">Nothing hard with this setup in the last six weeks.</p>
      ) : (
        <p>
          Now: {tenth(now.lift.barKg)} {mass} on {dateText(now.lift.doneOn)}, {tenth(now.lockoutKg)} {mass} at
          lockout.
        </p>
      )}
      {foretold && (
        <p>
          {meet ? `For ${meet.title}, ${dateText(meet.date)}, this foretells ` : 'This foretells '}
          <Known
            value={whole(foretold.value)}
            unit={mass}
            known="estimated"
            interval={
              foretold.low95 === null || foretold.high95 === null
                ? 'no range from a single case'
                : `${whole(foretold.low95)} to ${whole(foretold.high95)}`
            }
          />
          {projected && meet && (
            <>
              ; the whole log says{' '}
              <Known
                value={whole(projected.maxKg.median)}
                unit={mass}
                known="estimated"
                interval={`${whole(projected.maxKg.low95)} to ${whole(projected.maxKg.high95)}`}
              />
            </>
          )}
          .
        </p>
      )}
      {now !== null && cases.length < FEW && (
        <p className="small quiet">
          {cases.length === 0
            ? 'No meet has followed this setup yet, so nothing is foretold by it.'
            : `${counted(cases.length, 'case')} only: few. Take it as a hint.`}
        </p>
      )}
    </div>
  );
}
