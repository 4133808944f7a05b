import { unbroken } from '#contract/paper/effortWords.ts';
import type { Paper } from '#contract/paper/paperSize.ts';
import type { LifterOnSheet, RackSheet } from '#contract/paper/RackSheetModel.ts';
import { letterSizes } from './letterSizes.ts';
import { SheetHead } from './SheetHead.tsx';
import { SinceThen } from './SinceThen.tsx';
import { useFitting } from './useFitting.ts';

/** Closest setting of a page, in blank.css: lines as near to one another as a pen can write. */
const closest = 2;

/**
 * A rack's lifters in lifting order with a line for each planned set: what is planned small, boxes for bar, reps made, speed and a
 * remark. A further line is for a set beyond the plan.
 */
export function BlankSheet(props: { sheet: RackSheet; paper: Paper; onTooFull: () => void }) {
  const { sheet, paper } = props;
  const page = useFitting<HTMLElement>(closest, sheet.lifters.length > 1 ? props.onTooFull : undefined);
  return (
    <section
      ref={page}
      className={`paper blank ${paper}`}
      aria-label={`Blank sheet of ${sheet.rack}`}
      style={letterSizes}
    >
      <SheetHead sheet={sheet}>
        <p>Write what differs from the plan, and the speed. A set as planned: a tick in its bar.</p>
      </SheetHead>
      <div className="blank-lifters">
        {sheet.lifters.map((lifter) => (
          <Lifter key={lifter.lifterId} lifter={lifter} unit={sheet.unit} />
        ))}
      </div>
      <SinceThen sentences={[...sheet.since, ...sheet.lifters.flatMap(({ since }) => since)]} />
      <footer className="fine blank-foot">
        <p>{sheet.madeBy} Type it in by this number.</p>
        <p>Written by</p>
      </footer>
    </section>
  );
}

function Lifter({ lifter, unit }: { lifter: LifterOnSheet; unit: string }) {
  const sets = lifter.steps.flatMap((step, at) =>
    Array.from({ length: step.sets }, (_, set) => ({ step, isFirst: set === 0 && at > 0 })),
  );
  return (
    <table className="blank-lifter">
      <caption>
        <span className="blank-order">{lifter.order}</span> <b>{lifter.name}</b> {unbroken(lifter.start)}
        {lifter.note && `; ${lifter.note}`}
      </caption>
      <thead>
        <tr>
          <th className="blank-planned">planned</th>
          <th className="blank-bar">bar, {unit}</th>
          <th className="blank-reps">reps</th>
          <th className="blank-speed">m/s</th>
          <th>remark</th>
        </tr>
      </thead>
      <tbody>
        {sets.map(({ step, isFirst }, index) => (
          <tr key={index} className={isFirst ? 'blank-step' : undefined}>
            <th scope="row">
              <b>{index + 1}</b> {step.bar} × {step.reps}
            </th>
            <Boxes />
          </tr>
        ))}
        <tr>
          <th scope="row">
            <b>+</b> one more
          </th>
          <Boxes />
        </tr>
      </tbody>
    </table>
  );
}

const boxes = ['bar', 'reps', 'speed', 'remark'];

/** Room for each of them. */
function Boxes() {
  return boxes.map((what) => <td key={what} aria-label={what} />);
}
