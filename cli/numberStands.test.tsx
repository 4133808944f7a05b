import { Fragment } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import { dayPlan } from '#contract/day/dayPlan.ts';
import { allKinds, type ClubRecords, kindNames } from '#contract/records/allKinds.ts';
import { millraceClub } from '#demo/millraceClub.ts';
import { paperOf } from '#reckon/day/paperOf.ts';
import { solveDay } from '#reckon/day/solveDay.ts';
import { wordsNow } from '#reckon/day/wordsOf.ts';
import { signPrescription } from '#server/signPrescription.ts';
import { ViewUnits } from '#web/parts/ViewUnits.tsx';
import { BlankSheet } from '#web/print/BlankSheet.tsx';
import { LifterCard } from '#web/print/LifterCard.tsx';
import { RackSheetPage } from '#web/print/RackSheetPage.tsx';
import { dayCsv } from './dayCsv.ts';
import { dayText } from './dayText.ts';

const club = millraceClub('2026-11-25');
const speed = club.day.find(({ title }) => title.startsWith('Speed'))!;
const [group] = speed.groups;
const [first, second] = group!.places;
const day = {
  ...speed,
  note: 'Doors close at nine.',
  groups: [{ ...group!, places: [{ ...first!, note: 'Left knee: stop.' }, second!] }],
};
const records: ClubRecords = { ...club, day: [day], club: [{ ...club.club[0]!, wallStepKg: 0.5 }] };
const kept = dayPlan.parse(JSON.parse(JSON.stringify(solveDay(records, day))));
const older = { ...kept, words: null };

const signed = (document: object) =>
  signPrescription({ id: 'p', dayId: day.id, number: 1, solvedAt: '2026-11-25T06:12:00Z', document });

/** A plan beside the club as it is by then. */
function asked(plan: typeof kept, now: ClubRecords) {
  return { plan, prescription: signed(plan), records: now };
}

/** All that is printed of it. */
function printed(plan: typeof kept, now: ClubRecords): string {
  const today = now.day.find(({ id }) => id === day.id);
  const pages = paperOf({ ...asked(plan, now), day: today }, { mass: 'kg', length: 'cm' })();
  return renderToStaticMarkup(
    <ViewUnits clubMass="kg" clubLength="cm">
      {pages.map((sheet) => (
        <Fragment key={sheet.page}>
          <RackSheetPage sheet={sheet} paper="a4" />
          <BlankSheet sheet={sheet} paper="a4" onTooFull={() => {}} />
          {sheet.lifters.map((lifter) => (
            <LifterCard key={lifter.lifterId} {...{ sheet, lifter }} />
          ))}
        </Fragment>
      ))}
    </ViewUnits>,
  );
}

/** All that terminal and spreadsheet say of it. */
function exported(plan: typeof kept, now: ClubRecords): string {
  // The terminal writes heights in the unit of the club: units are the reader's.
  const metric = { ...now, club: now.club.map((one) => ({ ...one, lengthUnit: 'cm' as const })) };
  return dayCsv([asked(plan, now)]) + dayText([asked(plan, metric)], 'kg').replaceAll(/\s+/g, ' ');
}

/** Without what a paper must own up to of what happened since. */
const asWorkedOut = (text: string) =>
  text
    .replaceAll(/<p class="since-then">[^<]*<\/p>/g, '')
    .replaceAll(/<p class="sheet-caution">The plan, the gear or something[^<]*<\/p>/g, '')
    .replaceAll(/ ! Since this was worked out: .*?\.(?= )/g, '')
    .replaceAll(' The plan, the gear or something about its lifters was changed after that.', '');

/** Another value of the same sort, all the way down. */
function otherwise(value: unknown): unknown {
  if (typeof value === 'string') return `${value} otherwise`;
  if (typeof value === 'number') return 1.25 * value + 1;
  if (typeof value === 'boolean') return !value;
  if (Array.isArray(value)) return value.map(otherwise).toReversed();
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(
    Object.entries(value).map(([name, part]) => [name, /^id$|Id$/.test(name) ? part : otherwise(part)]),
  );
}

/** The club with one field of all records of a kind otherwise, each field of each kind in turn; and without any of a kind. */
const changes: [string, ClubRecords][] = kindNames.flatMap((kind) => [
  ...Object.keys(allKinds[kind].shape.shape)
    .filter((field) => field !== 'id')
    .map((field): [string, ClubRecords] => {
      const put = (record: object) => ({ ...record, [field]: otherwise(Reflect.get(record, field)) });
      return [`${kind}.${field}`, { ...records, [kind]: records[kind].map(put) }];
    }),
  [`no ${kind}`, { ...records, [kind]: [] }],
]);

const paper = printed(kept, records);
const files = exported(kept, records);

test('a number is printed and exported byte for byte the same whatever the club changes since, but for what it says of that', () => {
  expect(paper).toContain('Left knee: stop.');
  expect(paper + files).not.toContain('Since this was worked out');
  for (const [what, now] of changes) {
    expect(asWorkedOut(printed(kept, now)), what).toBe(paper);
    expect(asWorkedOut(exported(kept, now)), what).toBe(files);
  }
});

/** What is told of a plan of before its words were kept. */
const told = (now: ClubRecords) =>
  asWorkedOut(exported(older, now)).replaceAll(/(fingerprint |sha256:)[0-9a-f]{6}/g, '');

test('whatever a plan of before would say otherwise now, the fingerprint of one that is made now covers', () => {
  const before = told(records);
  const moves = changes.filter(([, now]) => told(now) !== before);
  for (const [what, now] of moves) {
    const today = now.day.find(({ id }) => id === day.id);
    const made = { ...kept, words: wordsNow(now, today, kept.groups) };
    expect(signed(made).fingerprint, what).not.toBe(signed(kept).fingerprint);
  }
  expect(moves.map(([what]) => what)).toEqual(
    expect.arrayContaining(['club.name', 'club.wallStepKg', 'day.title', 'day.note', 'day.groups', 'no day']),
  );
});

test('notes, titles and names that were changed since are told on the paper of the number, each where it belongs', () => {
  const [, now] = changes.find(([what]) => what === 'day.groups')!;
  const later = { ...now, day: [{ ...now.day[0]!, note: '', title: 'Other' }] };
  const { title, places } = kept.groups[0]!;
  for (const said of [
    `The note for ${places[0]!.name} was changed.`,
    `The group ${title} has another name.`,
    'The note for the sheet was changed.',
    'The title of the day was changed.',
  ])
    for (const output of [printed(kept, later), exported(kept, later)])
      expect(output).toContain(`Since this was worked out: ${said}`);
});
