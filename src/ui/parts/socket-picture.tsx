import type { JackSize, SocketKind } from "#core/parts/plugs.ts";

interface Props {
  readonly kind: SocketKind;
  readonly size?: JackSize | undefined;
  readonly at: readonly [x: number, y: number];
  readonly scale?: number;
  readonly used?: boolean;
}

/** A socket as its box shows it: a nut and a hole, three holes, a ring, or waves. */
export function SocketPicture({ kind, size, at, scale = 1, used = false }: Props) {
  const [x, y] = at;
  return (
    <g class={used ? "socket used" : "socket"} transform={`translate(${x} ${y}) scale(${scale})`}>
      <Face kind={kind} small={size === "3.5 mm"} />
    </g>
  );
}

function Face({ kind, small }: { readonly kind: SocketKind; readonly small: boolean }) {
  if (kind === "XLR")
    return (
      <>
        <circle class="nut" r="17" />
        <path class="holes" d="M-6 -6h.1M6 -6h.1M0 7h.1" />
      </>
    );
  if (kind === "link")
    return (
      <>
        <circle class="nut" r="15" />
        <path class="waves" d="M-5 -6Q2 0 -5 6M1 -9Q12 0 1 9" />
      </>
    );
  if (kind === "RCA")
    return (
      <>
        <circle class="nut" r="13" />
        <circle class="nut" r="8" />
        <circle class="hole" r="3" />
      </>
    );
  return (
    <>
      <circle class="nut" r={small ? 11 : 16} />
      <circle class="hole" r={small ? 4.5 : 8} />
    </>
  );
}
