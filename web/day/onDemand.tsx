import { onDemand } from '#web/parts/onDemand.tsx';

const panels = {
  plan: () => import('./GroupPlan.tsx').then((m) => m.GroupPlan),
  place: () => import('./PlaceDetail.tsx').then((m) => m.PlaceDetail),
  log: () => import('./log/LogPanel.tsx').then((m) => m.LogPanel),
};

/** What opens on a day's page at a tap. Its code, with all that judges what is typed, comes after the loads are in sight. */
export const GroupPlan = onDemand(panels.plan);
export const PlaceDetail = onDemand(panels.place);
export const LogPanel = onDemand(panels.log);

export const allPanels = () => Promise.all(Object.values(panels).map((load) => load()));
