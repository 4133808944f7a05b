import { expect, it } from 'vitest';
import { solveDay } from '#contract/assemble/solveDay.ts';
import { parseTable } from '#contract/csv/parseTable.ts';
import { dayPlan } from '#contract/dayPlan.ts';
import type { StrengthEstimate } from '#contract/strengthEstimate.ts';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { populationPrior } from '#core/strength/parameters.ts';
import { solvedStrength } from '#web/day/solvedSetup.ts';
import { setupScene } from '#web/parts/setupScene.ts';
import { mainBlock } from '#web/print/lifterLine.ts';
import { dayCsv } from './dayCsv.ts';
import { dayText } from './dayText.ts';

const records = twoLifters();
const day = structuredClone(records.day[0]!);
day.groups[0]!.aim = { by: 'speed', fromMps: 0.75, toMps: 0.85 };
const middle = { median: 150, low80: 145, high80: 155, low95: 142, high95: 158 };
const prior = populationPrior('squat').mean;
/** Invented lifters whose logs show faster bars than the model's, the lighter the more. */
const estimates = records.lifter.map(
  ({ id }, i): StrengthEstimate => ({
    lifterId: id,
    lift: 'squat',
    on: day.date,
    setCount: 40,
    takenIn: 0,
    lastSetOn: day.date,
    bodyMassKg: 75,
    bodyMassKnown: 'measured',
    maxKg: middle,
    inEquipment: [],
    parameters: [],
    history: [{ on: day.date, ...middle }],
    rise: [],
    observations: [],
    leftOut: [],
    draws: [-0.01, 0, 0.01].map((ln) => ({
      ...prior,
      speedOffset: 0.03,
      speedSlope: 0.4 + 0.1 * i,
      lnTotal: Math.log(216) + ln,
    })),
  }),
);
const plan = dayPlan.parse(JSON.parse(JSON.stringify(solveDay(records, day, estimates))));
const prescription = { id: 'p', dayId: day.id, number: 1, solvedAt: '2026-01-01T00:00:00Z', document: plan };
const group = plan.groups[0]!;

it('every output tells one first and one last speed, and a tired rep is never the faster one', () => {
  const solved = { plan, prescription, records };
  const table = parseTable(dayCsv([solved]));
  const [header, ...lines] = ('lines' in table ? table.lines : []).map((line) =>
    'cells' in line ? line.cells : line,
  );
  const column = (name: string) => (header as string[]).indexOf(name);
  const text = dayText([solved], 'kg').replaceAll(/\s+/g, ' ');
  const blocks = group.places.flatMap((place) => place.solved!.blocks);
  expect(lines).toHaveLength(blocks.length);
  blocks.forEach(({ effort, expected, sets, reps }, i) => {
    const cells = lines[i] as string[];
    expect(Number(cells[column('first_rep_mean_mps')])).toBeCloseTo(effort!.firstMps, 3);
    expect(Number(cells[column('last_rep_mean_mps')])).toBeCloseTo(effort!.lastMps!, 3);
    expect(expected!.firstMps!.median).toBeCloseTo(effort!.firstMps, 9);
    expect(effort!.lastMps).toBeLessThanOrEqual(effort!.firstMps);
    if (sets * reps > 1)
      expect(text).toContain(`${effort!.firstMps.toFixed(2)} → ${effort!.lastMps!.toFixed(2)} m/s`);
  });
});

it('the first block starts as fast as its explanation says, and the picture shows that very rep and strength', () => {
  for (const place of group.places) {
    const solved = place.solved!;
    const [first] = solved.blocks;
    expect(first!.effort!.firstMps).toBeCloseTo(first!.explanation.firstRep.meanSpeedMps, 2);
    const { barKg, explanation } = mainBlock(solved);
    const scene = setupScene(records, {
      lifterId: place.lifterId,
      lift: group.lift,
      setup: {
        rackId: place.rackId,
        start: place.start,
        barKg,
        bands: solved.set.bands.map(({ bandPairId, hookupId }) => ({ bandPairId, hookupId })),
        chains: [],
      },
      on: plan.date,
      title: place.name,
      strength: solvedStrength(prescription, group.groupId, place.lifterId, place.start),
    });
    expect(scene.speed!.durationS).toBeCloseTo(explanation.firstRep.durationS, 6);
    const ends = [0, -1].map((i) => {
      const share = explanation.shares.at(i)!.share;
      const drawn = scene.load.points.at(i)!.totalN / scene.load.held.at(i)!.heldN;
      return [drawn, share];
    });
    for (const [drawn, share] of ends) expect(drawn).toBeCloseTo(share!, 9);
  }
});

it('a lifter whose log is fast is brought into the zone that was asked for', () => {
  for (const { solved } of group.places) {
    const { explanation, expected } = mainBlock(solved!);
    expect(explanation.firstRep.meanSpeedMps).toBeGreaterThan(0.72);
    expect(explanation.firstRep.meanSpeedMps).toBeLessThan(0.88);
    expect(expected!.zone!.chance).toBeGreaterThan(0.3);
  }
});
