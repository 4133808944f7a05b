import type { CSSProperties } from 'react';
import { LoadedBar } from '#web/charts/LoadedBar.tsx';
import { PaperLoad } from './PaperLoad.tsx';
import { type Paper, pxPerMm } from './paperSize.ts';
import type { LifterLine, RackSheet, WrittenStep } from './RackSheetModel.ts';
import { SmallLoad } from './SmallLoad.tsx';
import { sheetRows } from './sheetRows.ts';
import { Ticks } from './Ticks.tsx';

/** Steps that fit on one line at the usual size of letters. */
const stepsOnLine = 5;
/** A row this tall (mm) has room for a second line of steps. */
const tallRowMm = 42;
/** Height of Archivo's figures as a share of the letter size. */
const figureShare = 0.686;

/** One page of the wall: a rack's lifters in lifting order, black on white, read from three metres. */
export function RackSheetPage({ sheet, paper }: { sheet: RackSheet; paper: Paper }) {
  const said = [...sheet.cautions, ...sheet.assumed];
  const { rowMm, numeralMm } = sheetRows(paper, sheet.lifters.length, said);
  const toN = Math.max(...sheet.lifters.flatMap(({ picture }) => picture.map((point) => point.totalN)));
  return (
    <section
      className={`paper sheet ${paper}`}
      aria-label={`Sheet of ${sheet.rack}`}
      style={{ '--grow': Math.min(1.3, rowMm / 29) } as CSSProperties}
    >
      <header className="sheet-head">
        <h1>{sheet.rack}</h1>
        <div>
          <p className="sheet-group">{sheet.group}</p>
          <p>{sheet.work}</p>
        </div>
        <div className="sheet-date">
          <p>
            <strong>{sheet.date}</strong>
          </p>
          <p>
            {sheet.club}
            {sheet.invented && ' (invented)'}
          </p>
        </div>
      </header>
      <ol className="sheet-rows">
        {sheet.lifters.map((lifter) => (
          <Row key={lifter.lifterId} {...{ lifter, rowMm, numeralMm, toN }} unit={sheet.unit} />
        ))}
      </ol>
      <footer className="sheet-foot">
        <div>
          {sheet.cautions.map((caution) => (
            <p key={caution} className="sheet-caution">
              {caution}
            </p>
          ))}
          {sheet.assumed.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
        </div>
        <div className="sheet-made">
          <p>{sheet.madeBy}</p>
          {sheet.changedSince && (
            <p className="sheet-caution">
              The plan, the gear or what is known of its lifters was changed after that.
            </p>
          )}
          <p className="sheet-coach">Coach</p>
          <p>
            Page {sheet.page} of {sheet.pages}
          </p>
        </div>
      </footer>
    </section>
  );
}

function Row(props: {
  lifter: LifterLine;
  rowMm: number;
  numeralMm: number;
  toN: number;
  unit: 'kg' | 'lb';
}) {
  const { lifter, rowMm, numeralMm, unit } = props;
  // What is drawn of a bar is 0.56 m long and as high as the largest disc, 0.45 m; the coach's line needs room below it.
  const barMm = Math.min(lifter.barByCoach ? 24 : 29, ((rowMm - 15) * 0.56) / 0.45);
  return (
    <li className="sheet-row" style={{ height: `${rowMm}mm` }}>
      <div className="sheet-who">
        <p className="sheet-name">
          <span className="sheet-order">{lifter.order}</span> {lifter.name}
        </p>
        <p>
          {lifter.start}
          {lifter.changes && `; ${lifter.changes}`}
        </p>
        {lifter.hung.map((line) => (
          <p key={line} className="sheet-hung">
            {line}
          </p>
        ))}
        {lifter.hung.length === 0 && <p className="sheet-hung">no bands</p>}
      </div>
      <div className="sheet-lead">
        <p className="sheet-bar" style={{ fontSize: `${numeralMm / figureShare}mm` }}>
          {lifter.bar}
          <span>{unit}</span>
        </p>
      </div>
      <div className="sheet-side">
        <LoadedBar
          label={`Bar of ${lifter.name}`}
          perSide={lifter.perSide}
          widthPx={barMm * pxPerMm}
          colour={false}
          figures={false}
        />
        <p>
          {lifter.aSide.replaceAll(' × ', '\u00a0×\u00a0')} <span>kg a side</span>
        </p>
        {lifter.barByCoach && <p className="sheet-own">set by the coach</p>}
      </div>
      <div className="sheet-load">
        <p>
          <PaperLoad load={lifter.lockout} unit={unit} /> lockout <span>{lifter.lockout.interval}</span>
        </p>
        <SmallLoad
          label={`Load of ${lifter.name} from bottom to lockout`}
          points={lifter.picture}
          toN={props.toN}
          widthPx={36 * pxPerMm}
          heightPx={Math.min(24, rowMm * 0.36) * pxPerMm}
        />
        <p>
          <PaperLoad load={lifter.bottom} unit={unit} /> bottom <span>{lifter.bottom.interval}</span>
        </p>
      </div>
      <Steps steps={lifter.steps} rowMm={rowMm} />
    </li>
  );
}

/** Every set is a box to tick; many steps stand on two lines where the row is tall enough. */
function Steps({ steps, rowMm }: { steps: readonly WrittenStep[]; rowMm: number }) {
  const lines = steps.length > stepsOnLine && rowMm >= tallRowMm ? 2 : 1;
  const perLine = Math.ceil(steps.length / lines);
  const most = { '--most': stepsOnLine / perLine, '--per-line': perLine } as CSSProperties;
  return (
    <ol className={lines === 2 ? 'sheet-steps in-columns' : 'sheet-steps'} style={most}>
      {steps.map((step, index) => (
        <li key={index}>
          <b>{step.bar}</b> {step.sets} × {step.reps}
          <Ticks count={step.sets} />
          <span className="sheet-rest">{step.rest}</span>
        </li>
      ))}
    </ol>
  );
}
