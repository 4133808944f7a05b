import * as fc from 'fast-check';
import type { ReactElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, it } from 'vitest';
import { prescribeOperation } from '#contract/compute/prescribeOperation.ts';
import { runOperation } from '#contract/compute/runOperation.ts';
import { parseTable } from '#contract/csv/parseTable.ts';
import { type DayPlan, dayPlan, type PlanBlock, type PlanPlace } from '#contract/day/dayPlan.ts';
import type { SignedPrescription } from '#contract/day/signedPrescription.ts';
import { mainBlock } from '#contract/paper/lifterLine.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import { paperOf } from '#reckon/day/paperOf.ts';
import { solveDay } from '#reckon/day/solveDay.ts';
import { gravityOf } from '#reckon/gear/gravityOf.ts';
import { signPrescription } from '#server/signPrescription.ts';
import { sceneSummary } from '#web/charts/sceneSummary.ts';
import { LineInWords } from '#web/day/LineInWords.tsx';
import { PlaceRow } from '#web/day/PlaceRow.tsx';
import type { Seat } from '#web/day/Seat.ts';
import { StepEfforts } from '#web/day/StepEfforts.tsx';
import { solvedStrength } from '#web/day/solvedSetup.ts';
import { chartUnits } from '#web/parts/chartUnits.ts';
import { setupScene } from '#web/parts/setupScene.ts';
import { ViewUnits } from '#web/parts/ViewUnits.tsx';
import { LifterCard } from '#web/print/LifterCard.tsx';
import { RackSheetPage } from '#web/print/RackSheetPage.tsx';
import { dayCsv } from './dayCsv.ts';
import { dayText } from './dayText.ts';
import { arbitraryPlan, type DayToSolve } from './tests/arbitraryPlan.ts';

type Solved = NonNullable<PlanPlace['solved']>;

interface PlanOut {
  plan: DayPlan;
  prescription: SignedPrescription;
  records: ClubRecords;
}

/** A solved day as programs get it: written as JSON and read again. */
function solvedOf({ records, day, estimates }: DayToSolve): PlanOut {
  const plan = dayPlan.parse(JSON.parse(JSON.stringify(solveDay(records, day, estimates))));
  const prescription = signPrescription({
    id: 'p',
    dayId: day.id,
    number: 1,
    solvedAt: '2026-01-01T00:00:00Z',
    document: plan,
  });
  return { plan, prescription, records };
}

const placesOf = ({ plan }: PlanOut) =>
  plan.groups[0]!.places.flatMap((place) => (place.solved ? [{ place, solved: place.solved }] : []));

/** Without breaks, as a reader sees it. */
const asRead = (text: string) => text.replaceAll(/[\s\u00a0]+/g, ' ');
const shown = (element: ReactElement) =>
  asRead(
    renderToStaticMarkup(
      <ViewUnits clubMass="kg" clubLength="cm">
        {element}
      </ViewUnits>,
    ).replaceAll(/<[^>]*>/g, ' '),
  );

/** The figures of a step as everybody writes them. */
function figuresOf({ effort, expected, explanation, sets, reps }: PlanBlock): string[] {
  if (!explanation.firstRep.made) return ['not made by this calculation'];
  if (effort === null) return [];
  const { firstMps, lastMps } = effort;
  const speeds =
    lastMps === null
      ? `${firstMps.toFixed(2)} m/s at first`
      : sets * reps === 1
        ? `${lastMps.toFixed(2)} m/s`
        : `${firstMps.toFixed(2)} → ${lastMps.toFixed(2)} m/s`;
  const zone = expected!.zone;
  return [
    speeds,
    `all reps ${percent(expected!.chanceAllReps)}`,
    ...(zone ? [`in the zone ${percent(zone.chance)}`] : []),
    ...(zone?.of === 'set' ? [`whole set ${zone.mps.toFixed(2)} m/s`] : []),
  ];
}

/** No chance is told as certain. */
function percent(share: number): string {
  if (share > 0.99) return 'over 99 %';
  return share < 0.01 ? 'under 1 %' : `${Math.round(100 * share)} %`;
}

const whole = (share: number) => `${Math.round(100 * share)} %`;
const restOf = ({ restSeconds }: PlanBlock) =>
  `${Math.floor(restSeconds / 60)}:${String(restSeconds % 60).padStart(2, '0')}`;

/** Shares of strength at both ends, and of the maximum, of the step that matters. */
function sharesOf(solved: Solved): string[] {
  const { shares, percentages } = mainBlock(solved).explanation;
  const on = (basis: string) => whole(percentages.find((one) => one.basis === basis)!.share);
  return [
    `${whole(shares[0]!.share)} of strength there`,
    `${whole(shares.at(-1)!.share)} of strength there`,
    `${on('bar')} bar, ${on('bottom')} bottom, ${on('lockout')} lockout`,
  ];
}

it('sheet, card, row, steps and terminal print the figures of the plan document', () => {
  fc.assert(
    fc.property(arbitraryPlan, (asked) => {
      const out = solvedOf(asked);
      const { plan, prescription, records } = out;
      const day = records.day.find(({ id }) => id === plan.dayId);
      const pages = paperOf({ plan, prescription, records, day }, { mass: 'kg', length: 'cm' })();
      const [paper] =
        pages.length > 0
          ? [
              pages
                .map((sheet) => shown(<RackSheetPage key={sheet.page} sheet={sheet} paper="a4" />))
                .join(' '),
            ]
          : [''];
      const terminal = asRead(dayText([out], 'kg'));
      for (const { place, solved } of placesOf(out)) {
        const sheet = pages.find(({ lifters }) =>
          lifters.some(({ lifterId }) => lifterId === place.lifterId),
        )!;
        const line = sheet.lifters.find(({ lifterId }) => lifterId === place.lifterId)!;
        const card = shown(<LifterCard sheet={sheet} lifter={line} />);
        const row = shown(<RowOf asked={asked} place={place} line={line} />);
        const steps = shown(<StepEfforts steps={line.steps} unit="kg" name={place.name} />);
        const opened = shown(<LineInWords line={line} unit="kg" />);
        for (const text of sharesOf(solved))
          for (const output of [terminal, card, opened]) expect(output).toContain(text);
        for (const text of sharesOf(solved)) expect(row).toContain(text.replace(' of strength there', ''));
        for (const block of solved.blocks) {
          for (const text of figuresOf(block))
            for (const output of [paper, card, terminal]) expect(output).toContain(text);
          const [speeds] = figuresOf(block);
          if (speeds) expect(steps).toContain(speeds);
          for (const output of [paper, card, terminal, steps]) expect(output).toContain(restOf(block));
        }
        for (const text of figuresOf(mainBlock(solved)))
          for (const output of [row, opened]) expect(output).toContain(text);
      }
    }),
    { numRuns: 25 },
  );
});

it('the spreadsheet has the figures of the plan document, and its words for made and missed fit its speeds', () => {
  fc.assert(
    fc.property(arbitraryPlan, (asked) => {
      const out = solvedOf(asked);
      const table = parseTable(dayCsv([out]));
      const [header, ...lines] = ('lines' in table ? table.lines : []).map((line) =>
        'cells' in line ? line.cells : [],
      );
      const solvedLines = lines.filter((cells) => cells[header!.indexOf('problem')] === '');
      const blocks = placesOf(out).flatMap(({ solved }) => solved.blocks.map((block) => ({ solved, block })));
      expect(solvedLines).toHaveLength(blocks.length);
      blocks.forEach(({ solved, block }, i) => {
        const cell = (name: string) => solvedLines[i]![header!.indexOf(name)]!;
        const is = (name: string, value: number | null | undefined) =>
          value == null
            ? expect(cell(name)).toBe('')
            : expect(Math.abs(Number(cell(name)) - value)).toBeLessThan(6e-4);
        const { explanation, effort, expected } = block;
        is('first_rep_mean_mps', explanation.firstRep.meanSpeedMps * (explanation.firstRep.made ? 1 : 0));
        is('last_rep_mean_mps', effort?.lastMps);
        is('set_mean_mps', effort?.setMps);
        is('chance_all_reps', expected?.chanceAllReps);
        is('chance_in_zone', expected?.zone?.chance);
        is('bottom_share_of_strength', explanation.shares[0]!.share);
        is('lockout_share_of_strength', explanation.shares.at(-1)!.share);
        is('bar_share_of_maximum', block.barKg / solved.reference.kg);
        is(
          'lockout_share_of_maximum',
          explanation.lockout.totalN / out.plan.gravityMps2 / solved.reference.kg,
        );
        is('mean_share_of_maximum', explanation.mean.totalN / out.plan.gravityMps2 / solved.reference.kg);
        is('rest_s', block.restSeconds);
        const isMarked = solved.cautions.some(({ code }) => code === 'notWeighed');
        expect(cell('bar_known')).toBe(isMarked ? 'assumed' : 'measured');
        if (isMarked) expect(['assumed', 'notMeasured']).toContain(cell('loads_known'));
        if (cell('all_reps') === 'yes') expect(cell('last_rep_mean_mps')).not.toBe('');
      });
    }),
    { numRuns: 25 },
  );
});

it('one plan tells one first rep, no tired rep is the faster one, and the picture draws that very rep and strength', () => {
  fc.assert(
    fc.property(arbitraryPlan, (asked) => {
      const out = solvedOf(asked);
      const { plan, prescription, records } = out;
      const group = plan.groups[0]!;
      for (const { place, solved } of placesOf(out)) {
        for (const { explanation, effort, expected } of solved.blocks) {
          if (effort === null) continue;
          const { firstMps, setMps, lastMps } = effort;
          expect(explanation.firstRep.made).toBe(firstMps > 0);
          if (firstMps > 0) expect(explanation.firstRep.meanSpeedMps).toBeCloseTo(firstMps, 6);
          expect(lastMps ?? 0).toBeLessThanOrEqual(firstMps);
          expect(setMps ?? 0).toBeLessThanOrEqual(firstMps);
          if (expected?.firstMps && firstMps > 0) expect(expected.firstMps.median).toBeCloseTo(firstMps, 6);
          if (expected?.zone) expect(expected.zone.mps).toBe(expected.zone.of === 'set' ? setMps : firstMps);
        }
        const main = mainBlock(solved);
        const scene = setupScene(records, {
          lifterId: place.lifterId,
          lift: group.lift,
          setup: {
            rackId: place.rackId,
            start: place.start,
            barKg: main.barKg,
            bands: solved.set.bands.map(({ bandPairId, hookupId }) => ({ bandPairId, hookupId })),
            chains: solved.set.chains.map(({ chainPairId, pairs }) => ({ chainPairId, pairs })),
          },
          on: plan.date,
          title: place.name,
          strength: solvedStrength(prescription, group.groupId, place.lifterId, place.start),
        });
        const { firstRep, shares } = main.explanation;
        expect(scene.speed!.made).toBe(firstRep.made);
        if (firstRep.made) {
          expect(scene.speed!.durationS).toBeCloseTo(firstRep.durationS, 4);
          expect(scene.speed!.slowest.speedMps).toBeCloseTo(firstRep.slowestSpeedMps, 4);
        }
        const said = sceneSummary(scene, chartUnits({ mass: 'kg', length: 'cm' }, plan.gravityMps2));
        const told = [...said.matchAll(/(\d+) % of what can be held/g)].map(([, share]) => Number(share));
        expect(told).toEqual([shares[0]!, shares.at(-1)!].map(({ share }) => Math.round(100 * share)));
      }
    }),
    { numRuns: 25 },
  );
});

it('a program that computes a bare bar from what the plan goes by gets the shares and the speed of the plan', async () => {
  await fc.assert(
    fc.asyncProperty(arbitraryPlan, async (asked) => {
      const out = solvedOf(asked);
      const { aim } = out.plan.groups[0]!;
      for (const { solved } of placesOf(out)) {
        const [block] = solved.blocks;
        const { bands, chains } = solved.set;
        if (bands.length + chains.length > 0 || !block!.explanation.firstRep.made || !block!.effort) continue;
        const { capability, speedCorrection } = solved.strength.lifter!;
        const document = {
          capability: {
            strength_N: capability.strengthN,
            slope: capability.slope,
            curvature: capability.curvature,
            dip: capability.dip,
            maxSpeed_mps: capability.maxSpeedMps,
            rebound: capability.rebound,
            reboundTime_s: capability.reboundTimeS,
            strainAfter_s: capability.strainAfterS,
            strainTime_s: capability.strainTimeS,
            buildUpTime_s: capability.buildUpTimeS,
            builtShare: capability.builtShare,
            easing: capability.easing,
            movedBody_kg: capability.movedBodyKg,
            range: { from_m: capability.range.fromM, to_m: capability.range.toM },
          },
          speedCorrection: {
            offset_mps: speedCorrection.offsetMps,
            perSurplus_mps: speedCorrection.perSurplusMps,
            upTo: speedCorrection.upToLn,
          },
          bottom_m: solved.heights.bottomM,
          lockout_m: solved.heights.lockoutM,
          gravity_mps2: out.plan.gravityMps2,
          reference_kg: solved.reference.kg,
          aim:
            aim.by === 'speed'
              ? { by: 'speed', from_mps: aim.fromMps, to_mps: aim.toMps }
              : { by: 'percent', targets: [{ basis: 'bar', share: 0.5 }] },
          gear: { bar_kg: block!.barKg, collars_kg: 0, discs: [] },
        };
        const answer = prescribeOperation.outputSchema.parse(
          await runOperation(prescribeOperation, document),
        );
        const { firstRep, shares, percentages } = block!.explanation;
        expect(answer.explanation.firstRep.meanSpeed_mps).toBeCloseTo(firstRep.meanSpeedMps, 6);
        expect(answer.explanation.shares[0]!.share).toBeCloseTo(shares[0]!.share, 9);
        expect(answer.explanation.shares.at(-1)!.share).toBeCloseTo(shares.at(-1)!.share, 9);
        expect(answer.explanation.percentages.map(({ share }) => share)).toEqual(
          percentages.map(({ share }) => expect.closeTo(share, 9)),
        );
        if (aim.by === 'speed') expect(answer.zone!.mean_mps).toBeCloseTo(block!.effort.firstMps, 6);
      }
    }),
    { numRuns: 40 },
  );
});

function RowOf({ asked, place, line }: { asked: DayToSolve; place: PlanPlace; line: Seat['line'] }) {
  const { day, records } = asked;
  const group = day.groups[0]!;
  const seat: Seat = {
    day,
    group,
    line,
    place: group.places.find(({ lifterId }) => lifterId === place.lifterId)!,
    name: place.name,
    rack: records.rack[0]!,
    rackIds: ['rack'],
    order: 0,
    problem: null,
    overtaken: null,
    lastTime: null,
    gravityMps2: gravityOf(records),
    solving: {
      prescription: null,
      latest: 0,
      look: () => {},
      busy: false,
      stop: () => {},
      wrong: null,
      stale: false,
      solve: async () => {},
    },
  };
  return (
    <table>
      <tbody>
        <PlaceRow
          seat={seat}
          open={false}
          log={null}
          logging={false}
          onOpen={() => {}}
          onLog={() => {}}
          onMove={() => {}}
        />
      </tbody>
    </table>
  );
}
