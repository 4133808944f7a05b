import { onDemand } from '#web/parts/onDemand.tsx';

export const loadWeekPanel = () => import('./WeekPanel.tsx').then((m) => m.WeekPanel);

/** The week that opens below a season's picture; its code comes after the picture is in sight. */
export const WeekPanel = onDemand(loadWeekPanel);
