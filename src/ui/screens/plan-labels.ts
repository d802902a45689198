import { shown } from "#ui/parts/content.ts";
import { said } from "#ui/parts/ear-text.ts";
import type { Scene, SeenOutput, SeenPlug } from "#ui/parts/scene.ts";
import type { Words } from "#ui/words/use-words.ts";

/** A socket with what is on its contacts, for whoever does not see the lanes: 'send, tip: left and right, ring: nothing'. */
export function outputLabel(words: Words, { socket, carried }: SeenOutput): string {
  const kind = socket.kind === "XLR" || socket.kind === "RCA" ? socket.kind : "TRS";
  const { contact } = words.language.patching;
  const contacts = carried.map(
    (one) => `${contact(one.contact, kind)}: ${said(words, shown(one.content))}`,
  );
  return [words.marks.socket(socket.name), ...contacts].join(", ");
}

/** A plug by its marks, where the lead has several alike. */
export function plugLabel(
  words: Words,
  { nearPlugs, farPlugs }: Scene,
  { end, plug }: SeenPlug,
): string {
  const several = [...nearPlugs, ...farPlugs].filter((one) => one.end.part === end.part).length > 2;
  const { language, marks, plan } = words;
  const kind = language.patching.plugs[plug.kind];
  const socket = marks.socket(end.socket);
  return several
    ? plan.picture.markedPlug(kind, marks.plug(end.plug), socket)
    : plan.picture.plug(kind, socket);
}
