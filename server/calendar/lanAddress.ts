import { BlockList } from 'node:net';
import { networkInterfaces } from 'node:os';
import { CannotListen } from '#server/CannotListen.ts';

/**
 * The address of this machine at which telephones in the local network reach it: the only one where `asked` is `lan`, or the one that is
 * asked for. Throws `CannotListen` where that is none of a local network: nothing is ever opened to the world.
 */
export function lanAddress(asked: string, addresses = addressesHere()): string {
  const local = addresses.filter((address) => localNetworks.check(address));
  const inNetwork = local.filter((address) => !thisMachine.check(address));
  const [only, ...others] = inNetwork;
  if (asked === 'lan') {
    if (only === undefined)
      throw new CannotListen(
        '--calendar-on lan: this machine has no address in a local network now; join one first.',
      );
    if (others.length === 0) return only;
    throw new CannotListen(
      `--calendar-on lan: this machine is in several local networks; name the one of the telephones: ${inNetwork.join(', ')}.`,
    );
  }
  if (local.includes(asked)) return asked;
  throw new CannotListen(
    `--calendar-on is "${asked}"; it must be lan or an address of this machine in a local network: ${inNetwork.join(', ') || 'it has none now'}.`,
  );
}

function addressesHere(): string[] {
  return Object.values(networkInterfaces())
    .flatMap((known) => known ?? [])
    .flatMap(({ family, address }) => (family === 'IPv4' ? address : []));
}

/** RFC 1918 (private), RFC 3927 (where nobody gives addresses out), RFC 1122 (this machine alone). */
const localNetworks = new BlockList();
localNetworks.addSubnet('10.0.0.0', 8);
localNetworks.addSubnet('172.16.0.0', 12);
localNetworks.addSubnet('192.168.0.0', 16);
localNetworks.addSubnet('169.254.0.0', 16);
localNetworks.addSubnet('127.0.0.0', 8);
const thisMachine = new BlockList();
thisMachine.addSubnet('127.0.0.0', 8);
