/** One line of the materials table. Every quantity says what it rests on. */
export interface Material {
  readonly id: string;
  readonly item: string;
  /** In `unit`; lengths in mm and areas in mm² where unit is "mm" or "mm2". */
  readonly quantity: number;
  readonly unit: "mm" | "mm2" | "kg" | "piece";
  /** Unit of the author's own lines, such as "pack"; null where `unit` says it all. */
  readonly unitWord: string | null;
  readonly have: number;
  readonly buy: number;
  /** One sentence: how the figure was worked out, lengths in the project's unit. */
  readonly basis: string;
  readonly price: number | null;
  /** The whole sum for `copies`, where quantity is already the total. */
  readonly group: "foam" | "cloth" | "closing" | "thread" | "sheet" | "board" | "other";
}
