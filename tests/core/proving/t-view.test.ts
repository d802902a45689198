import { test } from "vitest";
import { provable } from "#core/proving/ends.ts";
import { leadId, leadRig } from "#core/proving/lead-rig.ts";
import { isOwn, meterBelief } from "#core/proving/meter-belief.ts";
import { isLoose, meterView } from "#core/proving/meter-view.ts";
import { proofOf } from "#core/proving/proof.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { derive } from "#core/session/derive.ts";
import { add, type Log } from "#core/session/log.ts";
import { seeded } from "#core/units/random.ts";

test("x", () => {
  for (const kind of provable) {
    const rig = leadRig({ kind, by: "meter" });
    const start = add([], { entry: "drawing", rig }, 0);
    const d0 = derive(start)!;
    const view = meterView(d0.model.rig);
    const all: (readonly RigFault[])[] = [
      [],
      ...d0.model.root.faults.filter((f) => isOwn(d0, f)).map((f) => [f]),
    ];
    const counts: number[] = [];
    const bad: string[] = [];
    const t = performance.now();
    for (const [i, planted] of all.entries()) {
      const random = seeded(i);
      let log: Log = start;
      let n = 0;
      for (; n < 40; n++) {
        const d = derive(log)!;
        const proof = proofOf(d, "meter");
        if (proof.next?.next !== "read") {
          const seen = view.all(planted) !== view.all([]);
          const right = seen
            ? proof.state === "wrong" && planted.every((f) => proof.alike.includes(f))
            : proof.state === "healthy";
          if (!right)
            bad.push(
              `${planted.map((f) => f.id)}: ${proof.state} ${proof.believed.map((f) => f.id)} ${n}`,
            );
          break;
        }
        const { asked, bend } = proof.next.reading;
        const shown = view.shown(planted, { from: asked.from, to: asked.to });
        const ohms = shown[Math.floor(random() * shown.length)]!;
        const loose = isLoose(shown);
        log = add(
          log,
          {
            entry: "finding",
            finding: {
              asked,
              ...(ohms < 1e6 ? { ohms } : {}),
              ...(bend ? { bent: loose ? "changes" : "steady" } : {}),
            },
          },
          0,
        );
      }
      counts.push(n);
    }
    const c = view.contacts.length;
    console.log(
      `${kind}: contacts ${c}, pairs ${view.pairs.length}, healthy ${counts[0]}, faults ${all.length - 1}, mean ${(counts.slice(1).reduce((a, b) => a + b, 0) / (counts.length - 1)).toFixed(2)}, most ${Math.max(...counts)}, wrong ${bad.length}, ${((performance.now() - t) / all.length).toFixed(0)} ms each\n   ${bad.join("\n   ")}`,
    );
  }
}, 600000);
