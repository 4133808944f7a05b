import { type Context, Hono } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { createMiddleware } from 'hono/factory';
import type { ClubStore } from '#store/ClubStore.ts';
import { answerError, errorBody } from './guard/errors.ts';
import { headers } from './guard/headers.ts';
import { sameOrigin } from './guard/sameOrigin.ts';
import { standing } from './guard/standing.ts';
import { unchanged } from './guard/unchanged.ts';
import { type Backtester, backtester } from './jobs/backtester.ts';
import type { PlanByLog, SolveDay } from './jobs/daySolver.ts';
import type { EstimateLift } from './jobs/estimateThreads.ts';
import type { WeighEvidence } from './jobs/evidenceWeigher.ts';
import { type ImportLog, importLog } from './jobs/importLog.ts';
import { byWholeLog } from './jobs/liftThreads.ts';
import { type FollowCapacity, seasonCapacity } from './jobs/seasonCapacity.ts';
import { type StrengthEstimator, strengthEstimator } from './jobs/strengthEstimator.ts';
import { archiveRoutes } from './routes/archive.ts';
import { backtestRoutes } from './routes/backtest.ts';
import { clubRoutes } from './routes/club.ts';
import { computeRoutes } from './routes/compute.ts';
import { csvRoutes } from './routes/csv.ts';
import { dayRoutes } from './routes/days.ts';
import { estimateRoutes } from './routes/estimates.ts';
import { evidenceRoutes } from './routes/evidence.ts';
import { logFileRoutes } from './routes/logFile.ts';
import { openApiRoutes } from './routes/openApi.ts';
import { projectionRoutes } from './routes/projection.ts';
import { recordRoutes } from './routes/records.ts';
import { screenRoutes } from './routes/screens.ts';
import { setRoutes } from './routes/sets.ts';

export interface AppParts {
  store: ClubStore;
  /** Folder of the built screens. */
  webRoot: string;
  /** Where days are solved; without it in this thread, which a command that waits for the answer may well block. */
  solveDay?: SolveDay;
  /** Where plans are told anew by the log; likewise. */
  planByLog?: PlanByLog;
  /** Where the log is weighed; likewise. */
  weighEvidence?: WeighEvidence;
  /** What works lifters' strength out; likewise. */
  estimator?: StrengthEstimator;
  /** What follows work capacity; likewise. */
  followCapacity?: FollowCapacity;
  /** Where files of sets are taken in; likewise. */
  takeFileIn?: ImportLog;
  /** What foretells past meets; likewise. */
  backtests?: Backtester;
  /** Called after an archive or a file of the log was taken in. */
  onFilled?: () => void;
}

/** The whole server without a socket: guards first, then what each capability answers, then the screens. */
export function createApp({
  store,
  webRoot,
  solveDay = solveHere,
  planByLog = tellHere,
  weighEvidence = weighHere,
  estimator = strengthEstimator(store, byWholeLog(estimateHere)),
  followCapacity = followHere,
  takeFileIn = importLog,
  backtests = backtester(store, estimateHere),
  onFilled = () => {},
}: AppParts) {
  return new Hono()
    .onError(answerError)
    .notFound((c) => c.json(errorBody('', `There is nothing at ${c.req.path}.`), 404))
    .use(headers)
    .use(sameOrigin)
    .use('/api/*', bodyLimit({ maxSize: maxBodyBytes, onError: tooLarge }))
    .use('/api/*', noStore)
    .use('/api/*', standing(store))
    .use('/api/*', unchanged)
    .on('POST', ['/api/archive', '/api/sets/import'], after(onFilled))
    .route('/api', clubRoutes(store, estimator))
    .route('/api', recordRoutes(store))
    .route('/api', csvRoutes(store))
    .route('/api', archiveRoutes(store))
    .route('/api', dayRoutes(store, solveDay, planByLog, estimator))
    .route('/api', setRoutes(store))
    .route('/api', logFileRoutes(store, takeFileIn))
    .route('/api', estimateRoutes(store, estimator, seasonCapacity(store, estimator, followCapacity)))
    .route('/api', evidenceRoutes(store, weighEvidence))
    .route('/api', projectionRoutes(store, estimator))
    .route('/api', backtestRoutes(backtests))
    .route('/api/compute', computeRoutes)
    .route('/api', openApiRoutes)
    .all('/api/*', (c) => c.notFound())
    .route('/', screenRoutes(webRoot));
}

const solveHere: SolveDay = async (records, day, { estimates, awaited }) => {
  const { solveDay } = await import('#reckon/day/solveDay.ts');
  return solveDay(records, day, estimates, awaited);
};

const tellHere: PlanByLog = async (records, day, plan, estimates) => {
  const { planByLog } = await import('#reckon/day/planByLog.ts');
  return planByLog(records, day, plan, estimates);
};

const weighHere: WeighEvidence = async (records, sets) => {
  const { clubEvidence } = await import('#reckon/evidence/clubEvidence.ts');
  return clubEvidence(records, sets);
};

const estimateHere: EstimateLift = async ({ records, log, of, prior }) => {
  const { estimateLift } = await import('#reckon/strength/estimateLift.ts');
  return estimateLift(records, log, of, prior);
};

const followHere: FollowCapacity = async ({ records, log, estimate }) => {
  const { liftCapacity } = await import('#reckon/strength/liftCapacity.ts');
  return liftCapacity(records, log, estimate);
};

function after(done: () => void) {
  return createMiddleware(async (c, next) => {
    await next();
    if (c.res.ok) done();
  });
}

/** What the club keeps stays out of the browser's cache on disk. */
const noStore = createMiddleware(async (c, next) => {
  await next();
  c.header('Cache-Control', 'no-store');
});

/** An archive of half a million sets fits; a body that would fill the memory does not. */
const maxBodyBytes = 256 * 1024 * 1024;

function tooLarge(c: Context) {
  return c.json(errorBody('', 'The body is larger than 256 MB, more than this server takes.'), 413);
}
