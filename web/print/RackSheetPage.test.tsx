import type { ReactElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import { effortLine } from '#contract/paper/effortWords.ts';
import type { LifterOnSheet, RackSheet } from '#contract/paper/RackSheetModel.ts';
import { LifterCard } from './LifterCard.tsx';
import { RackSheetPage } from './RackSheetPage.tsx';

const effort = {
  speed: '0.62 → 0.58 m/s',
  strain: '4 s a set',
  shorterRest: 'resting 0:45, last rep 0.55 m/s',
  spare: '26 %',
  inZone: '',
  allReps: '96 %',
};

const line = (order: number): LifterOnSheet => ({
  lifterId: `lifter-${order}`,
  order,
  name: `Invented Lifter ${order}`,
  start: 'box 36 cm',
  stack: order === 2 ? 'Box 33 and Mat 3' : '',
  bar: String(90 + order * 2.5),
  note: '',
  since: [],
  trueBar: '',
  barByCoach: order === 2,
  barKnown: order === 1 ? 'assumed' : 'measured',
  perSide: [
    { faceMassKg: 25, count: 1, diameterM: 0.45, thicknessM: 0.027 },
    { faceMassKg: 10, count: 1, diameterM: 0.325, thicknessM: 0.021 },
  ],
  aSide: '25 + 10',
  hung: ['64-A, doubled, low'],
  changes: order === 1 ? '' : 'same bands',
  steps: [
    { sets: 2, reps: 2, bar: '70', trueBar: '', aSide: '20 + 2.5', rest: 'rest 1:30', effort },
    {
      sets: 8,
      reps: 2,
      bar: String(90 + order * 2.5),
      trueBar: '',
      aSide: '25 + 10',
      rest: 'rest 1:00',
      effort,
    },
  ],
  bottom: { load: '137', known: 'estimated', interval: '131 to 143', share: '68 %', habit: '' },
  lockout: {
    load: '181',
    known: 'estimated',
    interval: '172 to 190',
    share: '35 %',
    habit: 'by habit 190 kg',
  },
  percentages: '50 % bar, 75 % lockout',
  reference: 'the best of 200 kg of 2026-05-02',
  effort,
  picture: [
    { zM: 1, barN: 900, bandN: 400, chainN: 0, totalN: 1300 },
    { zM: 1.3, barN: 900, bandN: 600, chainN: 0, totalN: 1500 },
    { zM: 1.6, barN: 900, bandN: 800, chainN: 0, totalN: 1700 },
  ],
  assumed: [{ caution: { code: 'heightsEstimated' }, sentence: 'Heights are estimated.' }],
  cautions: [],
});

const sheet = (lifters: number): RackSheet => ({
  groupId: 'squats',
  key: 'group rack',
  parts: 1,
  club: 'Invented Club',
  invented: true,
  date: 'Thursday 26 November 2026',
  group: 'Speed squat',
  rack: 'North rack',
  unit: 'kg',
  work: 'Squat, box 36 cm.',
  title: '',
  note: '',
  lifters: Array.from({ length: lifters }, (_, i) => line(i + 1)),
  cautions: ['Bands under load: check loops and pegs before every set.'],
  assumed: ['Heights estimated from stature: Invented Lifter 1.'],
  madeBy: 'Worked out by Rackwright.',
  changedSince: lifters === 2,
  since: [],
  page: 1,
  pages: 2,
});

test('lifters stand in lifting order, each set has a box to tick, and assumptions are said once', () => {
  const html = renderToStaticMarkup(<RackSheetPage sheet={sheet(3)} paper="a4" />);
  const names = [...html.matchAll(/Invented Lifter (\d)<\/b>/g)].map(([, n]) => Number(n));
  expect(names).toEqual([1, 2, 3]);
  // Ten sets each (2 + 8), three lifters.
  expect(html.match(/<i><\/i>/g)).toHaveLength(30);
  expect(html).toContain('Heights estimated from stature: Invented Lifter 1.');
  expect(html).toContain('set by the coach');
  expect(html).toContain('Page 1 of 2');
});

test('a warm-up step says its discs, as the heaviest does, on sheet and card', () => {
  for (const paper of [
    <RackSheetPage key="sheet" sheet={sheet(1)} paper="a4" />,
    <LifterCard key="card" sheet={sheet(1)} lifter={line(1)} />,
  ]) {
    expect(asRead(paper)).toContain('20 + 2.5 a side');
    expect(asRead(paper)).toContain('25 + 10 a side');
  }
});

test('an empty bar has no discs, and nothing a side', () => {
  const [warmUp, ...others] = line(1).steps;
  const empty = { ...line(1), aSide: 'no discs', steps: [{ ...warmUp!, aSide: 'no discs' }, ...others] };
  const read = asRead(<RackSheetPage sheet={{ ...sheet(1), lifters: [empty] }} paper="a4" />);
  expect(read).toContain('no discs');
  expect(read).not.toMatch(/no discs( kg)? a side/);
});

test('a card keeps bar, bands and drawings before its warnings, however many these are, and loses none', () => {
  const cautions = Array.from({ length: 20 }, (_, i) => ({
    caution: { code: 'bandsUnderLoad' as const },
    sentence: `Caution number ${i}.`,
  }));
  const card = asRead(<LifterCard sheet={sheet(1)} lifter={{ ...line(1), cautions }} />);
  const at = (text: string) => card.indexOf(text);
  expect(card.match(/role="img"/g)).toHaveLength(2);
  expect(at('Load of Invented Lifter 1')).toBeLessThan(at('Caution number 0.'));
  for (const { sentence } of cautions) expect(at(sentence)).toBeGreaterThan(0);
});

test('the quarters of a card say together what one card says, each with the name', () => {
  const [first, second] = [quarter(0, 3, 1), quarter(3, undefined, 2)];
  expect(first).toContain('part 1 of 2');
  expect(second).toContain('part 2 of 2');
  for (const part of [first, second]) expect(part).toContain('Invented Lifter 1');
  for (const text of ['64-A, doubled, low', '2 × 2']) {
    expect(first).toContain(text);
    expect(second).not.toContain(text);
  }
  for (const text of ['8 × 2', '50 % bar, 75 % lockout', 'Heights are estimated.']) {
    expect(second).toContain(text);
    expect(first).not.toContain(text);
  }
});

test("the coach's note stands on every sheet, and nothing of it where there is none", () => {
  const note = 'Doors close at nine; bring the <low> box.';
  const html = renderToStaticMarkup(<RackSheetPage sheet={{ ...sheet(3), note }} paper="letter" />);
  expect(html).toContain('Doors close at nine; bring the &lt;low&gt; box.');
  expect(renderToStaticMarkup(<RackSheetPage sheet={sheet(3)} paper="letter" />)).not.toContain('Note');
});

test('a sheet of a day that was changed since says so', () => {
  expect([saysChanged(2), saysChanged(3)]).toEqual([true, false]);
});

test('a card holds the loads with their intervals, and what habit would call the load at lockout', () => {
  const card = asRead(<LifterCard sheet={sheet(1)} lifter={line(1)} />);
  expect(card).toContain('172 to 190');
  expect(card).toContain('by habit 190 kg');
});

test('card and sheet say of every step its speeds, its time, the chance of all reps and what a shorter rest costs, in the same words', () => {
  const [first] = line(1).steps;
  const said = asRead(<>{effortLine(first!.effort)}</>);
  expect(said).toContain('0.62 → 0.58 m/s');
  expect(said).toContain('4 s a set');
  expect(said).toContain('all reps 96 %');
  expect(said).toContain('resting 0:45, last rep 0.55 m/s');
  const timesSaid = (paper: ReactElement) => asRead(paper).split(said).length - 1;
  expect(timesSaid(<LifterCard sheet={sheet(1)} lifter={line(1)} />)).toBe(line(1).steps.length);
  expect(timesSaid(<RackSheetPage sheet={sheet(1)} paper="a4" />)).toBe(line(1).steps.length);
});

function quarter(from: number, to: number | undefined, number: number): string {
  return asRead(<LifterCard sheet={sheet(1)} lifter={line(1)} quarter={{ from, to, number, of: 2 }} />);
}

/** With spaces that break, as a reader sees them. */
function asRead(paper: ReactElement): string {
  return renderToStaticMarkup(paper).replaceAll('\u00a0', ' ');
}

function saysChanged(lifters: number): boolean {
  return renderToStaticMarkup(<RackSheetPage sheet={sheet(lifters)} paper="a4" />).includes(
    'was changed after this was worked out.',
  );
}

const marked = (element: ReactElement) =>
  [...renderToStaticMarkup(element).matchAll(/class="dashed">([^<]*)/g)].map(([, text]) => text!.trim());

test('a bar that nobody weighed is marked with dashes once on sheet and card, another is not', () => {
  const two = sheet(2);
  expect(marked(<RackSheetPage sheet={two} paper="a4" />)).toEqual(['kg a side']);
  const cards = two.lifters.map((lifter) => marked(<LifterCard sheet={two} lifter={lifter} />));
  expect(cards).toEqual([['kg a side'], []]);
});

const said = (element: ReactElement) => asRead(element).replace(/<[^>]*>/g, '');

test('what a box is built of stands beside its height on sheet and card', () => {
  const two = sheet(2);
  const told = 'box 36 cm: Box 33 and Mat 3';
  expect(said(<RackSheetPage sheet={two} paper="a4" />).split(told)).toHaveLength(2);
  expect(
    two.lifters.map((lifter) => said(<LifterCard sheet={two} lifter={lifter} />).includes(told)),
  ).toEqual([false, true]);
});

test('what the day is called stands on the sheet', () => {
  const titled = { ...sheet(1), title: 'Third wave' };
  expect(renderToStaticMarkup(<RackSheetPage sheet={titled} paper="a4" />)).toContain('Third wave');
});

test('a note for one lifter and the true mass of a bar stand on sheet and card of that lifter alone', () => {
  const noted = { ...line(1), note: 'Stop if the <knee> hurts', trueBar: '92.6 kg weighed' };
  const page = { ...sheet(3), lifters: [noted, line(2), line(3)] };
  const wall = renderToStaticMarkup(<RackSheetPage sheet={page} paper="a4" />);
  const card = (lifter: LifterOnSheet) => renderToStaticMarkup(<LifterCard sheet={page} lifter={lifter} />);
  for (const words of ['Stop if the &lt;knee&gt; hurts', '92.6\u00a0kg weighed'])
    expect([wall, card(noted), card(line(2))].map((html) => timesSaid(html, words))).toEqual([1, 1, 0]);
});

function timesSaid(html: string, words: string): number {
  return html.split(words).length - 1;
}
