/** How a step is done by hand: what is measured, in centimetres or pieces, from least to most. */
export interface PracticeMeasure {
  readonly step: string;
  readonly measure: string;
  readonly from: number;
  readonly to: number;
  readonly unit: "cm" | "pieces";
  readonly source: string;
}
