/**
 * `npm run soak`: the long walks; `npm run soak -- sound [minutes] [signal]`: continuous playing at a device; `npm run soak -- measuring
 * [seeds]`: made captures against the bounds.
 */
const walks = () => import("./soak-walks.ts");
const sound = () => import("./soak-sound.ts");

const measuring = async () => {
  const { soakMeasuring } = await import("./soak-measuring.ts");
  if (!soakMeasuring(Number(process.argv[3] ?? 10))) process.exitCode = 1;
};

const others: Readonly<Record<string, () => Promise<unknown>>> = { sound, measuring };
void (others[process.argv[2] ?? ""] ?? walks)();
