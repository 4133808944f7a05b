import type { CSSProperties } from 'react';
import { effortKey, effortLine } from '#contract/paper/effortWords.ts';
import { type Paper, pxPerMm } from '#contract/paper/paperSize.ts';
import type { LifterLine, RackSheet, WrittenStep } from '#contract/paper/RackSheetModel.ts';
import { aboveRows, linesOfStep, mostStepLines, sheetRows } from '#contract/paper/sheetRows.ts';
import { LoadedBar } from '#web/charts/LoadedBar.tsx';
import { PaperLoad } from './PaperLoad.tsx';
import { SmallLoad } from './SmallLoad.tsx';
import { Ticks } from './Ticks.tsx';

/** Height of Archivo's figures as a share of the letter size. */
const figureShare = 0.686;

/** One page of the wall: a rack's lifters in lifting order, black on white, read from three metres. */
export function RackSheetPage({ sheet, paper }: { sheet: RackSheet; paper: Paper }) {
  const said = [...sheet.cautions, ...sheet.assumed, effortKey];
  const stepLines = mostStepLines(sheet.lifters);
  const { rowMm, numeralMm, stepMm } = sheetRows(
    paper,
    sheet.lifters.length,
    stepLines,
    said,
    aboveRows(sheet),
  );
  const aboveMm = rowMm - stepLines * stepMm;
  const toN = Math.max(...sheet.lifters.flatMap(({ picture }) => picture.map((point) => point.totalN)));
  return (
    <section
      className={`paper sheet ${paper}`}
      aria-label={`Sheet of ${sheet.rack}`}
      style={{ '--grow': growth(aboveMm), '--step-line': `${stepMm}mm` } as CSSProperties}
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
      {(sheet.title || sheet.note) && (
        <p className="sheet-note">
          <b>{sheet.title}</b> {sheet.note && <b>Note:</b>} {sheet.note}
        </p>
      )}
      <ol className="sheet-rows">
        {sheet.lifters.map((lifter) => (
          <Row key={lifter.lifterId} {...{ lifter, rowMm, aboveMm, numeralMm, toN }} unit={sheet.unit} />
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
          <p>{effortKey}</p>
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
  /** What of the row stands above its steps. */
  aboveMm: number;
  numeralMm: number;
  toN: number;
  unit: 'kg' | 'lb';
}) {
  const { lifter, rowMm, aboveMm, numeralMm, unit } = props;
  // What is drawn of a bar is 0.56 m long and as high as the largest disc, 0.45 m; the coach's line needs room below it.
  const barMm = Math.min(lifter.barByCoach ? 24 : 29, ((aboveMm - 14 * growth(aboveMm)) * 0.56) / 0.45);
  return (
    <li className="sheet-row" style={{ height: `${rowMm}mm` }}>
      <div className="sheet-who">
        <p className="sheet-name">
          <span className="sheet-order">{lifter.order}</span> {lifter.name}
        </p>
        <p>
          {lifter.start}
          {lifter.stack && `: ${lifter.stack}`}
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
          {lifter.aSide.replaceAll(' × ', '\u00a0×\u00a0')}{' '}
          <span className={lifter.barKnown === 'assumed' ? 'dashed' : undefined}>kg a side</span>
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
          heightPx={Math.min(24, aboveMm * 0.42) * pxPerMm}
        />
        <p>
          <PaperLoad load={lifter.bottom} unit={unit} /> bottom <span>{lifter.bottom.interval}</span>
        </p>
      </div>
      <Steps steps={lifter.steps} unit={unit} />
    </li>
  );
}

/** Letters grow and shrink with what of a row stands above its steps. */
function growth(aboveMm: number): number {
  return Math.min(1.3, aboveMm / 24);
}

/** A line for every step: its bar, a box to tick for every set, and how its sets go. */
function Steps({ steps, unit }: { steps: readonly WrittenStep[]; unit: string }) {
  return (
    <ol className="sheet-steps">
      {steps.map((step, index) => (
        <li key={index} style={{ '--sets': step.sets, '--lines': linesOfStep(step) } as CSSProperties}>
          <span>
            <b>{step.bar}</b> {unit}
          </span>
          <span>
            {step.sets} × {step.reps}
          </span>
          <Ticks count={step.sets} />
          <span>{step.rest}</span>
          <span className="sheet-effort">{effortLine(step.effort)}</span>
        </li>
      ))}
    </ol>
  );
}
