import { computePaths } from '#contract/compute/openApiPaths.ts';
import { operations } from '#reckon/operations.ts';
import { errorSchema, refusal } from './answers.ts';
import { calendarPaths } from './calendarPaths.ts';
import { clubPaths } from './clubPaths.ts';
import { comparisonPaths } from './comparisonPaths.ts';
import { copyPaths } from './copyPaths.ts';
import { dayPaths } from './dayPaths.ts';
import { estimatePaths } from './estimatePaths.ts';
import { evidencePaths } from './evidencePaths.ts';
import { gearAheadPaths } from './gearAheadPaths.ts';
import { nearDayPaths } from './nearDayPaths.ts';
import { newSeasonPaths } from './newSeasonPaths.ts';
import { projectionPaths } from './projectionPaths.ts';
import { recordPaths } from './recordPaths.ts';
import { seasonPaths } from './seasonPaths.ts';
import { setPaths } from './setPaths.ts';

/** The server's interface as an OpenAPI 3.1 document, made from the shapes that the routes themselves read. */
export function openApiDocument() {
  return {
    openapi: '3.1.0',
    info: {
      title: 'Rackwright',
      version: '1',
      description:
        'What one club keeps, and the calculations of its training days. All quantities SI, the unit in the field name. A field of a query that an address does not take is refused with 400. The answer to a GET holds all changes up to the number in its header Club-Change, and perhaps later ones; it bears an ETag, and with If-None-Match it is not sent again where it is the same (304).',
    },
    paths: {
      ...writtenWhereOpen({
        ...recordPaths(),
        ...newSeasonPaths(),
        ...clubPaths(),
        ...copyPaths(),
        ...dayPaths(),
        ...calendarPaths(),
        ...seasonPaths(),
        ...nearDayPaths(),
        ...setPaths(),
        ...estimatePaths(),
        ...evidencePaths(),
        ...comparisonPaths(),
        ...gearAheadPaths(),
        ...projectionPaths(),
      }),
      ...computePaths(operations),
    },
    components: { schemas: { Error: errorSchema } },
  };
}

/** Whatever changes the club is refused where its file cannot be written. */
function writtenWhereOpen(paths: Record<string, object>) {
  const closed = { 503: refusal("The club's file cannot be written now; nothing was changed") };
  const item = (methods: object) =>
    Object.entries(methods).map(([method, operation]) => {
      const isChange = method !== 'get' && method !== 'parameters';
      return [
        method,
        isChange ? { ...operation, responses: { ...operation.responses, ...closed } } : operation,
      ];
    });
  return Object.fromEntries(
    Object.entries(paths).map(([path, methods]) => [path, Object.fromEntries(item(methods))]),
  );
}
