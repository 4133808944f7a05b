import type { ClubRecords, KindName } from '#contract/records/allKinds.ts';
import type { BandReadingRecord } from '#contract/records/gear.ts';
import { type FallingQuestion, fallingQuestions } from '#contract/words/fallingQuestions.ts';
import type { CsvProblem } from './CsvProblem.ts';
import type { ReadRow } from './readRow.ts';

/** Lines whose force falls while the length grows: asked about, for nobody but the coach can say that they are right. */
export function oddReadings<K extends KindName>(
  kind: K,
  rows: ReadRow<K>[],
  club: ClubRecords,
): CsvProblem[] {
  if (kind !== 'bandReading') return [];
  const known = new Set(club.bandReading.map(({ id }) => id));
  const added = (rows as { line: number; record: BandReadingRecord & { id: string } }[]).filter(
    ({ record }) => !known.has(record.id),
  );
  const questions = club.bandPair.flatMap((pair) =>
    (['a', 'b'] as const).flatMap((side) => {
      const isOfLoop = (reading: BandReadingRecord) =>
        reading.bandPairId === pair.id && reading.side === side;
      const lines = added.filter(({ record }) => isOfLoop(record));
      if (lines.length === 0) return [];
      const readings = lines.map(({ record }) => record);
      return fallingQuestions(pair, side, club.bandReading.filter(isOfLoop), readings).map(
        ({ fall, sentence }) => ({
          line: lineOf(lines, fall),
          column: 'force_N',
          message: `Band ${side} of pair "${pair.label}": ${sentence}`,
        }),
      );
    }),
  );
  return questions.toSorted((a, b) => a.line - b.line);
}

/** The line that brought the fall: that of the longer reading, or of the shorter one where only that is new. */
function lineOf(
  lines: readonly { line: number; record: BandReadingRecord }[],
  { direction, longer, shorter }: FallingQuestion['fall'],
): number {
  const nearest = ({ lengthM, forceN }: FallingQuestion['fall']['longer']) =>
    lines
      .filter(({ record }) => record.direction === direction)
      .map(({ line, record }) => ({
        line,
        offM: Math.abs(record.lengthM - lengthM),
        offN: Math.abs(record.forceN - forceN),
      }))
      .toSorted((a, b) => a.offM - b.offM || a.offN - b.offN)[0]!;
  const [atLonger, atShorter] = [nearest(longer), nearest(shorter)];
  return (atShorter.offM < atLonger.offM ? atShorter : atLonger).line;
}
