/**
 * `npm run soak`: the long walks; `npm run soak -- sound [minutes] [signal]`: continuous playing at a device; `npm run soak -- flex
 * [minutes]`: a lead watched for an hour of synthetic time, and a quiet hour; `npm run soak -- recording [gigabytes]`: a long recording
 * measured.
 */
const walks = () => import("./soak-walks.ts");
const sound = () => import("./soak-sound.ts");
const flex = () => import("./soak-flex.ts").then((soak) => soak.soakFlexHours(process.argv[3]));
const recording = () => import("./soak-recording.ts");

const forms: Readonly<Record<string, () => Promise<unknown>>> = { sound, flex, recording };
void (forms[process.argv[2] ?? ""] ?? walks)();
