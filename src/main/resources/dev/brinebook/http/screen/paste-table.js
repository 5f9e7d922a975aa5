// SPDX-License-Identifier: Apache-2.0
/**
 * The table of a water report as people paste it: a line for each result, cells parted by tabs, semicolons, commas or several blanks.
 * What is not understood is given back as it stands.
 */

/** Names of parameters as laboratories print them in every language: symbols and words that no text of the page has. */
const NAMES = { hardness: ['total hardness', 'gh', 'th', 'gesamthärte', 'dureté totale', 'dureza total', 'hardness total', 'titre hydrotimétrique'], calcium: ['ca', 'ca2+', 'ca++', 'kalzium'], magnesium: ['mg', 'mg2+', 'mg++'],
  sodium: ['na', 'na+'], potassium: ['k', 'k+'], ammonium: ['nh4', 'nh4+', 'nh4-n', 'ammonia'], strontium: ['sr'], barium: ['ba'], alkalinity: ['total alkalinity', 'm-alkalinity', 'ks4.3', 'ks 4,3', 'säurekapazität bis ph 4,3', 'tac'],
  bicarbonate: ['hco3', 'hco3-', 'hydrogen carbonate'], carbonate: ['co3', 'co32-'], chloride: ['cl', 'cl-'], sulfate: ['so4', 'so42-', 'so4--', 'so4-s', 'sulphate'], nitrate: ['no3', 'no3-', 'no3-n', 'nitrate-n', 'nitrate nitrogen'],
  nitrite: ['no2', 'no2-', 'no2-n', 'nitrite-n'], fluoride: ['f', 'f-'], phosphate: ['po4', 'po43-', 'po4-p'], bromide: ['br', 'br-'], silica: ['sio2', 'silicate'], iron: ['fe', 'total iron', 'iron total', 'eisen gesamt', 'fer total', 'hierro total'],
  ironDissolved: ['iron dissolved', 'dissolved iron', 'eisen gelöst', 'fer dissous'], manganese: ['mn', 'total manganese'], manganeseDissolved: ['dissolved manganese', 'mangan gelöst'], ph: ['ph', 'ph value', 'ph-value'],
  conductivity: ['ec', 'specific conductance', 'electrical conductivity', 'elektrische leitfähigkeit', 'conductivité électrique', 'conductance'], dissolvedSolids: ['tds', 'total dissolved solids', 'residue', 'abdampfrückstand'], carbonDioxide: ['co2'],
  oxygen: ['o2', 'dissolved oxygen'], freeChlorine: ['cl2', 'chlorine', 'free chlorine', 'chlorine, free'], hydrogenSulfide: ['h2s', 'sulfide'], organicCarbon: ['toc', 'total organic carbon'], lead: ['pb'], copper: ['cu'], arsenic: ['as'], uranium: ['u'],
  aluminium: ['al', 'aluminum'], zinc: ['zn'], silver: ['ag'], coliform: ['total coliform', 'total coliforms', 'coliforms', 'coliforme keime', 'coliformes totaux'], eColi: ['e. coli', 'e.coli', 'escherichia coli'], colour: ['color'], turbidity: ['turb'], temperature: ['temp'] };

const UNITS = { 'mg/l': 'mg/L', 'ug/l': 'ug/L', ppm: 'ppm', ppb: 'ppb', 'mmol/l': 'mmol/L', 'mol/m3': 'mmol/L', 'meq/l': 'meq/L', 'mval/l': 'meq/L', 'me/l': 'meq/L', gpg: 'gpg', 'gr/gal': 'gpg', 'grains/gal': 'gpg', '°dh': 'dH', dh: 'dH', '°d': 'dH',
  '°fh': 'fH', '°f.h.': 'fH', fh: 'fH', 'us/cm': 'uS/cm', 'umho/cm': 'umho/cm', 'umhos/cm': 'umho/cm', 'ms/cm': 'mS/cm', 'ds/m': 'dS/m', 'ms/m': 'mS/m', ntu: 'NTU', fnu: 'FNU', te: 'NTU', ptco: 'PtCo', 'pt-co': 'PtCo', tcu: 'PtCo', cu: 'PtCo',
  '/100ml': '/100mL', '1/100ml': '/100mL', 'mpn/100ml': '/100mL', 'cfu/100ml': '/100mL', 'kbe/100ml': '/100mL', 'ufc/100ml': '/100mL', '°c': 'C', '°f': 'F', 'ph units': 'pH', 'std units': 'pH', su: 'pH', 's.u.': 'pH' };

const FORMS = [[/(\bas n\b|\bals n\b|-n\b|\(n\)|nitrogen)/, 'asNitrogen'], [/(\b(as|als|en) s\b|-s\b)/, 'asSulfur'], [/(\b(as|als|en) p\b|-p\b)/, 'asPhosphorus'], [/caco3/, 'asCalciumCarbonate'],
  [/\b(as|als|en) hco3/, 'asBicarbonate'], [/(ks ?4[.,]3|säurekapazität|acid capacity)/, 'acidCapacity'], [/(20 ?°? ?c)/, 'at20Celsius']];
const AS_CARBONATE = ['itself', 'asCalciumCarbonate'];
/** Forms in which a parameter is printed, where there is more than one. The table of the service: report-forms.csv. */
export const FORMS_OF = { hardness: ['asCalciumCarbonate', 'asCalciumOxide'], calcium: [...AS_CARBONATE, 'asCalciumOxide'], magnesium: AS_CARBONATE, sodium: AS_CARBONATE, potassium: AS_CARBONATE,
  ammonium: ['itself', 'asNitrogen'], alkalinity: ['asCalciumCarbonate', 'asBicarbonate', 'acidCapacity'], alkalinityToPh8: ['asCalciumCarbonate', 'acidCapacity'], bicarbonate: AS_CARBONATE,
  carbonate: AS_CARBONATE, hydroxide: AS_CARBONATE, chloride: ['itself', 'asSodiumChloride', 'asCalciumCarbonate'], sulfate: ['itself', 'asSulfur', 'asCalciumCarbonate'],
  nitrate: ['itself', 'asNitrogen', 'asCalciumCarbonate'], nitrite: ['itself', 'asNitrogen'], phosphate: ['itself', 'asPhosphorus'], silica: ['itself', 'asSilicon'], conductivity: ['itself', 'at20Celsius'],
  dissolvedSolids: ['itself', 'meterScale500', 'meterScale640', 'meterScale700'], carbonDioxide: AS_CARBONATE, hydrogenSulfide: ['itself', 'asSulfur'] };
const BELOW = /^(nd|n\.?d\.?|n\/d|not detected|none detected|nicht nachweisbar|n\. ?n\.|non détecté|no detectado|<\s*(bg|lod|ld|mdl|rl|pql))$/;
const ABSENT = /^(absent|absence|negative|negativ|abwesend|ausente|nicht nachgewiesen|absent\/100 ?ml)$/;
const PRESENT = /^(present|positive|positiv|anwesend|presente|présent|nachgewiesen)$/;
const NUMBER = /^([<>≤≥]|less than|kleiner als|kleiner)?\s*(-?\d[\d.,' ]*)\s*([^\d\s].*)?$/;
const VALUE_HEADS = /^(result|results|value|messwert|ergebnis|wert|valeur|résultat|resultado|valor|measured)\b/;

const plain = text => text.normalize('NFKC').toLowerCase().replace(/[₂²]/g, '2').replace(/[₃³]/g, '3').replace(/[₄⁴]/g, '4').replace(/[µμ]/g, 'u').replace(/\s+/g, ' ').trim();

/** The unit that a text is, or begins with, and nothing where it is none. */
export function unitOf(text) {
  const name = plain(text).replace(/[()[\]]/g, '').replace(/\b(as|als|en) .*$/, '').replace(/caco3/, '').trim();
  return UNITS[name] ?? UNITS[name.replaceAll(' ', '')];
}

const formOf = (texts, parameter) => FORMS.find(([pattern, form]) => FORMS_OF[parameter]?.includes(form) && texts.some(each => pattern.test(plain(each))))?.[1];

/** Every name with its parameter: those of the page's language first. */
export const namesOf = words => new Map([...Object.entries(NAMES).flatMap(([parameter, names]) => [parameter, ...names].map(each => [plain(each), parameter])), ...words.map(([parameter, word]) => [plain(word), parameter])]);

function parameterOf(cell, names) {
  const whole = plain(cell);
  const inside = [...whole.matchAll(/\(([^)]*)\)/g)].map(match => match[1]);
  const outside = whole.replace(/\([^)]*\)/g, '').replace(/[,:*]+$/, '').trim();
  const short = outside.replace(/[, ]+((as|als|en) \S+|\S+\/\S+|°\S+)$/, '').replace(/[, ]+(as|als|en) \S+$/, '').trim();
  const first = short.replace(/(,| (bei|at|à|a) ).*$/, '').trim();
  return [whole, outside, short, first, ...inside].map(each => names.get(each)).find(Boolean);
}

/** The cells of a line, by what parts most of the text. */
function cellsOf(line, sign) {
  if (sign instanceof RegExp) { return line.split(sign).map(each => each.trim()); }
  const cells = [];
  let cell = '';
  let quoted = false;
  for (const letter of line) {
    if (letter === '"') { quoted = !quoted; } else if (letter === sign && !quoted) { cells.push(cell.trim()); cell = ''; } else { cell += letter; }
  }
  return [...cells, cell.trim()];
}

function signOf(text) {
  if (text.includes('\t')) { return '\t'; }
  if (text.includes(';')) { return ';'; }
  if (/\S {2,}\S/.test(text)) { return / {2,}/; }
  return /^[^,\n]+,[^,\n]*(,|$)/m.test(text) && !/\d,\d/.test(text.replace(/,"[^"]*"/g, '')) || /^[^,\n]+,\s*[^,\n]+,[^\n]*$/m.test(text) ? ',' : null;
}

/** Whether a comma stands before decimals in a text, else in the language. */
function decimalOf(text, language) {
  if (/\d\.\d{1,2}(?!\d)/.test(text)) { return '.'; }
  if (/(^|[^\d.])(\d+,\d{1,2}|0,\d+)(?!\d)/.test(text)) { return ','; }
  return new Intl.NumberFormat(language).formatToParts(1.5).find(each => each.type === 'decimal').value;
}

function numberOf(digits, decimal) {
  const value = Number(digits.replace(/[' ]/g, '').replaceAll(decimal === ',' ? '.' : ',', '').replace(',', '.'));
  return Number.isFinite(value) ? value : undefined;
}

/** What a cell says of a value: `{ value, qualifier, unit }`, null where it says none. */
function readingOf(cell, decimal) {
  const text = plain(cell);
  if (BELOW.test(text)) { return { qualifier: 'notDetected' }; }
  if (ABSENT.test(text)) { return { qualifier: 'absent' }; }
  if (PRESENT.test(text)) { return { qualifier: 'present' }; }
  const match = NUMBER.exec(text);
  const value = match && numberOf(match[2].trim(), decimal);
  if (!match || value === undefined) { return null; }
  const unit = match[3] && unitOf(match[3]);
  if (match[3] && !unit && !/^[*!#a-z]{0,2}$/.test(match[3])) { return null; }
  const qualifier = !match[1] ? undefined : /[>≥]/.test(match[1]) ? 'above' : 'below';
  return { value, ...(qualifier ? { qualifier } : {}), ...(unit ? { unit } : {}) };
}

/** Columns of the service's own tables of results. */
const OWN = ['parameter', 'value', 'unit', 'form', 'qualifier', 'method', 'uncertainty', 'resolution', 'tap', 'sampledOn'];
const NUMBERS = ['value', 'uncertainty', 'resolution'];

/** A row of such a table, whose first line names the columns. */
const rowOf = (heads, cells) => Object.fromEntries(heads.map((name, index) => [name, cells[index] ?? '']).filter(([, cell]) => cell !== '')
  .map(([name, cell]) => [name, NUMBERS.includes(name) ? Number(cell) : cell]));

/**
 * The results of a pasted text, `{ results, left }`: rows of a report, and the lines that were not understood.
 *
 * @param words the names of parameters in the language of the page, `[parameter, word]`
 */
export function resultsOf(text, words, language) {
  const names = namesOf(words);
  const sign = signOf(text);
  const decimal = decimalOf(text, language);
  const lines = text.split(/\r?\n/).map(each => each.trim()).filter(Boolean);
  const heads = sign ? cellsOf(lines[0] ?? '', sign) : [];
  if (heads.includes('parameter') && heads.every(each => OWN.includes(each))) {
    return { results: lines.slice(1).map(line => rowOf(heads, cellsOf(line, sign))).filter(row => Object.keys(NAMES).includes(row.parameter)), left: [] };
  }
  let column = -1;
  const results = [];
  const left = [];
  lines.forEach((line, index) => {
    const spaced = /^(.+?)[\s:=]+([<>≤≥]?\s*\d[\d.,]*|nd|n\.d\.|absent|present)\s*(\S.*)?$/i.exec(line);
    const cells = sign ? cellsOf(line, sign) : spaced ? spaced.slice(1).map(each => each ?? '') : [line];
    if (index === 0 && !cells.some(each => readingOf(each, decimal))) {
      column = cells.findIndex(each => VALUE_HEADS.test(plain(each)));
      if (cells.length > 1) { return; }
    }
    const at = cells.findIndex(each => parameterOf(each, names));
    const parameter = at < 0 ? undefined : parameterOf(cells[at], names);
    const after = cells.slice(at + 1);
    const found = (column > at && readingOf(cells[column], decimal)) || after.map(each => readingOf(each, decimal)).find(Boolean);
    if (!parameter || !found) { left.push(line); return; }
    const unit = found.unit ?? after.map(unitOf).find(Boolean) ?? [...cells[at].matchAll(/[([]([^)\]]*)[)\]]|[, ](\S+\/\S+|°\S+)$/g)].map(match => unitOf(match[1] ?? match[2])).find(Boolean);
    const form = formOf(cells, parameter);
    results.push({ parameter, ...found, ...(unit ? { unit } : {}), ...(form ? { form } : {}) });
  });
  return { results, left };
}
