import { starts } from "#core/rig/starts.ts";
import { starts as words } from "#ui/words/english/starts.ts";
import { rigTroubles } from "#core/rig/troubles.ts";
import { derive } from "#core/session/derive.ts";
import { add } from "#core/session/log.ts";
import { build } from "#core/rig/rig.ts";
import { fits } from "#core/parts/plugs.ts";
import { earMatrix } from "#core/rig/ear-matrix.ts";
for (const s of starts) {
  const rig = s.make(words);
  const t = performance.now();
  const d = derive(add([], { entry: "drawing", rig }, 0))!;
  const st = rig.positions.map(({ id }) => d.standing(id).advice.advice);
  const b = build(rig);
  const bad = rig.plugged.filter((e) => !fits(b.part(e.part).plugs.find((p) => p.name === e.plug)!, b.part(e.into).sockets.find((p) => p.name === e.socket)!));
  console.log(s.key, rigTroubles(rig), bad, st.join(), Math.round(performance.now() - t), d.model.branches.length, JSON.stringify(earMatrix(b, rig.positions.at(-1)!.id, [])).slice(0,200));
}
