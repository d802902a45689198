/**
 * `npm run soak`: the long walks; `npm run soak -- sound [minutes] [signal]`: continuous playing at a device; `npm run soak -- recording
 * [gigabytes]`: a long recording measured.
 */
const walks = () => import("./soak-walks.ts");
const sound = () => import("./soak-sound.ts");
const recording = () => import("./soak-recording.ts");

const kinds: Readonly<Record<string, () => Promise<unknown>>> = { sound, recording };
void (kinds[process.argv[2] ?? ""] ?? walks)();
