import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import { dateText } from '#contract/words/dateText.ts';
import { wearSentence } from '#contract/words/wearSentence.ts';
import { useRecords } from '#web/api/useRecords.ts';
import type { PairState } from '#web/gear/state/pairState.ts';
import type { Gear } from '#web/gear/state/useGear.ts';
import { Choice } from '#web/parts/Choice.tsx';
import { BandCaution } from './BandCaution.tsx';
import { BandForm } from './BandForm.tsx';
import { BandGives } from './BandGives.tsx';
import { DriftTable } from './DriftTable.tsx';
import { FitPanel } from './FitPanel.tsx';
import { HangSteps } from './HangSteps.tsx';
import { ReadingForm } from './ReadingForm.tsx';
import { ReadingTable } from './ReadingTable.tsx';

/** One pair: its readings and curves, what it gives, what it wants. */
export function BandPage({ gear, state }: { gear: Gear; state: PairState }) {
  const { pair } = state;
  const [, go] = useLocation();
  const pairs = useRecords('bandPair');
  const [changing, setChanging] = useState(false);
  const [sideName, setSideName] = useState<'a' | 'b'>('a');
  const [freshId, setFreshId] = useState<string | null>(null);
  const [showSteps, setShowSteps] = useState<boolean | null>(null);
  const side = state.sides[sideName === 'a' ? 0 : 1];
  const steps = showSteps ?? side.readings.length === 0;
  const retire = (retiredOn: string | null) =>
    void pairs.update({ ...pair, retiredOn }, `band pair ${pair.label}`, pair).catch(() => {});
  return (
    <article className="stack loose">
      <header className="stack">
        <Link href="/">All bands</Link>
        <div className="row ends base">
          <h1>
            {pair.label} <span className="quiet">{pair.widthMm} mm</span>
            {pair.retiredOn && <span className="mark">retired {dateText(pair.retiredOn)}</span>}
          </h1>
          <div className="row">
            <button type="button" onClick={() => setChanging(!changing)} aria-expanded={changing}>
              Change
            </button>
            <button type="button" onClick={() => retire(pair.retiredOn ? null : gear.today)}>
              {pair.retiredOn ? 'Put back to use' : 'Retire'}
            </button>
          </div>
        </div>
        {changing && (
          <BandForm
            pair={pair}
            onSaved={() => setChanging(false)}
            onLeave={() => setChanging(false)}
            onRemove={() => {
              go('/');
              void pairs.remove(pair.id, `band pair ${pair.label}`);
            }}
          />
        )}
        {pair.installedOn && <p className="quiet">In use since {dateText(pair.installedOn)}.</p>}
        {pair.note && <p>{pair.note}</p>}
        <Wants state={state} allowedShare={gear.club.pairMismatchShare} />
      </header>

      <section className="stack">
        <div className="row ends">
          <Choice
            label="Band"
            showLabel
            options={state.sides.map(({ side: name, readings }) => ({
              value: name,
              word: `${name}: ${readings.length === 0 ? 'no readings' : readings.length === 1 ? '1 reading' : `${readings.length} readings`}`,
            }))}
            value={sideName}
            onChange={setSideName}
          />
          <button type="button" className="plain" aria-expanded={steps} onClick={() => setShowSteps(!steps)}>
            {steps ? 'Hide how to hang it' : 'How to hang it'}
          </button>
        </div>
        {steps && <HangSteps side={sideName} />}
        <div className="at-scale">
          <div className="at-scale-form">
            <ReadingForm key={sideName} state={state} side={side} today={gear.today} onAdded={setFreshId} />
            <BandCaution />
          </div>
          <div className="at-scale-curve stack loose">
            <FitPanel gear={gear} state={state} side={side} freshId={freshId} />
            <BandGives gear={gear} state={state} />
          </div>
          <div className="at-scale-readings">
            <ReadingTable side={side} />
          </div>
        </div>
      </section>

      <div className="drifts">
        {state.sides.map((each) => (
          <DriftTable
            key={each.side}
            side={each}
            gravityMps2={gear.gravityMps2}
            allowedShare={gear.club.pairMismatchShare}
          />
        ))}
      </div>
    </article>
  );
}

/** What the pair wants: a new measuring, a look, another partner. */
function Wants({ state, allowedShare }: { state: PairState; allowedShare: number }) {
  const { share, flagged } = state.mismatch;
  const [a, b] = state.sides.map(({ findings }) => findings.map((found) => wearSentence(found, dateText)));
  const wants = [...new Set([...(a ?? []), ...(b ?? [])])].map((sentence) => {
    const who = !b?.includes(sentence) ? 'Band a' : !a?.includes(sentence) ? 'Band b' : 'Both bands';
    return `${who}: ${sentence}`;
  });
  wants.unshift(
    ...state.sides.flatMap(({ side, fault }) =>
      fault === null ? [] : [`Band ${side}: ${fault} Remove it.`],
    ),
  );
  if (flagged && share !== null) {
    const harder = share > 0 ? 'a' : 'b';
    wants.unshift(
      `Band ${harder} pulls ${(Math.abs(share) * 100).toFixed(0)} % more than the other; the club allows ${(allowedShare * 100).toFixed(0)} %: the bar would tilt.`,
    );
  }
  if (wants.length === 0) return null;
  return (
    <ul className="wants">
      {wants.map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
    </ul>
  );
}
