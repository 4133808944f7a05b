import { describe, expect, it } from 'vitest';
import { runOperation } from '#contract/compute/runOperation.ts';
import type { Method } from '#contract/records/method.ts';
import { millraceClub } from '#demo/millraceClub.ts';
import { planClubSeasonOperation } from './planClubSeasonOperation.ts';
import { planSeasonOperation } from './planSeasonOperation.ts';

/** Work of a speed day, at shares of the maximum on the bar alone by week of the wave. */
const speedSquat = (change: object = {}) => ({
  id: 'speed-squat',
  title: 'Speed squat',
  work: 'speed',
  lift: 'squat',
  variants: [{ id: 'free', title: 'free', start: { way: 'free', heightM: null } }],
  aim: { by: 'percent', targets: [{ basis: 'bar', shares: [0.72] }] },
  blocks: [setsOf(8, 3)],
  ...change,
});
const setsOf = (sets: number, reps: number, shareOfAim = 1) => [{ sets, reps, restSeconds: 60, shareOfAim }];
const single = (sets: number) => [
  speedSquat({
    work: 'maximal',
    aim: { by: 'percent', targets: [{ basis: 'bar', shares: [0.9] }] },
    blocks: [setsOf(sets, 1)],
  }),
];
const bandsBy = (bandShares: number[]) => ({
  aim: { by: 'barAndBands', barShares: [0.4], bandShares },
});

interface Asked {
  groups: object[];
  again?: object[];
  limits?: Partial<Method['limits']>;
  zoneShift?: number;
  waveWeeks?: number;
}

/** Invented: eight weeks with one kind of training day up to a meet, asked as any caller of the calculation does. What is warned of, in words. */
async function told({ groups, again, limits = {}, zoneShift = 0, waveWeeks = 1 }: Asked): Promise<string[]> {
  const monday = { weekday: 1, title: 'Lower body', groups };
  const thursday = again === undefined ? [] : [{ weekday: 4, title: 'Lower body again', groups: again }];
  const phase = {
    id: 'waves',
    title: 'Waves',
    goal: 'An invented one.',
    waveWeeks,
    leastWeeks: waveWeeks,
    mostWeeks: 48,
    keepsBefore: 0,
    days: [monday, ...thursday],
  };
  const method = {
    format: 'rackwright-method-1',
    id: 'invented',
    title: 'Invented',
    version: 1,
    madeOn: '2026-11-30',
    forWhom: 'Nobody.',
    sources: [],
    zoneShift,
    limits,
    phases: [phase],
  };
  const season = { from: '2026-11-30', meets: [{ title: 'Tollbridge Open', date: '2027-01-23' }] };
  const answered = planSeasonOperation.outputSchema.parse(
    await runOperation(planSeasonOperation, { method, season }),
  );
  return answered.warnings.map(({ says }) => says);
}

// The table of A. S. Prilepin, 1970s, as printed after Laputin & Oleshko 1982: at most 30, 24, 20 and 10 lifts of a session from 55, 70, 80 and 90 % on.
describe('volume', () => {
  it('beyond the table is told with what would have to go, once a day, and is silent without it', async () => {
    const [first, ...others] = await told({ groups: [speedSquat({ blocks: [setsOf(10, 3)] })] });
    expect(first).toBe(
      'Mon 30 Nov, Speed squat: 30 lifts where the table of Prilepin has at most 24 at 70 % to 80 %. Take 6 lifts off, or go lighter.',
    );
    expect(others).toHaveLength(7);
    expect(await told({ groups: [speedSquat({ blocks: [setsOf(8, 3)] })] })).toEqual([]);
    const lighter = { aim: { by: 'percent', targets: [{ basis: 'bar', shares: [0.68] }] } };
    expect(await told({ groups: [speedSquat({ blocks: [setsOf(10, 3)], ...lighter })] })).toEqual([]);
  });

  it('counts all sets of a lift in one session, each at its own share, and other lifts apart', async () => {
    const more = speedSquat({ id: 'more', title: 'Squat for reps', blocks: [setsOf(2, 5)] });
    const [both] = await told({ groups: [speedSquat({ blocks: [setsOf(5, 3)] }), more] });
    expect(both).toMatch(
      /^Mon 30 Nov, Speed squat and Squat for reps: 25 lifts .* at most 24 .*Take 1 lift off/,
    );
    expect(
      await told({ groups: [speedSquat({ blocks: [setsOf(5, 3)] }), { ...more, lift: 'bench' }] }),
    ).toEqual([]);
    expect(await told({ groups: [speedSquat({ blocks: [setsOf(5, 3)] })], again: [more] })).toEqual([]);
    // Back-off sets at nine tenths lie in the zone below.
    const backOff = [[...setsOf(5, 3), ...setsOf(5, 4, 0.9)]];
    expect(await told({ groups: [speedSquat({ blocks: backOff })] })).toEqual([]);
  });

  it('is held against the zones where the method moved them, and says so', async () => {
    const groups = [speedSquat({ blocks: [setsOf(10, 3)] })];
    expect(await told({ groups, zoneShift: 0.05 })).toEqual([]);
    const at = (share: number) => [
      speedSquat({
        blocks: [setsOf(10, 3)],
        aim: { by: 'percent', targets: [{ basis: 'bar', shares: [share] }] },
      }),
    ];
    expect((await told({ groups: at(0.75), zoneShift: 0.05 }))[0]).toMatch(
      /at most 24 at 75 % to 85 % \(its zones moved up by 5 points, as the method says\)\./,
    );
    expect((await told({ groups: at(0.68), zoneShift: -0.025 }))[0]).toMatch(
      /at 67\.5 % to 77\.5 % \(its zones moved down by 2\.5 points/,
    );
  });

  it('below the table is no fault: the week before a meet lies there on purpose', async () => {
    expect(await told({ groups: [speedSquat({ blocks: [setsOf(1, 1)] })] })).toEqual([]);
  });
});

describe('the limits of the method', () => {
  it('tell heavy lifts beyond them, and how many to take out', async () => {
    const limits = { mostHeavyLiftsAWeek: 5 };
    const warned = await told({ groups: single(4), again: single(4), limits });
    expect(warned).toHaveLength(8);
    expect(warned[0]).toBe(
      'Week of Mon 30 Nov: 8 lifts at 90 % or more at lockout; the method allows 5. Take 3 heavy lifts out.',
    );
    expect(await told({ groups: single(4), again: single(1), limits })).toEqual([]);
    expect(await told({ groups: single(4), again: single(4) })).toEqual([]);
  });

  it('tell a rise that is too steep, up to how many lifts it is none, and that such ratios are disputed', async () => {
    const limits = { mostRise: 0.15 };
    const waves = (second: number) => ({
      groups: [
        speedSquat({ blocks: [setsOf(10, 10), [...setsOf(10, 10), ...setsOf(1, second)]], ...lightBar }),
      ],
      limits,
      waveWeeks: 2,
    });
    // After one such week the four before hold as many.
    expect(await told(waves(16))).toEqual([
      'Week of Mon 7 Dec: 116 lifts, after at most 100 in the four weeks before: a rise of more than 15 %. Do at most 115 this week, or build up over two. Such ratios are a rule of thumb; whether they foretell injuries is disputed (Impellizzeri et al. 2020).',
    ]);
    expect(await told(waves(15))).toEqual([]);
  });

  it('tell bands that stay the same for too long once, by weeks and not by days, until they step', async () => {
    const limits = { mostWeeksOnOneBandShare: 3 };
    const same = { groups: [speedSquat(bandsBy([0.25]))], limits };
    expect(await told(same)).toEqual([
      'Week of Mon 21 Dec, Speed squat: 25 % in bands for the 4th week; after 3 a lifter is used to it. Step the bands.',
    ]);
    expect(await told({ ...same, again: same.groups })).toEqual(await told(same));
    const stepped = [speedSquat(bandsBy([0.25, 0.3, 0.35, 0.4]))];
    expect(await told({ groups: stepped, again: stepped, limits, waveWeeks: 2 })).toEqual([]);
  });
});

/** Below every zone of the table. */
const lightBar = { aim: { by: 'percent', targets: [{ basis: 'bar', shares: [0.5] }] } };

describe('a start that comes again before it has rested', () => {
  const today = '2026-11-25';
  const club = millraceClub(today);
  /** The demo's equipped crew, with the start of the heavy squat set by hand for everybody on some Mondays. */
  async function warnedOf(chosen: Readonly<Record<string, object>>): Promise<string[]> {
    const plannedByHand = Object.entries(chosen).map(([date, start]) => ({
      id: `by-hand-${date}`,
      seasonId: 'season-late',
      lifterId: null,
      date,
      askedId: 'heavy-squat',
      instead: { start, aim: null, blocks: null },
      note: '',
    }));
    const document = { records: { ...club, plannedByHand }, seasonId: 'season-late', today };
    const { says } = planClubSeasonOperation.outputSchema.parse(
      await runOperation(planClubSeasonOperation, document),
    );
    return says.map((one) => one.says).filter((one) => one.includes('comes again'));
  }
  const low = { way: 'ownBox', aboveParallelM: -0.03 };
  const high = { way: 'ownBox', aboveParallelM: 0.06 };

  it('is told where the coach chose it twice, and silent once another is chosen or the weeks have passed', async () => {
    const twice = await warnedOf({ '2026-11-30': low, '2026-12-07': low });
    expect(new Set(twice)).toEqual(
      new Set([
        'Mon 7 Dec, Heavy single, squat: off a low box, 3 cm below parallel comes again after 1 week, and the method asks for 3 weeks in between. Choose another start on one of the two days.',
      ]),
    );
    expect(await warnedOf({ '2026-11-30': low, '2026-12-07': high })).toEqual([]);
    expect(await warnedOf({})).toEqual([]);
  });
});
