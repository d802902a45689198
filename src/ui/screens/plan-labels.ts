import { english } from "#core/words/english.ts";
import { shown } from "#ui/parts/content.ts";
import { said } from "#ui/parts/ear-text.ts";
import type { Scene, SeenOutput, SeenPlug } from "#ui/parts/scene.ts";

const { contact } = english.patching;

/** A socket with what is on its contacts, for whoever does not see the lanes: 'send, tip: left and right, ring: nothing'. */
export function outputLabel({ socket, carried }: SeenOutput): string {
  const kind = socket.kind === "XLR" || socket.kind === "RCA" ? socket.kind : "TRS";
  const contacts = carried.map(
    (one) => `${contact(one.contact, kind)}: ${said(shown(one.content))}`,
  );
  return [socket.name, ...contacts].join(", ");
}

/** A plug by its marks, where the lead has several alike. */
export function plugLabel({ nearPlugs, farPlugs }: Scene, { end, plug }: SeenPlug): string {
  const several = [...nearPlugs, ...farPlugs].filter((one) => one.end.part === end.part).length > 2;
  const which = several ? `, marked ${end.plug}` : "";
  return `${english.patching.plugs[plug.kind]}${which}, in ${end.socket}; take it in the hand`;
}
