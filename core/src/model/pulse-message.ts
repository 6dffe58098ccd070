/** What a heart-rate sensor sends once a second or so. */
export interface PulseMessage {
  /** Beats a minute. */
  readonly bpm: number;
  /** Whether the sensor touches the skin; undefined when it cannot tell. */
  readonly contact?: boolean;
  /** Energy spent since it was switched on. */
  readonly energyKj?: number;
  /** Seconds between beats, oldest first. */
  readonly gapsS: readonly number[];
}

export type PulseFault = "pulse/too-short" | "pulse/too-long" | "pulse/left-over";

/** The longest value that an attribute may have. */
const MOST_BYTES = 512;

/**
 * Reads a message of the standard heart-rate service of sensors (characteristic 0x2A37).
 *
 * Byte 0 are flags: bit 0 a rate of two bytes; bits 1 and 2 contact: 2 not on the skin, 3 on it; bit 3 energy in kJ, two
 * bytes; bit 4 gaps between beats, two bytes each, in 1/1024 s. The low byte comes first.
 *
 * @returns the message, or what is wrong with its length
 * @source gattHeartRate
 * @example readPulseMessage([0x16, 0x48, 0x00, 0x04]) //=> { bpm: 72, contact: true, gapsS: [1] }
 */
export function readPulseMessage(bytes: readonly number[]): PulseMessage | PulseFault {
  if (bytes.length > MOST_BYTES) return "pulse/too-long";
  const flags = bytes[0] ?? 0;
  const [wide, energy, gaps] = [1, 8, 16].map((bit) => (flags & bit) !== 0);
  const head = 1 + (wide ? 2 : 1) + (energy ? 2 : 0);
  if (bytes.length < head) return "pulse/too-short";
  if (gaps ? (bytes.length - head) % 2 === 1 : bytes.length > head) return "pulse/left-over";
  const pair = (at: number) => bytes[at]! + 256 * bytes[at + 1]!;
  const contact = (flags >> 1) & 3;
  return {
    bpm: wide ? pair(1) : bytes[1]!,
    ...(contact < 2 ? {} : { contact: contact === 3 }),
    ...(energy ? { energyKj: pair(head - 2) } : {}),
    gapsS: Array.from({ length: (bytes.length - head) / 2 }, (_, at) => pair(head + 2 * at) / 1024),
  };
}
