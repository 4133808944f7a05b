import { expect, test } from 'vitest';
import { twoLifters } from '#contract/tests/twoLifters.ts';
import { readLog } from './readLog.ts';
import { suggestColumns } from './suggestColumns.ts';

const club = twoLifters();
const name = club.lifter[0]!.name;
const LAST_DAY = '2090-01-01';

function datesOf(...dates: string[]) {
  const lines = dates.map((day) => `${day},${name},squat,100,5`);
  return readLog(['Datum,Heber,Lift,Gewicht,Wdh', ...lines].join('\n'), null, club, LAST_DAY);
}

function madeOf(...cells: string[]) {
  const lines = cells.map((cell) => `2026-02-03,${name},squat,100,5,${cell}`);
  return readLog(['date,lifter,lift,bar,reps,Success', ...lines].join('\n'), null, club, LAST_DAY);
}

test('a date with dots has its day first, and that is said; slashes stay unclear', () => {
  const { sets, readAs } = datesOf('03.02.2026', '4.4.2026');
  expect(sets.map(({ doneOn }) => doneOn)).toEqual(['2026-02-03', '2026-04-04']);
  expect(readAs).toEqual(['Dates with dots were read with the day first: 03.02.2026 as 2026-02-03.']);
  expect(datesOf('03/02/2026').problems).toMatchObject([{ line: 2, column: 'Datum' }]);
  // Dots of one line tell nothing of slashes in another.
  expect(datesOf('13.02.2026', '03/02/2026').problems).toMatchObject([{ line: 3, column: 'Datum' }]);
});

test('dates with dots that show their order themselves are read by it', () => {
  expect(datesOf('03.02.2026', '14.02.2026')).toMatchObject({ problems: [], readAs: [] });
  const monthFirst = datesOf('03.02.2026', '02.14.2026');
  expect(monthFirst.sets.map(({ doneOn }) => doneOn)).toEqual(['2026-03-02', '2026-02-14']);
  expect(datesOf('14.02.2026', '02.14.2026').problems).toHaveLength(1);
});

test('yes and no stand for all reps made and the last one missed, and that is said', () => {
  const { sets, readAs, problems } = madeOf('yes', 'Nein', 'made', 'missed', 'ja', '3', '', 'sí');
  expect(problems).toEqual([]);
  expect(sets.map(({ made }) => made)).toEqual([5, 4, 5, 4, 5, 3, 5, 5]);
  expect(readAs).toEqual([
    'Success was read as yes or no: on 4 lines all reps asked for were made, on 2 lines the last one asked for was missed. Where more were missed, write the reps made instead.',
  ]);
  expect(madeOf('4', '').readAs).toEqual([]);
});

test('x counts as yes only where the rest of the column says no', () => {
  expect(madeOf('x', 'no', 'X').sets.map(({ made }) => made)).toEqual([5, 4, 5]);
  for (const other of ['', 'yes', '3']) {
    const { sets, problems } = madeOf('x', other);
    expect(sets).toEqual([]);
    expect(problems[0]).toMatchObject({ line: 2, column: 'Success' });
    expect(problems[0]?.message).toContain('"x" is a tick in one table and a miss in another');
  }
});

test('what is neither a number nor yes or no is refused, and so is a no for several sets', () => {
  expect(madeOf('perhaps').problems).toMatchObject([
    { line: 2, message: '"perhaps" is neither the number of reps made nor yes or no.' },
  ]);
  const text = `date,lifter,lift,bar,sets,reps,made\n2026-02-03,${name},squat,100,3,5,no\n`;
  expect(readLog(text, null, club, LAST_DAY).problems).toMatchObject([
    {
      line: 2,
      column: 'made',
      message:
        '"no" does not say which of the 3 sets of this line was missed; give that one a line of its own.',
    },
  ]);
});

// Everyday words of four languages; from memory, no source.
test.each([
  ['Date of session,Athlete,Lift name,Kilos on bar,Reps,Success', 'date,lifter,lift,bar,reps,made'],
  ['Datum,Name,Übung,Gewicht (kg),Sätze,Wdh,Geschafft', 'date,lifter,lift,bar,sets,reps,made'],
  ['Jour,Nom,Exercice,Poids,Séries,Répétitions,Réussi', 'date,lifter,lift,bar,sets,reps,made'],
  ['Fecha,Nombre,Ejercicio,Peso,Series,Repeticiones,Notas', 'date,lifter,lift,bar,sets,reps,note'],
  [
    'Day,Who,Exercise,Kg,Rep,Körpergewicht,Bemerkungen,Satzpause',
    'date,lifter,lift,bar,reps,bodyMass,note,rest',
  ],
  ['Workout date,Full name,Lift,Weight on the bar,Reps,RPE', 'date,lifter,lift,bar,reps,effort'],
])('suggests all of %s', (headers, columns) => {
  const names = headers.split(',');
  const expected = Object.fromEntries(columns.split(',').map((column, i) => [column, names[i]]));
  expect(suggestColumns(names)).toEqual(expected);
});

test('suggests nothing for what is no column of the log', () => {
  expect(suggestColumns(['Last name', 'Weight class', 'Gewichtsklasse', 'Mood', 'Tonnage', 'Week'])).toEqual(
    {},
  );
});

test('a unit in front counts as one behind', () => {
  // NIST SP 811: 1 lb = 0.45359237 kg.
  const text = `date,lifter,lift,Pounds on the bar,reps\n2026-02-03,${name},squat,225,5\n`;
  const { sets, units } = readLog(text, null, club, LAST_DAY);
  expect(units).toEqual({ bar: 'lb' });
  expect(sets[0]?.setup.barKg).toBeCloseTo(225 * 0.45359237, 9);
});
