/** Chance with which orders are to be met where nobody has said with which. */
export const USUAL_ASSURANCE = 0.8;
