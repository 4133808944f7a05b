import type { PlanPlace } from '#contract/day/dayPlan.ts';

type SetOnBar = NonNullable<PlanPlace['solved']>['set'];

const sameBands = 'same bands';

/** What to take off and hang after the lifter before: "22-A off, 64-A on"; "same bands" where nothing changes. */
export function bandChanges(before: SetOnBar, now: SetOnBar): string {
  const [hungBefore, hungNow] = [hung(before), hung(now)];
  const on = hungNow.filter(({ key }) => !hungBefore.some((other) => other.key === key));
  const off = hungBefore.filter(({ key }) => !hungNow.some((other) => other.key === key));
  if (on.length === 0 && off.length === 0) return hungNow.length === 0 ? '' : sameBands;
  const moved = off.filter(({ label }) => on.some((other) => other.label === label));
  const say = (list: typeof on, word: string) => {
    const labels = list.map(({ label }) => label).filter((label) => !moved.some((m) => m.label === label));
    return labels.length === 0 ? [] : [`${labels.join(', ')} ${word}`];
  };
  const anew = moved.map(({ label }) => `${label} re-hung`);
  return [...say(off, 'off'), ...say(on, 'on'), ...anew].join(', ');
}

/** What whoever lifts first must hang, and what changes for this lifter in every round after: "hang 64-A first; from round 2: 22-A off". */
export function firstHanging(now: SetOnBar, eachRound: string): string {
  const labels = hung(now).map(({ label }) => label);
  const first = labels.length === 0 ? [] : [`hang ${labels.join(' and ')} first`];
  const later = eachRound === '' || eachRound === sameBands ? [] : [`from round 2: ${eachRound}`];
  return [...first, ...later].join('; ');
}

/** Everything that hangs; the same pair hung another way, or another number of chains, is another thing to do. */
function hung({ bands, chains }: SetOnBar): { key: string; label: string }[] {
  return [
    ...bands.map(({ label, bandPairId, hookupId }) => ({ key: `${bandPairId} ${hookupId}`, label })),
    ...chains.map(({ label, chainPairId, pairs }) => ({
      key: `${chainPairId} ${pairs}`,
      label: `chain ${label}`,
    })),
  ];
}
