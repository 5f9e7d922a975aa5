export const ROWS = 50_000;

// Address of a case, a cell of the table that may have line breaks.
export const address = (i) => (i % 3 === 0 ? `${i} Oak St\r\n"Rear"\n` : `${i} Elm St`);

// Hardness of a case in grains per gallon; every thousandth is one that is refused.
export const hardness = (i) => (i % 1_000 === 999 ? -1 : (10 + (i % 400)) / 10);
