/** One line of the benchmark's table: a measured median and, where it helps to judge it, its ratio to something bare. */
export interface BenchRow {
  readonly name: string;
  readonly median: number;
  /** Unit of `median`, for example "ns/event" or "ms". */
  readonly unit: string;
  /** How many times as much as what `versus` names. */
  readonly ratio?: number;
  readonly versus?: string;
  readonly note?: string;
}
