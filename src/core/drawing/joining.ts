import type { Ends, Patch } from "#core/patching/patch.ts";
import { choicesOf } from "#core/patching/patches.ts";
import { made } from "#core/patching/sockets-of.ts";

/** What joins two ends from an output on: what takes both sockets of every pair, else the plainest; nothing plugged where nothing does. */
export function joinOf(ends: Ends, socket: string): Patch {
  const leads = choicesOf(ends, socket, "leads");
  const all = leads.length > 0 ? leads : choicesOf(ends, socket, "adapters");
  return all.find((patch) => takesPairs(ends, patch)) ?? all[0] ?? { wires: [], plugged: [] };
}

/** Whether no socket is used without its partner: what is marked left and right is one feed. */
const takesPairs = ({ from, into }: Ends, { plugged }: Patch): boolean =>
  [from, into].every((part) => {
    const used = plugged.filter((end) => end.into === part.id).map(({ socket }) => socket);
    return made(part).sockets.every(
      ({ name, partner }) =>
        partner === undefined || !used.includes(name) || used.includes(partner),
    );
  });
