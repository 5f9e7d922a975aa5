/** What stands in fields, in the other system of units. Factors from exact definitions of the inch, pound and US gallon. */
const LITRES_PER_GALLON = 3.785411784;
const LITRES_PER_CUBIC_FOOT = 28.316846592;
const GRAMS_PER_POUND = 453.59237;
const MILLIGRAMS_PER_GRAIN = 64.79891;

/** US unit, metric unit, metric units in a US one. */
const PAIRS = [
  ['gpg', 'mg/L', MILLIGRAMS_PER_GRAIN / LITRES_PER_GALLON],
  ['gal', 'L', LITRES_PER_GALLON],
  ['ft3', 'L', LITRES_PER_CUBIC_FOOT],
  ['in', 'm', 0.0254],
  ['lb', 'kg', GRAMS_PER_POUND / 1000],
  ['lb/ft3', 'g/L', GRAMS_PER_POUND / LITRES_PER_CUBIC_FOOT],
  ['gpm', 'L/min', LITRES_PER_GALLON],
];
/** Where two US units have the same metric one, the property tells which. */
const US_UNITS = { dailyUse: 'gal', resinVolume: 'ft3', hardness: 'gpg', per: 'gal' };

/** Concentrations of other things are milligrams per litre in both systems. */
const HARDNESS = ['hardness', 'hardnessUncertainty', 'hardnessSetting', 'endPoint'];

const rounded = value => Number(value.toPrecision(6));

/** A quantity in the other system, or as it is where it belongs to none. */
export function inUnits(quantity, units, property) {
  const { value, unit } = quantity;
  if (unit === 'mg/L' && !HARDNESS.includes(property)) { return quantity; }
  if (typeof value !== 'number') {
    const other = PAIRS.find(([us, metric]) => unit === (units === 'us' ? metric : us)
      && (units === 'metric' || !US_UNITS[property] || US_UNITS[property] === us));
    return other ? { ...quantity, unit: units === 'us' ? other[0] : other[1] } : quantity;
  }
  if (unit === 'F' && units === 'metric') { return { value: rounded((value - 32) / 1.8), unit: 'C' }; }
  if (unit === 'C' && units === 'us') { return { value: rounded(value * 1.8 + 32), unit: 'F' }; }
  for (const [us, metric, factor] of PAIRS) {
    if (units === 'metric' && unit === us) { return { value: rounded(value * factor), unit: metric }; }
    if (units === 'us' && unit === metric && (!US_UNITS[property] || US_UNITS[property] === us)) {
      return { value: rounded(value / factor), unit: us };
    }
  }
  return quantity;
}
