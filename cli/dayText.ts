import { effortKey, effortLine } from '#contract/paper/effortWords.ts';
import type { LifterOnSheet, RackSheet, WrittenLoad } from '#contract/paper/RackSheetModel.ts';
import { sinceThen } from '#contract/paper/sinceThen.ts';
import { strengthThere } from '#contract/paper/strengthThere.ts';
import { paperOf } from '#reckon/day/paperOf.ts';
import type { SolvedDay } from './SolvedDay.ts';

const width = 78;

/** The rack sheets of the paper in plain letters: one part for each rack of each group. */
export function dayText(days: readonly SolvedDay[], unit: 'kg' | 'lb' | undefined): string {
  return days.flatMap((day) => [...sheetsOf(day, unit).map(sheetText), ...problemsOf(day)]).join('\n');
}

function sheetsOf({ plan, prescription, records }: SolvedDay, unit: 'kg' | 'lb' | undefined): RackSheet[] {
  const [club] = records.club;
  const day = records.day.find(({ id }) => id === plan.dayId);
  const units = { mass: unit ?? club?.massUnit ?? 'kg', length: club?.lengthUnit ?? 'cm' };
  return paperOf({ prescription, plan, records, day }, units)();
}

/** Lifters for whom nothing could be worked out, and why. */
function problemsOf({ plan }: SolvedDay): string[] {
  return plan.groups.flatMap(({ places }) =>
    places.flatMap(({ name, problem }) => (problem === null ? [] : [`${wrap(`${name}: ${problem}`)}\n`])),
  );
}

function sheetText(sheet: RackSheet): string {
  return [
    '='.repeat(width),
    apart(`${sheet.club}${sheet.invented ? ' (invented)' : ''}`, sheet.date),
    apart(`${sheet.rack}: ${sheet.group}`, `page ${sheet.page} of ${sheet.pages}`),
    ...(sheet.title ? [wrap(sheet.title)] : []),
    wrap(sheet.work),
    ...(sheet.note ? [wrap(`Note: ${sheet.note}`, '  ')] : []),
    '='.repeat(width),
    ...sheet.lifters.flatMap((line) => ['', ...lifterText(line, sheet.unit)]),
    '',
    '-'.repeat(width),
    ...sheet.cautions.map((sentence) => wrap(`! ${sentence}`, '  ')),
    ...sheet.since.map((sentence) => wrap(`! ${sinceThen(sentence)}`, '  ')),
    ...sheet.assumed.map((sentence) => wrap(`~ ${sentence}`, '  ')),
    wrap(`! look out   ~ assumed or estimated, not measured. ${sheet.madeBy}${changed(sheet)}`),
    wrap(`Not a substitute for qualified coaching; local rules come first. ${effortKey}`),
    '',
  ].join('\n');
}

function lifterText(line: LifterOnSheet, unit: string): string[] {
  const byCoach = line.barByCoach ? ', set by the coach' : '';
  const hung = line.hung.length > 0 ? line.hung.join('; ') : 'straight weight';
  return [
    apart(`${line.order}  ${line.name}, ${line.start}`, `${line.bar} ${unit}`),
    ...(line.stack ? [row('box', line.stack)] : []),
    ...(line.trueBar ? [row('bar', line.trueBar)] : []),
    row('discs', `${line.aSide}${line.barKnown === 'measured' ? '' : `, ${line.barKnown}`}${byCoach}`),
    row('on bar', line.changes ? `${hung} (${line.changes})` : hung),
    ...(line.note ? [row('note', line.note)] : []),
    ...line.since.map((sentence) => row('!', sinceThen(sentence))),
    row('bottom', loadText(line.bottom, unit)),
    row('lockout', loadText(line.lockout, unit)),
    row('share', `${line.percentages}, of ${line.reference}`),
    ...line.steps.flatMap((step, index) => [
      row(
        index === 0 ? 'work' : '',
        `${step.sets} x ${step.reps} with ${step.bar} ${unit}${step.trueBar && ` (${step.trueBar})`}, ${step.aSide}, ${step.rest}`,
      ),
      row('', `  ${effortLine(step.effort)}`),
    ]),
  ];
}

function loadText(written: WrittenLoad, unit: string): string {
  const { load, interval, known, habit } = written;
  const how = known === 'measured' ? '' : ` ${known === 'notMeasured' ? 'not measured' : known}`;
  const range = interval === '' ? '' : ` (95 %: ${interval})`;
  return `${load} ${unit}${how}${range}${[strengthThere(written), habit].map((said) => said && `, ${said}`).join('')}`;
}

function row(name: string, text: string): string {
  return wrap(`   ${name.padEnd(9)}${text}`, ' '.repeat(12));
}

function apart(left: string, right: string): string {
  return `${left}  ${right.padStart(Math.max(0, width - left.length - 2))}`;
}

/** Breaks a sentence between words, but not after a number, so that no line is wider than the sheet. */
function wrap(text: string, indent = ''): string {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/(?<=\S) /)) {
    if (line !== '' && line.length + 1 + word.length > width) {
      lines.push(line);
      line = indent + word;
    } else {
      line = line === '' ? word : `${line} ${word}`;
    }
  }
  return [...lines, line].join('\n').replaceAll('\u00a0', ' ');
}

function changed({ changedSince }: RackSheet): string {
  return changedSince ? ' The plan, the gear or something about its lifters was changed after that.' : '';
}
