import { type ComponentType, Suspense } from 'react';
import { comesLater } from '#web/parts/comesLater.ts';

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

/** The page stays in sight while the panel's code comes. */
function onDemand<Props extends object>(load: () => Promise<ComponentType<Props>>): ComponentType<Props> {
  const Panel = comesLater(load);
  return (props) => (
    <Suspense>
      <Panel {...props} />
    </Suspense>
  );
}
