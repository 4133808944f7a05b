import type { ClubRecords, KindName } from '#contract/records/allKinds.ts';
import type { BandReadingRecord } from '#contract/records/gear.ts';
import { type ReadingQuestion, readingQuestions } from '#contract/words/readingQuestions.ts';
import type { CsvProblem } from './CsvProblem.ts';
import type { ReadRow } from './readRow.ts';

/**
 * Lines whose force falls while the length grows, or lies far from what the band should pull: asked about, for nobody but the coach can
 * say that they are right.
 */
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
      const lines = added.filter(({ record }) => record.bandPairId === pair.id && record.side === side);
      if (lines.length === 0) return [];
      const readings = lines.map(({ record }) => record);
      return readingQuestions(pair, side, readingsOf(club, pair.id), readings).map(({ at, sentence }) => ({
        line: lineOf(lines, at),
        column: 'force_N',
        message: `Band ${side} of pair "${pair.label}": ${sentence}`,
      }));
    }),
  );
  return questions.toSorted((a, b) => a.line - b.line);
}

function readingsOf({ bandReading }: ClubRecords, bandPairId: string) {
  const own = bandReading.filter((reading) => reading.bandPairId === bandPairId);
  return { a: own.filter(({ side }) => side === 'a'), b: own.filter(({ side }) => side === 'b') };
}

/** The line that brought it: the one nearest to a place of the question, of places alike near the first. */
function lineOf(
  lines: readonly { line: number; record: BandReadingRecord }[],
  places: ReadingQuestion['at'],
): number {
  const near = places.flatMap((place) =>
    lines
      .filter(({ record }) => record.direction === place.direction)
      .filter(({ record }) => place.takenOn === undefined || record.takenOn === place.takenOn)
      .map(({ line, record }) => ({
        line,
        offM: Math.abs(record.lengthM - place.lengthM),
        offN: Math.abs(record.forceN - place.forceN),
      }))
      .toSorted((a, b) => a.offM - b.offM || a.offN - b.offN)
      .slice(0, 1),
  );
  return near.toSorted((a, b) => a.offM - b.offM)[0]!.line;
}
