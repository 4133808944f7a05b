import { effortKey, effortLine, unbroken } from '#contract/paper/effortWords.ts';
import { pxPerMm } from '#contract/paper/paperSize.ts';
import type { LifterLine, RackSheet, WrittenLoad } from '#contract/paper/RackSheetModel.ts';
import { LoadedBar } from '#web/charts/LoadedBar.tsx';
import { PaperLoad } from './PaperLoad.tsx';
import { SmallLoad } from './SmallLoad.tsx';
import { Ticks } from './Ticks.tsx';
import { useFitting } from './useFitting.ts';

/** Closest setting of a card, in cards.css: smaller figures, then no drawings, then smaller letters. */
const closest = 3;

/** A quarter of a page for a lifter's own hand: the same words as on the wall, and why. */
export function LifterCard({ sheet, lifter }: { sheet: RackSheet; lifter: LifterLine }) {
  const toN = Math.max(...lifter.picture.map((point) => point.totalN));
  const card = useFitting<HTMLElement>(closest);
  return (
    <section ref={card} className="card" aria-label={`Card of ${lifter.name}`}>
      <header>
        <h2>{lifter.name}</h2>
        <p>
          {sheet.date}
          {sheet.invented && ', invented club'}
        </p>
        <p>
          {sheet.rack}, lifts as number {lifter.order}. {sheet.group}, {lifter.start}
          {lifter.stack && `: ${lifter.stack}`}.
        </p>
      </header>
      <div className="card-lead">
        <div>
          <p className="card-bar">
            {lifter.bar}
            <span>{sheet.unit}</span>
          </p>
          <p>
            {lifter.aSide}{' '}
            <span className={lifter.barKnown === 'assumed' ? 'dashed' : undefined}>kg a side</span>
            {lifter.barByCoach && ' · set by the coach'}
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
      {lifter.cautions.map(({ sentence }) => (
        <p key={sentence} className="card-small card-caution">
          {sentence}
        </p>
      ))}
      <ol className="card-steps">
        {lifter.steps.map((step, index) => (
          <li key={index}>
            <b>
              {step.bar} {sheet.unit}
            </b>
            <span>
              {step.sets} × {step.reps}
            </span>
            <Ticks count={step.sets} />
            <span>{step.rest}</span>
            <p className="card-effort">{effortLine(step.effort)}</p>
          </li>
        ))}
      </ol>
      <div className="card-load">
        <SmallLoad
          label={`Load of ${lifter.name} from bottom to lockout`}
          points={lifter.picture}
          toN={toN}
          widthPx={42 * pxPerMm}
          heightPx={19 * pxPerMm}
        />
        <div>
          <p>
            <PaperLoad load={lifter.lockout} unit={sheet.unit} /> at lockout{rest(lifter.lockout)}
          </p>
          <p>
            <PaperLoad load={lifter.bottom} unit={sheet.unit} /> at the bottom{rest(lifter.bottom)}
          </p>
        </div>
      </div>
      <p>{unbroken(`${lifter.percentages}, of ${lifter.reference}. ${effortKey}`)}</p>
      {lifter.assumed.map(({ sentence }) => (
        <p key={sentence} className="card-small">
          {sentence}
        </p>
      ))}
      <p className="card-small">{sheet.madeBy}</p>
    </section>
  );
}

function rest({ interval, share, habit }: WrittenLoad): string {
  return unbroken(
    [interval && `, ${interval}`, share && `; ${share} of strength there`, habit && `; ${habit}`].join(''),
  );
}
