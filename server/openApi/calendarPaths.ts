import { z } from 'zod';
import { calendarAddresses } from '#contract/calendarFile/calendarAddresses.ts';
import { answer, refusal } from './answers.ts';

/** The calendar of the training days. */
export function calendarPaths() {
  const addresses = z.toJSONSchema(calendarAddresses, { io: 'output' });
  return {
    '/api/calendar.ics': {
      get: {
        operationId: 'calendar.write',
        summary:
          'The training days from the year before to the one after next as an iCalendar file (RFC 5545); removed ones as cancelled',
        tags: ['calendar'],
        parameters: [
          {
            name: 'lifterId',
            in: 'query',
            schema: { type: 'string' },
            description: 'Only the days on which this lifter has a place',
          },
        ],
        responses: {
          200: answer('The file', { type: 'string' }, 'text/calendar'),
          404: refusal('There is no such lifter'),
        },
      },
    },
    '/api/calendar': {
      get: {
        operationId: 'calendar.addresses',
        summary: 'Where telephones on the local network may read the calendar',
        tags: ['calendar'],
        responses: { 200: answer('The addresses, none where the program was not started for it', addresses) },
      },
    },
    '/api/calendar/renew': {
      post: {
        operationId: 'calendar.renew',
        summary: 'Make other addresses; those given out before lead to nothing from then on',
        tags: ['calendar'],
        responses: {
          200: answer('The new addresses', addresses),
          409: refusal('The program was not started for it'),
        },
      },
    },
  };
}
