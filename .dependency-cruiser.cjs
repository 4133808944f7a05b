/** One line of imports: core <- contract <- reckon <- server <- cli; store stands on contract, web on reckon. */
const only = (name, from, allowed) => ({
  name,
  severity: 'error',
  comment: `${from} may import only: ${allowed}`,
  from: { path: `^${from}/`, pathNot: '\\.test\\.tsx?$|^core/checks/' },
  to: {
    path: '^(core|contract|reckon|store|server|cli|web|demo|walks|bench|studies|scripts)/',
    pathNot: `^(${allowed})/`,
  },
});
const room = (name, allowed) =>
  only(`core-${name}`, `core/${name}`, allowed.map((r) => `core/${r}`).join('|'));
/** Every folder of the web app that is no room which screens share: a new screen is one without being named here. */
const screens = '^web/(?!(?:api|charts|parts|print|setup|shell|theme)/)([^/]+)/';
/** A room of a floor stands on the floors below and on these rooms of its own floor. */
const roomOf = (floor, below) => (name, allowed) =>
  only(
    `${floor}-${name}`,
    `${floor}/${name}`,
    [...below, ...[name, ...allowed].map((r) => `${floor}/${r}`)].join('|'),
  );
const contractRoom = roomOf('contract', ['core']);
const reckonRoom = roomOf('reckon', ['contract', 'core']);
module.exports = {
  forbidden: [
    only('core', 'core', 'core'),
    only('contract', 'contract', 'contract|core'),
    only('reckon', 'reckon', 'reckon|contract|core'),
    only('store', 'store', 'store|contract|core/units|core/numeric'),
    only('server', 'server', 'server|store|reckon|contract|core|demo'),
    only('cli', 'cli', 'cli|server|store|reckon|contract|core|demo'),
    only('web', 'web', 'web|reckon|contract|core'),
    only('demo', 'demo', 'demo|reckon|contract|core'),
    only('studies', 'studies', 'studies|core'),
    contractRoom('records', ['calendar']),
    contractRoom('calendar', []),
    contractRoom('changes', ['records']),
    contractRoom('evidence', ['records']),
    contractRoom('comparison', ['records']),
    contractRoom('strength', ['records']),
    contractRoom('projection', ['strength', 'records', 'calendar']),
    contractRoom('day', ['strength', 'records']),
    contractRoom('words', ['changes', 'comparison', 'day', 'evidence', 'strength', 'records']),
    contractRoom('season', ['paper', 'json', 'words', 'evidence', 'day', 'records', 'calendar']),
    contractRoom('paper', ['words', 'day', 'records']),
    contractRoom('calendarFile', ['paper', 'words', 'records', 'calendar']),
    contractRoom('json', []),
    contractRoom('csv', ['words', 'records', 'json']),
    contractRoom('track', ['csv']),
    contractRoom('archive', ['words', 'records', 'json']),
    contractRoom('log', ['archive', 'csv', 'words', 'records']),
    contractRoom('compute', ['words', 'comparison', 'records', 'calendar', 'json']),
    reckonRoom('gear', []),
    reckonRoom('basis', []),
    reckonRoom('lifter', ['gear']),
    reckonRoom('strength', ['lifter', 'gear']),
    reckonRoom('log', ['strength', 'lifter', 'gear']),
    reckonRoom('evidence', ['lifter', 'gear']),
    reckonRoom('comparison', ['evidence', 'lifter', 'gear']),
    reckonRoom('projection', ['evidence', 'strength', 'lifter', 'gear']),
    reckonRoom('day', ['strength', 'lifter', 'gear', 'basis']),
    reckonRoom('season', ['day', 'strength', 'evidence', 'log', 'lifter', 'gear', 'basis']),
    room('units', ['units']),
    room('numeric', ['numeric']),
    room('band', ['band', 'numeric']),
    room('rig', ['rig', 'band', 'numeric']),
    room('load', ['load', 'rig', 'band', 'numeric']),
    room('rep', ['rep', 'load', 'rig', 'band', 'numeric']),
    room('lifter', ['lifter', 'rep', 'load', 'rig', 'band', 'numeric']),
    room('effort', ['effort', 'lifter', 'rep', 'load', 'rig', 'band', 'numeric']),
    room('strength', ['strength', 'effort', 'lifter', 'rep', 'load', 'rig', 'band', 'numeric']),
    room('projection', [
      'projection',
      'strength',
      'effort',
      'lifter',
      'rep',
      'load',
      'rig',
      'band',
      'numeric',
    ]),
    room('track', ['track', 'numeric']),
    room('evidence', ['evidence', 'numeric']),
    room('comparison', ['comparison', 'strength', 'evidence', 'numeric']),
    room('season', ['season', 'numeric']),
    room('day', ['day', 'strength', 'effort', 'lifter', 'rep', 'load', 'rig', 'band', 'numeric']),
    {
      name: 'core-is-pure',
      severity: 'error',
      comment: 'core runs unchanged in browser and Node',
      from: { path: '^core/', pathNot: '\\.test\\.ts$|^core/checks/' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'screens-do-not-know-each-other',
      severity: 'error',
      from: { path: screens },
      to: { path: screens, pathNot: '^web/$1/' },
    },
    { name: 'no-cycles', severity: 'error', from: {}, to: { circular: true } },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: 'node_modules|dist' },
    tsPreCompilationDeps: true,
    parser: 'swc',
    enhancedResolveOptions: {
      extensions: ['.ts', '.tsx', '.js', '.mjs', '.json'],
      conditionNames: ['import', 'types', 'default'],
    },
  },
};
