import type { ReactNode } from 'react';
import { effortLine, unbroken } from '#contract/paper/effortWords.ts';
import { pxPerMm } from '#contract/paper/paperSize.ts';
import type { LifterLine, LifterOnSheet, RackSheet, WrittenLoad } from '#contract/paper/RackSheetModel.ts';
import { strengthThere } from '#contract/paper/strengthThere.ts';
import { LoadedBar } from '#web/charts/LoadedBar.tsx';
import { BesideDiscs } from './BesideDiscs.tsx';
import { stepSide } from './discsOnPaper.ts';
import { PaperLoad } from './PaperLoad.tsx';
import { SinceThen } from './SinceThen.tsx';
import { SmallLoad } from './SmallLoad.tsx';
import { Ticks } from './Ticks.tsx';
import { useQuarter } from './useQuarter.ts';

/** Which blocks of a card stand on a quarter of a page, and which of how many quarters it is. */
interface Quarter {
  from: number;
  to: number | undefined;
  number: number;
  of: number;
}

const whole: Quarter = { from: 0, to: undefined, number: 1, of: 1 };

/**
 * A quarter of a page for a lifter's own hand: the same words as on the wall, and why. `onTooFull` hears at which block another
 * quarter must begin: letters and drawings stay as large as they are, however much there is to say.
 */
export function LifterCard(props: {
  sheet: RackSheet;
  lifter: LifterOnSheet;
  quarter?: Quarter;
  onTooFull?: (at: number) => void;
}) {
  const { sheet, lifter, quarter = whole, onTooFull } = props;
  const card = useQuarter<HTMLElement>(onTooFull && ((fit) => onTooFull(quarter.from + fit)));
  const part = quarter.of > 1 ? `, part ${quarter.number} of ${quarter.of}` : '';
  return (
    <section
      ref={card}
      className="card"
      aria-label={`Card of ${lifter.name}${quarter.number > 1 ? `, part ${quarter.number}` : ''}`}
    >
      <header>
        <h2>{lifter.name}</h2>
        <p>
          {sheet.date}
          {sheet.invented && ', invented club'}
          {part}
        </p>
        {quarter.number === 1 && (
          <p>
            {sheet.rack}, lifts as number {lifter.order}. {sheet.group}, {unbroken(lifter.start)}
            {lifter.stack && `: ${lifter.stack}`}.
          </p>
        )}
        <p className="fine">{sheet.madeBy}</p>
        {quarter.number === 1 && <SinceThen sentences={[...sheet.since, ...lifter.since]} />}
      </header>
      {blocksOf(lifter, sheet.unit)
        .slice(quarter.from, quarter.to)
        .map((block, index) => (
          <div key={quarter.from + index} className="card-block">
            {block}
          </div>
        ))}
    </section>
  );
}

/** All that a card says, in pieces that stand whole: first the bar and what hangs, drawn and in words, and what to look out for. */
function blocksOf(lifter: LifterOnSheet, unit: 'kg' | 'lb'): ReactNode[] {
  return [
    <Lead key="lead" {...{ lifter, unit }} />,
    <Load key="load" {...{ lifter, unit }} />,
    ...(lifter.note === ''
      ? []
      : [
          <p key="note">
            <b>Note:</b> {lifter.note}
          </p>,
        ]),
    ...lifter.cautions.map(({ sentence }) => (
      <p key={sentence} className="card-caution">
        {sentence}
      </p>
    )),
    ...lifter.steps.map((step, index) => (
      <div key={index} className="card-step">
        <p>
          <b>
            {step.bar} {unit}
          </b>
          {step.trueBar && <span>({step.trueBar})</span>}
          <span>
            {step.aSide}
            {stepSide(step.aSide)}
          </span>
          <b>
            {step.sets} × {step.reps}
          </b>
          <span>{step.rest}</span>
          <Ticks count={step.sets} />
        </p>
        <p>{effortLine(step.effort)}</p>
      </div>
    )),
    <p key="fine" className="fine">
      {unbroken(`${lifter.percentages}, of ${lifter.reference}.`)}{' '}
      {lifter.assumed.map(({ sentence }) => sentence).join(' ')}
    </p>,
  ];
}

function Lead({ lifter, unit }: { lifter: LifterLine; unit: string }) {
  return (
    <>
      <div className="card-lead">
        <div>
          <p className="card-bar">
            {lifter.bar}
            <span>{unit}</span>
          </p>
          <p>
            {lifter.aSide} <BesideDiscs lifter={lifter} />
          </p>
        </div>
        <LoadedBar
          label={`Bar of ${lifter.name}`}
          perSide={lifter.perSide}
          widthPx={27 * pxPerMm}
          colour={false}
          figures={false}
        />
      </div>
      <p className="card-hung">
        {lifter.hung.length > 0 ? lifter.hung.join('; ') : 'No bands, straight weight.'}
      </p>
    </>
  );
}

function Load({ lifter, unit }: { lifter: LifterLine; unit: string }) {
  return (
    <div className="card-load">
      <SmallLoad
        label={`Load of ${lifter.name} from bottom to lockout`}
        points={lifter.picture}
        toN={Math.max(...lifter.picture.map((point) => point.totalN))}
        widthPx={30 * pxPerMm}
        heightPx={17.5 * pxPerMm}
      />
      <div>
        <p>
          <PaperLoad load={lifter.lockout} unit={unit} /> at lockout{rest(lifter.lockout)}
        </p>
        <p>
          <PaperLoad load={lifter.bottom} unit={unit} /> at the bottom{rest(lifter.bottom)}
        </p>
      </div>
    </div>
  );
}

function rest(load: WrittenLoad): string {
  const { interval, habit } = load;
  const share = strengthThere(load);
  return unbroken([interval && `, ${interval}`, share && `; ${share}`, habit && `; ${habit}`].join(''));
}
