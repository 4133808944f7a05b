import { type Kysely, type Migration, Migrator } from 'kysely';
import { up as club } from './migrations/0001-club.ts';
import { up as history } from './migrations/0002-history.ts';
import { up as barPath } from './migrations/0003-bar-path.ts';
import { up as log } from './migrations/0004-log.ts';
import { up as bounds } from './migrations/0005-bounds.ts';
import { up as strengthChance } from './migrations/0006-strength-chance.ts';
import { up as barChecked } from './migrations/0007-bar-checked.ts';
import { up as who } from './migrations/0008-who.ts';
import { up as restriction } from './migrations/0009-restriction.ts';
import { up as labels } from './migrations/0010-labels.ts';
import { up as trainingHour } from './migrations/0011-training-hour.ts';
import { up as pages } from './migrations/0012-pages.ts';
import { up as season } from './migrations/0013-season.ts';
import { up as comparison } from './migrations/0014-comparison.ts';
import { up as nearWeeksAndClasses } from './migrations/0015-near-weeks-and-classes.ts';
import type { Tables } from './schema.ts';

/** Every step from an empty file to today's tables, in order. A landed step is never edited; the next one mends it. */
export const migrations: Record<string, Migration> = {
  '0001-club': { up: club },
  '0002-history': { up: history },
  '0003-bar-path': { up: barPath },
  '0004-log': { up: log },
  '0005-bounds': { up: bounds },
  '0006-strength-chance': { up: strengthChance },
  '0007-bar-checked': { up: barChecked },
  '0008-who': { up: who },
  '0009-restriction': { up: restriction },
  '0010-labels': { up: labels },
  '0011-training-hour': { up: trainingHour },
  '0012-pages': { up: pages },
  '0013-season': { up: season },
  '0014-comparison': { up: comparison },
  '0015-near-weeks-and-classes': { up: nearWeeksAndClasses },
};

/** Brings the file to today's tables in one go, all steps or none; what has run is recorded in the file itself. */
export async function migrate(db: Kysely<Tables>, steps = migrations): Promise<void> {
  const { error } = await new Migrator({
    db,
    provider: { getMigrations: async () => steps },
  }).migrateToLatest();
  if (error instanceof Error && error.message.includes('corrupted migrations')) {
    throw new Error(
      'This club file was written by a later version of Rackwright; update the program to open it.',
      {
        cause: error,
      },
    );
  }
  if (error) throw error;
}
