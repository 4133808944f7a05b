import { type CreateTableBuilder, type Kysely, sql } from 'kysely';

/** The club's records: gear, lifters, days. A column type ending in `?` may be null. */
export async function up(db: Kysely<unknown>): Promise<void> {
  for (const [name, columns] of Object.entries(tables)) {
    let table: CreateTableBuilder<string, string> = db.schema
      .createTable(name)
      .addColumn('clubId', 'text', (c) => c.notNull())
      .addColumn('id', 'text', (c) => c.notNull())
      .addColumn('removedSeq', 'integer');
    for (const [column, type] of Object.entries(columns)) {
      const nullable = type.endsWith('?');
      const dataType = type.replace('?', '') as 'text' | 'integer' | 'double precision';
      table = table.addColumn(column, dataType, (c) => (nullable ? c : c.notNull()));
    }
    if (name === 'club') {
      table = table
        .addPrimaryKeyConstraint('club_pk', ['clubId'])
        .addUniqueConstraint('club_id', ['clubId', 'id']);
    } else {
      table = table
        .addPrimaryKeyConstraint(`${name}_pk`, ['clubId', 'id'])
        .addForeignKeyConstraint(`${name}_club`, ['clubId'], 'club', ['clubId']);
    }
    for (const [from, column, to] of owners) {
      if (from !== name) continue;
      table = table.addForeignKeyConstraint(`${name}_${column}`, ['clubId', column], to, ['clubId', 'id']);
    }
    await table.execute();
  }
  for (const [from, column] of owners) {
    await db.schema.createIndex(`${from}_by_${column}`).on(from).columns(['clubId', column]).execute();
  }
  for (const [name, ...scope] of labelled) {
    await db.schema
      .createIndex(`${name}_label`)
      .unique()
      .on(name)
      .columns(['clubId', ...scope])
      .expression(sql`lower(${sql.ref('label')})`)
      .where(sql.ref('removedSeq'), 'is', null)
      .execute();
  }
}

const real = 'double precision';

const tables: Record<string, Record<string, string>> = {
  club: {
    name: 'text',
    invented: 'integer',
    timeZone: 'text',
    massUnit: 'text',
    lengthUnit: 'text',
    latitudeDeg: `${real}?`,
    heightAboveSeaM: `${real}?`,
    bandChangeMinutes: real,
    pairMismatchShare: real,
    safeStretchRatio: real,
    remeasureAfterDays: 'integer',
    remeasureAfterCycles: 'integer',
    note: 'text',
  },
  bar: { label: 'text', massKg: real, weighed: 'integer', note: 'text' },
  collarPair: { label: 'text', pairMassKg: real, pairs: 'integer', note: 'text' },
  disc: {
    faceMassKg: real,
    pairs: 'integer',
    weighedMassKg: `${real}?`,
    diameterM: `${real}?`,
    thicknessM: `${real}?`,
    note: 'text',
  },
  bandPair: {
    label: 'text',
    widthMm: real,
    restLengthAM: real,
    restLengthBM: `${real}?`,
    nominalKg: `${real}?`,
    installedOn: 'text?',
    cycles: 'integer',
    retiredOn: 'text?',
    note: 'text',
  },
  bandReading: {
    bandPairId: 'text',
    side: 'text',
    takenOn: 'text',
    lengthM: real,
    forceN: real,
    direction: 'text',
  },
  chainPair: {
    label: 'text',
    massPerMetreKg: real,
    lengthM: real,
    attachBelowBarM: real,
    pairs: 'integer',
    note: 'text',
  },
  box: { label: 'text', sort: 'text', heightM: real, pieces: 'integer', note: 'text' },
  rack: {
    label: 'text',
    lifts: 'text',
    barId: 'text?',
    collarPairId: 'text?',
    takesChains: 'integer',
    benchHeightM: `${real}?`,
    note: 'text',
  },
  anchor: { rackId: 'text', label: 'text', xM: real, yM: real, zM: real, ratedLoadN: `${real}?` },
  hookup: { rackId: 'text', anchorId: 'text', label: 'text', way: 'text', spentM: `${real}?`, lifts: 'text' },
  scaleReading: { hookupId: 'text', bandPairId: 'text', takenOn: 'text', barHeightM: real, pairForceN: real },
  lifter: {
    name: 'text',
    bornOn: 'text?',
    category: 'text',
    statureM: `${real}?`,
    equipment: 'text',
    leftOn: 'text?',
    note: 'text',
  },
  bodyMass: { lifterId: 'text', takenOn: 'text', massKg: real },
  liftHeights: {
    lifterId: 'text',
    lift: 'text',
    start: 'text',
    bottomM: real,
    lockoutM: real,
    measuredOn: 'text',
  },
  best: {
    lifterId: 'text',
    lift: 'text',
    doneOn: 'text',
    place: 'text',
    platform: 'integer',
    equipment: 'text',
    setup: 'text',
    note: 'text',
  },
  day: { date: 'text', title: 'text', groups: 'text', oneSetPull: real, note: 'text' },
};

const owners: [from: string, column: string, to: string][] = [
  ['bandReading', 'bandPairId', 'bandPair'],
  ['rack', 'barId', 'bar'],
  ['rack', 'collarPairId', 'collarPair'],
  ['anchor', 'rackId', 'rack'],
  ['hookup', 'rackId', 'rack'],
  ['hookup', 'anchorId', 'anchor'],
  ['scaleReading', 'hookupId', 'hookup'],
  ['scaleReading', 'bandPairId', 'bandPair'],
  ['bodyMass', 'lifterId', 'lifter'],
  ['liftHeights', 'lifterId', 'lifter'],
  ['best', 'lifterId', 'lifter'],
];

/** Tables whose labels are unique within the club, or within the column named after. */
const labelled: [table: string, ...scope: string[]][] = [
  ['bar'],
  ['collarPair'],
  ['bandPair'],
  ['chainPair'],
  ['box'],
  ['rack'],
  ['anchor', 'rackId'],
  ['hookup', 'rackId'],
];
