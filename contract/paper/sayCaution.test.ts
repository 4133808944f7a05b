import { expect, test } from 'vitest';
import type { PlanCaution } from '#contract/day/explainedBar.ts';
import { pxPerMm } from './paperSize.ts';
import { sayCaution } from './sayCaution.ts';

const kept = (sort: string) => [
  { id: 'x', label: `${sort} X` },
  { id: 'y', label: `${sort} Y` },
];
const records = {
  bandPair: kept('Pair'),
  anchor: kept('Pegs'),
  chainPair: kept('Chain'),
  bar: kept('Bar'),
  collarPair: kept('Collars'),
  box: kept('Box'),
  rack: kept('Rack'),
} as unknown as Parameters<typeof sayCaution>[1];
const metric = { mass: 'kg', length: 'cm', gravityMps2: 10 } as const;
const pounds = { mass: 'lb', length: 'in', gravityMps2: 10 } as const;
const say = (caution: PlanCaution, view: typeof metric | typeof pounds = metric) =>
  sayCaution(caution, records, view);

test('gear is called as the club calls it, and what was removed since is no longer kept', () => {
  expect(say({ code: 'notMeasured', pairId: 'y' })).toContain('Pair Y');
  expect(say({ code: 'anchorNotRated', anchorId: 'y', pullN: 300 })).toContain('pegs Y');
  expect(say({ code: 'clash', gearId: 'y', sort: 'chainPair' })).toContain('Chain Y');
  expect(say({ code: 'notMeasured', pairId: 'gone' })).toContain('no longer kept');
});

test('heights are whole centimetres or tenths of an inch of 2.54 cm, masses tenths of a kilogram or of a pound of 0.45359237 kg', () => {
  const slack: PlanCaution = { code: 'slackBottom', belowM: 0.8636 };
  expect(say(slack)).toContain('86 cm');
  expect(say(slack, pounds)).toContain('34.0 in');
  const assumed: PlanCaution = { code: 'bodyMassAssumed', massKg: 80.74 };
  expect(say(assumed)).toContain('80.7 kg');
  expect(say(assumed, pounds)).toContain('178 lb');
});

test('a force is the whole mass that weighs as much where the club stands', () => {
  const carried: PlanCaution = { code: 'lightened', atBottomN: 250 };
  expect(say(carried)).toContain('25 kg');
  expect(say(carried, pounds)).toContain('55 lb');
});

test('paper is measured in pixels of which 96 make an inch of 25.4 mm', () => {
  expect(25.4 * pxPerMm).toBeCloseTo(96, 9);
});
