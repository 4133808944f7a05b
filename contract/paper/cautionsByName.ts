import type { PlanCaution } from '#contract/day/explainedBar.ts';
import type { LifterLine, SaidCaution } from './RackSheetModel.ts';

/**
 * The same caution for several lifters is said once, by the gravest, and where figures differ whose it is: "Ilse, Odhrán, Ilse most of
 * all: up to 97 % ...".
 */
export function cautionsByName(
  lifters: readonly LifterLine[],
  of: (line: LifterLine) => readonly SaidCaution[],
): string[] {
  const all = lifters.flatMap((line) => of(line).map((said) => ({ line, said })));
  const keys = [...new Set(all.map(({ said }) => keyOf(said)))];
  return keys.map((key) => {
    const alike = all.filter(({ said }) => keyOf(said) === key);
    const gravest = alike.reduce((worst, one) =>
      graveness(one.said.caution) > graveness(worst.said.caution) ? one : worst,
    );
    const named = lifters.filter((line) => alike.some((one) => one.line === line));
    const who =
      named.length === lifters.length
        ? 'All'
        : named.map((line) => calledThere(line.name, lifters)).join(', ');
    const isOfAll = alike.every(({ said }) => said.sentence === gravest.said.sentence);
    const most = isOfAll ? '' : `, ${calledThere(gravest.line.name, lifters)} most of all`;
    return `${who}${most}: ${gravest.said.sentence}`;
  });
}

/** Cautions that differ by a figure only are one caution; what else differs is said apart. */
function keyOf({ caution, sentence }: SaidCaution): string {
  switch (caution.code) {
    case 'maximal':
    case 'unlikely':
      return caution.code;
    case 'strengthWide':
      return `${caution.code} ${caution.workUp} ${caution.belowShare >= 0.005}`;
    case 'anchorNotRated':
      return `${caution.code} ${caution.anchorId}`;
    case 'extrapolated':
      return `${caution.code} ${caution.pairId}`;
    case 'boundBinds':
      return `${caution.code} ${caution.bound}`;
    case 'noBands':
      return `${caution.code} ${caution.why.reason}`;
    default:
      return sentence;
  }
}

function graveness(caution: PlanCaution): number {
  switch (caution.code) {
    case 'maximal':
      return caution.peakShare;
    case 'unlikely':
      return -caution.chance;
    case 'strengthWide':
      return caution.sdLn;
    case 'anchorNotRated':
      return caution.pullN;
    case 'extrapolated':
      return caution.stretch;
    case 'boundBinds':
      return Math.abs(caution.wanted - caution.limit);
    default:
      return 0;
  }
}

/** The first name where nobody else of these lifters has it. */
function calledThere(name: string, lifters: readonly LifterLine[]): string {
  const first = name.split(' ')[0] ?? name;
  return lifters.filter((line) => line.name.split(' ')[0] === first).length === 1 ? first : name;
}
