import { Hono } from 'hono';
import { createMiddleware } from 'hono/factory';
import type { ClubStore } from '#store/ClubStore.ts';
import { snapshotFolderOf } from '#store/copies/keptCopies.ts';
import { type ClubCalendar, clubCalendar } from './calendar/clubCalendar.ts';
import type { TelephoneDoor } from './calendar/telephoneDoor.ts';
import { type SnapshotKeeper, snapshotKeeper } from './copies/snapshotKeeper.ts';
import { answerError, errorBody } from './guard/errors.ts';
import { headers } from './guard/headers.ts';
import { noBodyBeyondBounds } from './guard/noBodyBeyondBounds.ts';
import { sameOrigin } from './guard/sameOrigin.ts';
import { standing } from './guard/standing.ts';
import { unchanged } from './guard/unchanged.ts';
import { behindWrites } from './jobs/behindWrites.ts';
import type { RunWork } from './jobs/jobs.ts';
import { type KeptAnswers, nothingKept } from './jobs/keptAnswers.ts';
import { runHere } from './jobs/runHere.ts';
import { workNews } from './jobs/workNews.ts';
import { archiveRoutes } from './routes/archive.ts';
import { backtestRoutes } from './routes/backtest.ts';
import { calendarRoutes } from './routes/calendar.ts';
import { changeRoutes } from './routes/changes.ts';
import { clubRoutes } from './routes/club.ts';
import { comparisonRoutes } from './routes/comparisons.ts';
import { computeRoutes } from './routes/compute.ts';
import { copyRoutes } from './routes/copies.ts';
import { csvRoutes } from './routes/csv.ts';
import { dayRoutes } from './routes/days.ts';
import { estimateRoutes } from './routes/estimates.ts';
import { evidenceRoutes } from './routes/evidence.ts';
import { gearAheadRoutes } from './routes/gearAhead.ts';
import { logFileRoutes } from './routes/logFile.ts';
import { nearDayRoutes } from './routes/nearDays.ts';
import { newSeasonRoutes } from './routes/newSeason.ts';
import { openApiRoutes } from './routes/openApi.ts';
import { projectionRoutes } from './routes/projection.ts';
import { recordRoutes } from './routes/records.ts';
import { screenRoutes } from './routes/screens.ts';
import { seasonRoutes } from './routes/seasons.ts';
import { setRoutes } from './routes/sets.ts';
import { seasonPlans } from './season/seasonPlans.ts';
import { weeksAhead } from './season/weeksAhead.ts';
import { type StrengthEstimator, strengthEstimator } from './strength/strengthEstimator.ts';

export interface AppParts {
  store: ClubStore;
  /** Folder of the built screens. */
  webRoot: string;
  /** Where what takes long is done; without it in this thread. */
  run?: RunWork;
  /** What works lifters' strength out. */
  estimator?: StrengthEstimator;
  /** Where what was worked out outlives the server. */
  keepIn?: KeptAnswers;
  /** What takes snapshots of the club. */
  snapshots?: SnapshotKeeper;
  /** What writes the club's calendar. */
  calendar?: ClubCalendar;
  /** Where telephones may read it; null: nowhere. */
  telephones?: TelephoneDoor | null;
  /** Called after an archive, a copy of the club or a file of the log was taken in. */
  onFilled?: () => void;
}

/** The whole server without a socket: guards first, then what each capability answers, then the screens. */
export function createApp({
  store,
  webRoot,
  run = runHere(store),
  keepIn = nothingKept,
  estimator = strengthEstimator(store, run, { keepIn }),
  snapshots = snapshotKeeper(store, run, snapshotFolderOf(store.path)),
  calendar = clubCalendar(store),
  telephones = null,
  onFilled = () => {},
}: AppParts) {
  const news = workNews();
  const takeIn = behindWrites(store);
  const plans = seasonPlans(store);
  return new Hono()
    .onError(answerError)
    .notFound((c) => c.json(errorBody('', `There is nothing at ${c.req.path}.`), 404))
    .use(headers)
    .use(sameOrigin)
    .use('/api/*', noBodyBeyondBounds)
    .use('/api/*', noStore)
    .use('/api/*', standing(store))
    .use('/api/*', unchanged)
    .on('POST', ['/api/archive', '/api/sets/import', '/api/copies/:name/restore'], after(onFilled))
    .route('/api', clubRoutes(store, { estimates: estimator.onNews, copies: snapshots.onNews }, news))
    .route('/api', recordRoutes(store))
    .route('/api', newSeasonRoutes(store))
    .route('/api', changeRoutes(store))
    .route('/api', csvRoutes(store, run, takeIn))
    .route('/api', archiveRoutes(store, run, takeIn))
    .route('/api', copyRoutes(store, run, takeIn, snapshots))
    .route('/api', dayRoutes(store, run, estimator, keepIn, news))
    .route('/api', calendarRoutes(store, calendar, telephones))
    .route('/api', seasonRoutes(store, plans))
    .route('/api', nearDayRoutes(weeksAhead(store, run, estimator, keepIn, plans)))
    .route('/api', setRoutes(store, run))
    .route('/api', logFileRoutes(store, run, takeIn))
    .route('/api', estimateRoutes(store, run, estimator, keepIn))
    .route('/api', evidenceRoutes(store, run, keepIn, news))
    .route('/api', gearAheadRoutes(store, run))
    .route('/api', comparisonRoutes(store, run, estimator, news))
    .route('/api', projectionRoutes(store, estimator))
    .route('/api', backtestRoutes(store, run, keepIn))
    .route('/api/compute', computeRoutes)
    .route('/api', openApiRoutes)
    .all('/api/*', (c) => c.notFound())
    .route('/', screenRoutes(webRoot));
}

function after(done: () => void) {
  return createMiddleware(async (c, next) => {
    await next();
    if (c.res.ok) done();
  });
}

/** What the club keeps stays out of the browser's cache on disk. */
const noStore = createMiddleware((c, next) => {
  c.header('Cache-Control', 'no-store');
  return next();
});
