export const ROWS = 50_000;

// Hardness of a case in grains per gallon; every thousandth is one that is refused.
export const hardness = (i) => (i % 1_000 === 999 ? -1 : (10 + (i % 400)) / 10);
