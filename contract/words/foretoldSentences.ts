import type { ComparisonPlan } from '#contract/records/comparisonPlan.ts';
import { counted } from './counted.ts';
import { percentToTenth } from './percent.ts';

/** What could be seen of a planned comparison, the plain answer first. */
export function foretoldSentences(plan: ComparisonPlan): string[] {
  return [answer(plan), ...needed(plan), restsOn(plan), ...simulated(plan)];
}

function answer({ foretold, drawn, weeks }: ComparisonPlan): string {
  const { detectable_percent, outlook } = foretold;
  const crew = `${counted(drawn.length, 'lifter')} over ${counted(weeks, 'week')}`;
  if (detectable_percent === null)
    return `This cannot be seen: ${crew} are too few to tell any two ways apart.`;
  const least = percent(detectable_percent);
  const usual = `lifters usually gain ${percent(foretold.usualGain_percent)} in that time (${
    foretold.usualGainKnown === 'club' ? 'as the log of your club shows' : 'published for lifters at meets'
  })`;
  if (outlook === 'cannotBeSeen')
    return `This cannot be seen: with ${crew}, only a difference of ${least} or more would show in four of five comparisons, and ${usual}. Even if one way brought all of that and the other nothing, it would most likely not show.`;
  if (outlook === 'onlyGreat')
    return `Only a very great difference could be seen: with ${crew}, one of ${least} or more would show in four of five comparisons, and ${usual}. One way would have to beat the other by more than half of that.`;
  return `This could be seen: with ${crew}, a difference of ${least} or more would show in four of five comparisons, and ${usual}. A smaller one may be there and not show.`;
}

function needed({ foretold: { liftersNeeded, chanceToSeeHalf, outlook } }: ComparisonPlan): string[] {
  if (outlook === 'canBeSeen' || liftersNeeded === null) return [];
  return [
    `If one way truly brought half a usual gain more, this comparison would show it in ${Math.round(100 * chanceToSeeHalf)} of 100 cases; about ${liftersNeeded} lifters would be needed to show it in 80.`,
  ];
}

function restsOn({ scatter, foretold }: ComparisonPlan): string {
  const figures = `gains differ between lifters by ${finePercent(scatter.gainSd_percentAWeek)} a week, a single test is off by ${percent(scatter.testSd_percent)}`;
  const source =
    scatter.known === 'measured'
      ? `from ${counted(scatter.tests, 'test')} of ${counted(scatter.lifters, 'lifter')} in your club`
      : 'assumed, since the log has too few tests to tell';
  const leaving = foretold.leaving_percent;
  return `This rests on how tests scatter: ${figures} (${source})${leaving > 0 ? `, and on ${percent(leaving)} of the lifters leaving before the end` : ''}.`;
}

function simulated({ foretold: { plays, error_percent } }: ComparisonPlan): string[] {
  if (error_percent === null) return [];
  return [`Worked out from ${plays} simulated comparisons, to ±${percent(error_percent)}.`];
}

function percent(value: number): string {
  return percentToTenth(value / 100);
}

function finePercent(value: number): string {
  return `${Number(value.toFixed(2))} %`;
}
