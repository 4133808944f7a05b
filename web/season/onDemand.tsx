import { onDemand } from '#web/parts/onDemand.tsx';

const parts = {
  week: () => import('./WeekPanel.tsx').then((m) => m.WeekPanel),
  lifter: () => import('./LifterSeasonPage.tsx').then((m) => m.LifterSeasonPage),
  changes: () => import('./taken/ChangesPart.tsx').then((m) => m.ChangesPart),
  taken: () => import('./taken/TakenPlanPage.tsx').then((m) => m.TakenPlanPage),
  who: () => import('./who/WhoPart.tsx').then((m) => m.WhoPart),
};

/** What opens from a season's picture. Its code, with all that judges what is typed, comes after the picture is in sight. */
export const WeekPanel = onDemand(parts.week);
export const LifterSeasonPage = onDemand(parts.lifter);
export const ChangesPart = onDemand(parts.changes);
export const TakenPlanPage = onDemand(parts.taken);
export const WhoPart = onDemand(parts.who);

export const allParts = () => Promise.all(Object.values(parts).map((load) => load()));
