import { onDemand } from '#web/parts/onDemand.tsx';
import { loadWeekPanel } from './weekOnDemand.tsx';

const parts = {
  lifter: () => import('./LifterSeasonPage.tsx').then((m) => m.LifterSeasonPage),
  changes: () => import('./taken/ChangesPart.tsx').then((m) => m.ChangesPart),
  taken: () => import('./taken/TakenPlanPage.tsx').then((m) => m.TakenPlanPage),
  who: () => import('./who/WhoPart.tsx').then((m) => m.WhoPart),
};

/** What opens from a season's picture. Its code, with all that judges what is typed, comes after the picture is in sight. */
export const LifterSeasonPage = onDemand(parts.lifter);
export const ChangesPart = onDemand(parts.changes);
export const TakenPlanPage = onDemand(parts.taken);
export const WhoPart = onDemand(parts.who);

export const allParts = () => Promise.all([loadWeekPanel(), ...Object.values(parts).map((load) => load())]);
