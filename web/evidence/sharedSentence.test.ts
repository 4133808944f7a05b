import { expect, test } from 'vitest';
import type { EvidenceAnswer, EvidenceLine } from '#contract/evidence/evidenceReport.ts';
import { sharedSentence } from './sharedSentence.ts';
import { shownLines } from './shownLines.ts';

const line = (lifterId: string | null, value: number, observations: number): EvidenceLine => ({
  lifterId,
  lift: null,
  variant: null,
  equipped: null,
  lifters: lifterId === null ? 3 : 1,
  observations,
  effect: { value, low80: value - 1, high80: value + 1, low95: value - 1.5, high95: value + 1.5 },
  naive: null,
});
const answer = (...lines: EvidenceLine[]): EvidenceAnswer => ({ question: 'boxHeight', lines, traps: [] });
const said = (of: EvidenceAnswer, lifterId: string | null = null) =>
  sharedSentence(of, lifterId, (id) => id.toUpperCase());
const shown = (of: EvidenceAnswer, lifterId: string | null = null) =>
  shownLines(of, lifterId).map((one) => one.lifterId);

test('lifters who share the number of the club are told in one sentence, and no row repeats it', () => {
  const all = answer(line(null, 2, 40), line('b', 2, 30), line('a', 2, 6), line('c', 2.01, 12));
  expect(shown(all)).toEqual([null]);
  expect(said(all)).toMatch(/^All 3 lifters share .* 6 to 30 lifts/);
  expect(shown(all, 'a')).toEqual([null]);
  expect(said(all, 'a')).toMatch(/^A: as the whole club; 6 lifts/);
});

test('who differs keeps a row, and those who do not are named', () => {
  const some = answer(line(null, 2, 40), line('b', 2, 1), line('a', 2, 1), line('c', 3, 12));
  expect(shown(some)).toEqual([null, 'c']);
  expect(said(some)).toMatch(/^2 lifters \(A, B\) share .* 1 lift each, the log shows/);
  expect(said(some, 'a')).toMatch(/; 1 lift of their own shows/);
  expect(said(some, 'c')).toBeNull();
  expect(said(answer(line(null, 2, 40), line('c', 3, 12)))).toBeNull();
});
