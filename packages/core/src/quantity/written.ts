/** What somebody typed, kept beside the value. */
export interface Written {
  readonly asWritten: string;
  /** Unit as understood. */
  readonly unit: string;
}
