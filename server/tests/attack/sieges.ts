import { attack } from './attack.ts';
import { damage } from './damage.ts';
import { rivals } from './rivals.ts';
import { steps } from './steps.ts';
import type { Draw, Tally } from './tally.ts';
import { undoChain } from './undoChain.ts';

/** Each way of attacking a club, on a file in a folder of its own, by its name. */
export const sieges: Record<string, (path: string, draw: Draw) => Promise<Tally>> = {
  'a crowd, killed and replaced': crowd,
  'rivals, and a file that is taken away': rivals,
  'cut short at a step or for want of room': steps,
  'damaged pages': damage,
  'undo over restarts': undoChain,
};

async function crowd(path: string, draw: Draw): Promise<Tally> {
  const killAfter = Array.from({ length: draw(1, 4) }, () => draw(1, 300));
  const survived = await attack({ path, clients: draw(20, 30), killAfter });
  const { acknowledged, replacements, snapshots, gaveUp, kills, lost, odd, failed, integrity } = survived;
  return {
    tried: {
      'acknowledged writes': acknowledged,
      'refused since the file was held for a minute': gaveUp,
      replacements,
      'of them by a snapshot': snapshots,
      kills,
    },
    survived: acknowledged - lost.length,
    faults: [...lost, ...odd, ...failed, ...(integrity === 'ok' ? [] : [integrity])],
  };
}
