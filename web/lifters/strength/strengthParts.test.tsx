import { QueryClient, QueryClientProvider } from '@tanstack/react-query';
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import { Router } from 'wouter';
import { type StrengthEstimate, strengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { loggedSquat } from '#contract/tests/loggedSquat.ts';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { populationPrior } from '#core/strength/parameters.ts';
import { clubKey } from '#web/api/useClub.ts';
import { ViewUnits } from '#web/parts/ViewUnits.tsx';
import type { InPart } from '../LifterView.ts';
import { lifterRecords } from '../lifterRecords.ts';
import { AnySetupPart, LearnedPart, StrengthPart } from './strengthParts.tsx';

const club = twoLifters();
const sets = Array.from({ length: 16 }, (_, week) => {
  const doneOn = new Date(Date.UTC(2026, 5, 28) - week * 7 * 86_400_000).toISOString().slice(0, 10);
  return loggedSquat(`week ${week}`, doneOn, 100, { with: { start: { way: 'box', heightM: 0.3 } } });
});
const wide = { median: 0, low80: -0.13, high80: 0.13, low95: -0.2, high95: 0.2 };

/** The shorter lifter, 52 kg, who squats 110 kg straight, surely; `change` says what else the log tells. */
function estimate(change: Partial<StrengthEstimate> = {}): StrengthEstimate {
  const middle = { median: 110, low80: 107, high80: 113, low95: 105, high95: 115 };
  // 0.88 of the body rises with a squat (docs/model.md).
  const lnTotal = Math.log(110 + 0.88 * 52);
  return strengthEstimate.parse({
    lifterId: 'short',
    lift: 'squat',
    on: '2026-06-28',
    setCount: sets.length,
    lastSetOn: '2026-06-28',
    bodyMassKg: 52,
    bodyMassKnown: 'measured',
    maxKg: middle,
    inEquipment: [],
    parameters: [{ name: 'lnTiring', now: { ...wide, low80: -0.05, high80: 0.05 }, before: wide }],
    history: [{ on: '2026-06-28', ...middle }],
    observations: [],
    leftOut: [],
    draws: Array.from({ length: 10 }, () => ({ ...populationPrior('squat').mean, lnTotal })),
    ...change,
  });
}

/** Eight weeks over which a rise is so likely, and the change so unsure. */
function over(probability: number, spread: number): Pick<StrengthEstimate, 'rise'> {
  return { rise: [{ weeks: 8, probability, median: 0, low80: -spread, high80: spread }] };
}

/** The text of what the log says, without its tags. */
function read(shown: StrengthEstimate): string {
  const client = new QueryClient();
  client.setQueryData(clubKey, { records: club, seq: 1 });
  const view: InPart = {
    id: 'strength',
    own: lifterRecords(club, 'short')!,
    today: shown.on,
    estimates: [shown],
    sets,
    hasSets: true,
    showsEstimate: true,
    hasEstimates: true,
  };
  const html = renderToStaticMarkup(
    <QueryClientProvider client={client}>
      <ViewUnits clubMass="kg" clubLength="cm">
        <Router ssrPath="/short">
          <StrengthPart {...view} />
          <AnySetupPart {...view} />
          <LearnedPart {...view} />
        </Router>
      </ViewUnits>
    </QueryClientProvider>,
  );
  return html.replaceAll(/<[^>]+>/g, ' ').replaceAll(/\s+/g, ' ');
}

test('the straight lift in the table of setups is the very maximum of the estimate, and the box is there unasked', () => {
  // Draws are a rounding of what is believed: here two kilograms off.
  const lnTotal = Math.log(112 + 0.88 * 52);
  const draws = Array.from({ length: 10 }, () => ({ ...populationPrior('squat').mean, lnTotal }));
  const text = read(estimate({ draws }));
  expect(text).toMatch(/today.{1,6}s maximum, raw 110 kg est\. 105 to 115/);
  expect(text).toMatch(/Heaviest bar .* free squat, straight weight 110 kg est\. 107 to 113/);
  expect(text).toMatch(/box 30 cm \d+ kg est\./);
});

test('a stall is said with the box that never changed; of a lifter who gets stronger, or whom the log does not settle, nothing is said', () => {
  const stalled = read(estimate(over(0.1, 0.01)));
  expect(stalled).toContain('has probably not risen in the last 8 weeks');
  expect(stalled).toContain('box 30 cm with straight weight, in 8 of the 8 weeks');
  for (const silent of [over(0.7, 0.01), over(0.1, 0.08), { rise: [] }])
    expect(read(estimate(silent))).not.toContain('probably not risen');
});

test('it is told what the sets of the newest day did together, and where they did nothing', () => {
  const told = (...moves: [on: string, movedKg: number][]) =>
    read(
      estimate({
        observations: moves.map(([on, movedKg], i) => ({
          setId: `week ${i}`,
          on,
          movedKg,
          says: 'near',
          straightKg: 110,
          surprise: 0,
        })),
      }),
    );
  expect(told(['2026-06-21', 5], ['2026-06-28', 1.2], ['2026-06-28', -0.5])).toContain(
    'The 2 sets of 28 Jun 2026 moved it up by 0.7 kg.',
  );
  expect(told(['2026-06-21', 5], ['2026-06-28', -0.01])).toContain(
    'The set of 28 Jun 2026 left it where it was.',
  );
  expect(read(estimate())).not.toContain('moved it');
});

test('only what the log has narrowed is called learned', () => {
  expect(read(estimate())).toContain('Strength lost per second');
  const untouched = estimate({ parameters: [{ name: 'lnTiring', now: wide, before: wide }] });
  expect(read(untouched)).not.toContain('Strength lost per second');
});

test('a set that could not be used is named with its reason', () => {
  const text = read(
    estimate({ leftOut: [{ id: 'week 0', reason: 'The start is too high for this lifter.' }] }),
  );
  expect(text).toContain('One set could not be used');
  expect(text).toContain('28 Jun 2026, 100 kg, a single: The start is too high for this lifter.');
});

test('sets that look like pounds are named with what was meant, and can be put right; struck ones are past', () => {
  const slips = [{ looksLike: 'pounds' as const, ids: ['week 1', 'week 0'] }];
  const text = read(estimate({ slips }));
  expect(text).toContain(
    'These 2 squats from 21 Jun 2026 to 28 Jun 2026 look like pounds written down as kilograms. They are kept out',
  );
  // NIST SP 811: 100 lb = 45.359237 kg.
  expect(text).toContain('Written down: 100 kg. Probably meant: 45.4 kg.');
  expect(text).toContain('Turn pounds into kilograms in 2 sets');
  expect(read(estimate({ slips: [{ looksLike: 'pounds', ids: ['no longer there'] }] }))).not.toContain(
    'pounds',
  );
});
