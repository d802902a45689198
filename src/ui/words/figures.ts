import type { Decibels, DecibelsFullScale, Seconds } from "#core/units/units.ts";

/** Numbers as a language writes them: by what stands before its tenths, its word for a level that is none, and its name for dates. */
export function figuresBy(point: "." | ",", silent: string, locale: string) {
  const written = (text: string): string => text.replace("-", "−").replace(".", point);
  /** With so many places; what rounds to nought has no sign. */
  const fixed = (value: number, places: number): string =>
    written(value.toFixed(places).replace(/^-(?=[0.]*$)/, ""));
  const when = (form: Intl.DateTimeFormatOptions) => (at: number) =>
    new Intl.DateTimeFormat(locale, form).format(at);
  return {
    /** The day of a moment, in full; its time; and both, briefly. Milliseconds since 1970. */
    date: when({ dateStyle: "full" }),
    time: when({ timeStyle: "short" }),
    dayAndTime: when({
      weekday: "short",
      day: "numeric",
      month: "long",
      year: "numeric",
      hour: "2-digit",
      minute: "2-digit",
    }),
    fixed,
    /** No more than four figures, as it may be typed. */
    plain: (value: number): string => String(Number(value.toPrecision(4))).replace(".", point),
    /** A level against full scale, to whole decibels; nothing at all is under −120. */
    dbfs: (level: DecibelsFullScale): string => (level < -120 ? silent : `${fixed(level, 0)} dBFS`),
    decibels: (value: Decibels): string => `${fixed(value, 1)} dB`,
    /** With its sign, whichever that is: '+5.9 dB', '−6.1 dB'. */
    signedDecibels: (value: Decibels): string =>
      `${fixed(value, 1).startsWith("−") ? "" : "+"}${fixed(value, 1)} dB`,
    /** A short time as one would say it: milliseconds, seconds, minutes. */
    lasting: (seconds: Seconds): string => {
      if (seconds < 0.0995) return `${Math.max(1, Math.round(seconds * 1000))} ms`;
      if (seconds < 0.995) return `${10 * Math.round(seconds * 100)} ms`;
      if (seconds < 59.95) return `${fixed(seconds, seconds < 9.95 ? 1 : 0)} s`;
      const whole = Math.round(seconds);
      return `${Math.floor(whole / 60)} min ${whole % 60} s`;
    },
    /** A moment of a run, as a clock has it: minutes and seconds. */
    moment: (seconds: Seconds): string =>
      `${Math.floor(seconds / 60)}:${String(Math.floor(seconds % 60)).padStart(2, "0")}`,
  };
}
