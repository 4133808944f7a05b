import { effortKey, effortLine, unbroken } from '#contract/paper/effortWords.ts';
import { type Paper, pxPerMm } from '#contract/paper/paperSize.ts';
import type { LifterOnSheet, RackSheet, WrittenStep } from '#contract/paper/RackSheetModel.ts';
import { LoadedBar } from '#web/charts/LoadedBar.tsx';
import { BesideDiscs } from './BesideDiscs.tsx';
import { discsOnPaper, stepSide } from './discsOnPaper.ts';
import { letterSizes } from './letterSizes.ts';
import { PaperLoad } from './PaperLoad.tsx';
import { SheetHead } from './SheetHead.tsx';
import { SinceThen } from './SinceThen.tsx';
import { SmallLoad } from './SmallLoad.tsx';
import { Ticks } from './Ticks.tsx';
import { useFitting } from './useFitting.ts';

/** Closest setting of a page, in sheet.css: letters of the least size, and nothing drawn. */
const closest = 3;

/**
 * One page of the wall: a rack's lifters in lifting order, black on white, read from three metres. `onTooFull` hears when
 * they do not fit at the least size of letters; a lifter alone takes what paper he needs.
 */
export function RackSheetPage({
  sheet,
  paper,
  onTooFull,
}: {
  sheet: RackSheet;
  paper: Paper;
  onTooFull?: () => void;
}) {
  const page = useFitting<HTMLElement>(closest, sheet.lifters.length > 1 ? onTooFull : undefined);
  const toN = Math.max(...sheet.lifters.flatMap(({ picture }) => picture.map((point) => point.totalN)));
  return (
    <section
      ref={page}
      className={`paper sheet ${paper}`}
      aria-label={`Sheet of ${sheet.rack}`}
      style={letterSizes}
    >
      <SheetHead sheet={sheet}>
        <p>{sheet.work}</p>
      </SheetHead>
      <ol className="sheet-rows">
        {sheet.lifters.map((lifter) => (
          <Row key={lifter.lifterId} {...{ lifter, toN }} unit={sheet.unit} />
        ))}
      </ol>
      <footer className="sheet-foot">
        {sheet.cautions.map((caution) => (
          <p key={caution} className="sheet-caution">
            {`${caution} `}
          </p>
        ))}
        {sheet.changedSince && (
          <p className="sheet-caution">
            The plan, the gear or something about its lifters was changed after this was worked out.
          </p>
        )}
        <SinceThen sentences={sheet.since} />
        <div className="sheet-last">
          <div className="fine">
            {sheet.assumed.map((sentence) => (
              <p key={sentence}>{sentence}</p>
            ))}
            <p>{effortKey}</p>
          </div>
          <div className="fine">
            <p>{sheet.madeBy}</p>
            <p className="sheet-coach">Coach</p>
          </div>
        </div>
      </footer>
    </section>
  );
}

function Row({ lifter, toN, unit }: { lifter: LifterOnSheet; toN: number; unit: 'kg' | 'lb' }) {
  return (
    <li className="sheet-row">
      <p className="sheet-who">
        <span className="sheet-order">{lifter.order}</span> <b className="sheet-name">{lifter.name}</b>{' '}
        {unbroken(lifter.start)}
        {lifter.stack && `: ${lifter.stack}`}; {lifter.changes && `${lifter.changes}; `}
        <b>{lifter.hung.length > 0 ? lifter.hung.join('; ') : 'no bands'}</b>
      </p>
      {lifter.note && (
        <p className="sheet-who">
          <b>Note:</b> {lifter.note}
        </p>
      )}
      <SinceThen sentences={lifter.since} />
      <div className="sheet-body">
        <div className="sheet-mass">
          <p className="sheet-bar">
            {lifter.bar}
            <span>{unit}</span>
          </p>
          <div className="sheet-load">
            <div>
              <p>
                <PaperLoad load={lifter.lockout} unit={unit} /> lockout <span>{lifter.lockout.interval}</span>
              </p>
              <p>
                <PaperLoad load={lifter.bottom} unit={unit} /> bottom <span>{lifter.bottom.interval}</span>
              </p>
            </div>
            <SmallLoad
              label={`Load of ${lifter.name} from bottom to lockout`}
              points={lifter.picture}
              toN={toN}
              widthPx={18 * pxPerMm}
              heightPx={15 * pxPerMm}
            />
          </div>
        </div>
        <div className="sheet-work">
          <div className="sheet-top">
            <LoadedBar
              label={`Bar of ${lifter.name}`}
              perSide={lifter.perSide}
              widthPx={19 * pxPerMm}
              colour={false}
              figures={false}
            />
            <p>
              <span className="sheet-discs">{discsOnPaper(lifter.aSide)}</span>{' '}
              <BesideDiscs lifter={lifter} />
            </p>
          </div>
          <Steps steps={lifter.steps} unit={unit} />
        </div>
      </div>
    </li>
  );
}

/** Every step with its bar and discs, a box to tick for every set, and how its sets go. */
function Steps({ steps, unit }: { steps: readonly WrittenStep[]; unit: string }) {
  return (
    <ol className="sheet-steps">
      {steps.map((step, index) => (
        <li key={index}>
          <span className="sheet-step">
            <span>
              <b>{step.bar}</b> {unit}
              {step.trueBar && ` (${step.trueBar})`}
            </span>
            <span>
              {discsOnPaper(step.aSide)}
              {stepSide(step.aSide)}
            </span>
            <span>
              <b>
                {step.sets} × {step.reps}
              </b>
            </span>
            <Ticks count={step.sets} />
            <span>{step.rest}</span>
          </span>
          {effortLine(step.effort)}
        </li>
      ))}
    </ol>
  );
}
