import { catalogue, type PartKind } from "#core/parts/catalogue.ts";
import { glyphOf } from "./kind-glyphs.ts";
import { SocketPicture } from "./socket-picture.tsx";

/** What a kind of thing looks like; along its foot the sockets that leave it. */
export function KindPicture({ kind }: { readonly kind: PartKind }) {
  const { make } = catalogue[kind];
  const sockets = make()
    .sockets.filter(({ side }) => side === "out")
    .slice(0, 6);
  return (
    <svg class="kind-picture" viewBox="0 0 96 64" aria-hidden="true">
      <path class="glyph" d={glyphOf(kind)} />
      {sockets.map(({ name, kind: socket, size }, index) => (
        <SocketPicture
          key={name}
          kind={socket}
          size={size}
          at={[48 + (index - (sockets.length - 1) / 2) * 15, 55]}
          scale={0.42}
        />
      ))}
    </svg>
  );
}
