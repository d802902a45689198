/**
 * `npm run soak`: the long walks; `npm run soak -- sound [minutes] [signal]`: continuous playing at a device; `npm run soak -- measuring
 * [seeds]`: made captures against the bounds; `npm run soak -- recording [gigabytes]`: a long recording measured; `npm run soak -- flex
 * [minutes]`: a lead watched for an hour of synthetic time, and a quiet hour.
 */
const walks = () => import("./soak-walks.ts");
const sound = () => import("./soak-sound.ts");
const recording = () => import("./soak-recording.ts");
const flex = () => import("./soak-flex.ts").then((soak) => soak.soakFlexHours(process.argv[3]));

const measuring = async () => {
  const { soakMeasuring } = await import("./soak-measuring.ts");
  if (!soakMeasuring(Number(process.argv[3] ?? 10))) process.exitCode = 1;
};

const forms: Readonly<Record<string, () => Promise<unknown>>> = {
  sound,
  measuring,
  recording,
  flex,
};
void (forms[process.argv[2] ?? ""] ?? walks)();
