import type { AimInTurn, PhaseOfMethod } from '#contract/records/method.ts';

/** The phase with waves of so many weeks: what has a figure for each week loses the last ones, or has the last one once more for each week that is new. */
export function withWaveWeeks(phase: PhaseOfMethod, waveWeeks: number): PhaseOfMethod {
  const fit = <Each>(list: readonly Each[]): Each[] => {
    const length = list.length === phase.waveWeeks ? waveWeeks : Math.min(list.length, waveWeeks);
    return Array.from({ length }, (_, week) => list[Math.min(week, list.length - 1)]!);
  };
  const days = phase.days.map((day) => ({
    ...day,
    groups: day.groups.map((group) => ({
      ...group,
      blocks: fit(group.blocks),
      aim: fitAim(group.aim, fit),
    })),
  }));
  return { ...phase, waveWeeks, days };
}

/** Bands go by wave and stay. */
function fitAim(aim: AimInTurn, fit: <Each>(list: readonly Each[]) => Each[]): AimInTurn {
  switch (aim.by) {
    case 'percent':
      return { ...aim, targets: aim.targets.map((target) => ({ ...target, shares: fit(target.shares) })) };
    case 'barAndBands':
      return { ...aim, barShares: fit(aim.barShares) };
    case 'capability':
      return { ...aim, bottomShares: fit(aim.bottomShares), lockoutShares: fit(aim.lockoutShares) };
    case 'speed':
      return { ...aim, zones: fit(aim.zones) };
  }
}
