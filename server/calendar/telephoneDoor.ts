import { once } from 'node:events';
import type { Server } from 'node:http';
import { createAdaptorServer } from '@hono/node-server';
import type { CalendarAddresses } from '#contract/calendarFile/calendarAddresses.ts';
import { CannotListen } from '#server/CannotListen.ts';
import { answerUnreadable } from '#server/guard/answerUnreadable.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { calendarKey } from './calendarKey.ts';
import type { ClubCalendar } from './clubCalendar.ts';
import { calendarFile, telephoneApp } from './telephoneApp.ts';

/** The door to the local network that a coach asked for. */
export interface TelephoneDoor {
  /** http://192.168.1.5:4700 */
  at: string;
  /** The address of the club's calendar, and of each lifter's. */
  addresses(): Promise<CalendarAddresses['addresses']>;
  /** Makes other addresses; those given out before lead to nothing from then on. */
  renew(): Promise<void>;
  close(): Promise<void>;
}

/** Listens at an address of the local network. Always at the same port: telephones come back to where they were told. */
export async function telephoneDoor(
  store: ClubStore,
  calendar: ClubCalendar,
  { address, port }: { address: string; port: number },
): Promise<TelephoneDoor> {
  const key = await calendarKey(store.path);
  const server = createAdaptorServer({ fetch: telephoneApp(store, calendar, key).fetch }) as Server;
  answerUnreadable(server);
  server.maxConnections = mostConnections;
  const at = `http://${address}:${await listen(server, address, port)}`;
  return {
    at,
    async addresses() {
      const lifters = await store.list('lifter');
      return [null, ...lifters.map(({ id }) => id)].map((lifterId) => ({
        lifterId,
        url: `${at}/${key.partOf(lifterId)}/${calendarFile}`,
      }));
    },
    renew: key.renew,
    async close() {
      const closed = once(server, 'close');
      server.close();
      server.closeAllConnections();
      await closed;
    },
  };
}

/** A club's telephones, several times over; whoever opens more keeps nobody at the gym from working. */
const mostConnections = 100;

async function listen(server: Server, address: string, port: number): Promise<number> {
  try {
    server.listen(port, address);
    await once(server, 'listening');
    return (server.address() as { port: number }).port;
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : null;
    if (code === 'EADDRINUSE')
      throw new CannotListen(
        `Port ${port} at ${address} is in use; end what uses it, or choose another one with --calendar-port, which every telephone must then be told.`,
      );
    if (code === 'EACCES')
      throw new CannotListen(
        `Port ${port} may not be used by this user; choose one above 1023 with --calendar-port.`,
      );
    throw error;
  }
}
