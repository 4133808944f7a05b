/** What a column of the log can hold, by its key. */
export type LogColumn = keyof typeof logColumns;

/** What its figures count; null: text, or a figure without a unit. */
export type Measure = 'mass' | 'length' | 'time' | null;

interface ColumnWords {
  /** The header that our own file gives it; null: only other files have it. */
  header: string | null;
  measure: Measure;
  /** What other files call it, small letters, without a unit. */
  words: readonly string[];
}

/** The columns of the log's file in their order. One line is one set, or several alike where `sets` says so. */
export const logColumns = {
  date: column(
    'date',
    null,
    'day',
    'when',
    'done on',
    'training date',
    'session date',
    'date of session',
    'date of training',
    'workout date',
  ),
  lifter: column(
    'lifter',
    null,
    'name',
    'lifter name',
    'athlete',
    'member',
    'who',
    'full name',
    'first name',
  ),
  lift: column(
    'lift',
    null,
    'exercise',
    'movement',
    'main lift',
    'variant',
    'lift name',
    'exercise name',
    'name of lift',
  ),
  order: column('order', null, 'set', 'set no', 'set number', 'no'),
  sets: column(null, null, 'sets', 'number of sets'),
  start: column('start', null, 'start from', 'way'),
  startHeight: column(
    'start_height_m',
    'length',
    'height',
    'box',
    'box height',
    'pin height',
    'board thickness',
  ),
  equipment: column('equipment', null, 'kit', 'supportive equipment'),
  bar: column(
    'bar_kg',
    'mass',
    'weight',
    'load',
    'bar weight',
    'bar load',
    'mass',
    'kg',
    'lb',
    'on bar',
    'on the bar',
    'weight on bar',
    'weight on the bar',
    'lifted',
    'weight lifted',
  ),
  barChecked: column('bar_checked', null),
  rack: column('rack', null, 'station'),
  bands: column('bands', null, 'band'),
  chains: column('chains', null, 'chain'),
  reps: column('reps', null, 'rep', 'repetitions', 'reps asked', 'target reps'),
  made: column(
    'made',
    null,
    'reps made',
    'reps done',
    'done',
    'completed',
    'reps completed',
    'success',
    'successful',
    'made it',
    'good lift',
  ),
  stoppedAt: column('stopped_at', null, 'missed at', 'stuck at'),
  meanSpeeds: column(
    'mean_speeds_mps',
    null,
    'mean speed',
    'average speed',
    'bar speed',
    'speed',
    'mean velocity',
    'velocity',
  ),
  peakSpeeds: column('peak_speeds_mps', null, 'peak speed', 'top speed', 'peak velocity'),
  repsInReserve: column('reps_in_reserve', null, 'rir', 'reserve', 'reps left', 'reps in the tank'),
  effort: column(null, null, 'effort', 'rpe', 'effort rating', 'exertion'),
  rest: column('rest_s', 'time', 'rest before', 'rest time'),
  bodyMass: column('body_mass_kg', 'mass', 'body weight', 'bw'),
  platform: column('platform', null, 'meet', 'competition', 'contest'),
  place: column('place', null, 'where', 'location', 'venue', 'gym'),
  note: column('note', null, 'notes', 'comment', 'comments', 'remarks'),
} as const satisfies Record<string, ColumnWords>;

export const logColumnNames = Object.keys(logColumns) as LogColumn[];

/** Without these no line says what was done. */
export const neededColumns: readonly LogColumn[] = ['date', 'lifter', 'lift', 'bar', 'reps'];

function column(header: string | null, measure: Measure, ...others: string[]): ColumnWords {
  const own = header === null ? [] : [header.replace(/_(kg|m|s|mps)$/, '').replaceAll('_', ' ')];
  return { header, measure, words: [...own, ...others] };
}
