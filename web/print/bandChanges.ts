import type { PlanPlace } from '#contract/dayPlan.ts';

type SetOnBar = NonNullable<PlanPlace['solved']>['set'];

/** What to take off and hang after the lifter before: "64-A on, 22-A off"; "same bands" where nothing changes. */
export function bandChanges(before: SetOnBar, now: SetOnBar): string {
  const on = hung(now).filter((label) => !hung(before).includes(label));
  const off = hung(before).filter((label) => !hung(now).includes(label));
  if (on.length === 0 && off.length === 0) return hung(now).length === 0 ? '' : 'same bands';
  return [on.length > 0 ? `${on.join(', ')} on` : '', off.length > 0 ? `${off.join(', ')} off` : '']
    .filter(Boolean)
    .join('; ');
}

/** Everything that hangs, by label; a pair hung another way is named with it. */
function hung({ bands, chains }: SetOnBar): string[] {
  return [
    ...bands.map(({ label, hookupWords }) => `${label} ${hookupWords.toLowerCase()}`),
    ...chains.map(({ label, pairs }) => `${pairs} ${pairs === 1 ? 'pair' : 'pairs'} ${label}`),
  ];
}
