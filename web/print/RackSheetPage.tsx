import { LoadedBar } from '#web/charts/LoadedBar.tsx';
import { type Paper, pxPerMm } from './paperSize.ts';
import type { LifterLine, RackSheet, WrittenStep } from './RackSheetModel.ts';
import { SmallLoad } from './SmallLoad.tsx';
import { sheetRows } from './sheetRows.ts';

/** Height of Archivo's figures as a share of the letter size. */
const figureShare = 0.686;
/** Room that the labels of a drawn bar take above it (px). */
const barLabelPx = 30;

/** One page of the wall: a rack's lifters in lifting order, black on white, read from three metres. */
export function RackSheetPage({ sheet, paper }: { sheet: RackSheet; paper: Paper }) {
  const { rowMm, numeralMm } = sheetRows(paper, sheet.lifters.length);
  const toN = Math.max(...sheet.lifters.flatMap(({ picture }) => picture.map((point) => point.totalN)));
  const assumed = [...new Set(sheet.lifters.flatMap((lifter) => lifter.assumed))];
  return (
    <section className={`paper sheet ${paper}`} aria-label={`Sheet of ${sheet.rack}`}>
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
          {assumed.length > 0 && <p>Not measured: {assumed.join(' ')}</p>}
        </div>
        <div className="sheet-made">
          <p>{sheet.madeBy}</p>
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
  const drawnPx = Math.min(rowMm - 4, 44) * pxPerMm;
  // The drawing is 0.555 m long and 0.45 m high at one scale.
  const barPx = Math.max(44, ((drawnPx - barLabelPx) / 0.45) * 0.6);
  return (
    <li className="sheet-row" style={{ height: `${rowMm}mm` }}>
      <div className="sheet-who">
        <p className="sheet-name">
          <span className="sheet-order">{lifter.order}</span> {lifter.name}
        </p>
        <p>{lifter.start}</p>
        {lifter.hung.map((line) => (
          <p key={line} className="sheet-hung">
            {line}
          </p>
        ))}
        {lifter.hung.length === 0 && <p className="sheet-hung">no bands</p>}
        {lifter.changes && <p className="sheet-change">{lifter.changes}</p>}
      </div>
      <div className="sheet-lead">
        <p className="sheet-bar" style={{ fontSize: `${numeralMm / figureShare}mm` }}>
          {lifter.bar}
          <span>{unit}</span>
        </p>
        <p className="sheet-side">
          {lifter.aSide}
          {lifter.barByCoach && ' · set by the coach'}
        </p>
      </div>
      <LoadedBar label={`Bar of ${lifter.name}`} perSide={lifter.perSide} widthPx={barPx} colour={false} />
      <div className="sheet-load">
        <p>
          <b>{lifter.lockout.load}</b> {unit} at lockout <span>{lifter.lockout.interval}</span>
        </p>
        <SmallLoad
          label={`Load of ${lifter.name} from bottom to lockout`}
          points={lifter.picture}
          toN={props.toN}
          widthPx={36 * pxPerMm}
          heightPx={Math.min(20, rowMm * 0.3) * pxPerMm}
        />
        <p>
          <b>{lifter.bottom.load}</b> {unit} at the bottom <span>{lifter.bottom.interval}</span>
        </p>
      </div>
      <Steps steps={lifter.steps} />
    </li>
  );
}

/** Every set is a box to tick. */
function Steps({ steps }: { steps: readonly WrittenStep[] }) {
  return (
    <ol className="sheet-steps">
      {steps.map((step, index) => (
        <li key={index}>
          <b>{step.bar}</b> {step.sets} × {step.reps}
          <span className="ticks" role="img" aria-label={`${step.sets} boxes to tick`}>
            {Array.from({ length: step.sets }, (_, set) => (
              <i key={set} />
            ))}
          </span>
          <span className="sheet-rest">{step.rest}</span>
        </li>
      ))}
    </ol>
  );
}
