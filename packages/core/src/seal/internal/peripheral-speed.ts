/** Speed of the shaft under the lip [m/s].  v = π·d·n / 60 000  @internal */
export function peripheralSpeedMps(shaftMm: number, speedRpm: number): number {
  return (Math.PI * shaftMm * speedRpm) / 60_000;
}
