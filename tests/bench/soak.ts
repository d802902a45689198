/** `npm run soak`: the long walks; `npm run soak -- sound [minutes] [signal]`: continuous playing at a device. */
const walks = () => import("./soak-walks.ts");
const sound = () => import("./soak-sound.ts");

void (process.argv[2] === "sound" ? sound() : walks());
