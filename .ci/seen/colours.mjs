// Colours as they are computed by the browser: contrast by WCAG 2.2, and distance of the series for who sees no red or no green.
import assert from 'node:assert/strict';
import { ORIGIN, close, open } from './stage.mjs';

const TEXT = 4.5;
const MARKS = 3;
const DISTANCE = 25;
const WRITTEN = ['ink', 'soft', 'accent', 'warn', 'stop', 'good'];
const SERIES = ['now', 'then', 'third'];

const linear = part => part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
const luminance = rgb => rgb.map(linear).reduce((sum, part, i) => sum + part * [0.2126, 0.7152, 0.0722][i], 0);
function contrast(a, b) {
  const [low, high] = [luminance(a), luminance(b)].sort((one, other) => one - other);
  return (high + 0.05) / (low + 0.05);
}
const times = (matrix, vector) => matrix.map(row => row.reduce((sum, each, i) => sum + each * vector[i], 0));

/** Linear red, green and blue as who lacks one kind of cone sees them (Viénot, Brettel and Mollon 1999; the matrices from memory). */
const SIMULATED = {
  plain: [[1, 0, 0], [0, 1, 0], [0, 0, 1]],
  protan: [[0.11238, 0.88762, 0], [0.11238, 0.88762, 0], [0.00401, -0.00401, 1]],
  deutan: [[0.29275, 0.70725, 0], [0.29275, 0.70725, 0], [-0.02234, 0.02234, 1]],
};

/** CIE Lab of linear sRGB under D65. */
function lab(rgb) {
  const xyz = times([[0.4124564, 0.3575761, 0.1804375], [0.2126729, 0.7151522, 0.072175], [0.0193339, 0.119192, 0.9503041]], rgb);
  const [x, y, z] = xyz.map((each, i) => each / [0.95047, 1, 1.08883][i]).map(each => each > 216 / 24389 ? Math.cbrt(each) : (24389 / 27 * each + 16) / 116);
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}
const distance = (a, b) => Math.hypot(...lab(a).map((each, i) => each - lab(b)[i]));

/** What the system has, what was chosen on the page, and where it is seen. */
const VIEWS = [['light', 'system', 'screen'], ['dark', 'system', 'screen'], ['light', 'dark', 'screen'], ['dark', 'light', 'screen'], ['dark', 'system', 'print'], ['light', 'dark', 'print']];

export async function colours() {
  const least = { text: Infinity, marks: Infinity, series: Infinity };
  const seen = new Map();
  for (const [scheme, look, media] of VIEWS) {
    const page = await open(ORIGIN, { scheme });
    await page.locator('.questions').waitFor();
    await page.evaluate(chosen => localStorage.setItem('brinebook.look', chosen), look);
    await page.reload();
    await page.locator('.questions').waitFor();
    await page.emulateMedia({ media });
    const tokens = await page.evaluate(names => {
      const canvas = document.createElement('canvas').getContext('2d', { willReadFrequently: true });
      return Object.fromEntries(names.map(name => {
        canvas.fillStyle = getComputedStyle(document.documentElement).getPropertyValue(`--${name}`).trim();
        canvas.fillRect(0, 0, 1, 1);
        return [name, [...canvas.getImageData(0, 0, 1, 1).data].slice(0, 3).map(each => each / 255)];
      }));
    }, ['paper', 'card', 'edge', 'on-accent', ...WRITTEN, ...SERIES]);
    const isDark = media === 'screen' && (look === 'dark' || (look === 'system' && scheme === 'dark'));
    const grounds = JSON.stringify(tokens);
    assert.ok(!seen.has(isDark) || seen.get(isDark) === grounds, `${scheme}, ${look}, ${media}: other colours than elsewhere`);
    seen.set(isDark, grounds);
    assert.equal(luminance(tokens.paper) < 0.2, isDark, `${scheme}, ${look}, ${media}: is it dark`);
    const check = (kind, name, ground, wanted) => {
      const ratio = contrast(tokens[name], tokens[ground]);
      least[kind] = Math.min(least[kind], ratio);
      assert.ok(ratio >= wanted, `${scheme}: ${name} on ${ground} has a contrast of ${ratio.toFixed(2)}`);
    };
    ['paper', 'card'].forEach(ground => {
      WRITTEN.forEach(name => check('text', name, ground, TEXT));
      ['edge', ...SERIES].forEach(name => check('marks', name, ground, MARKS));
    });
    check('text', 'on-accent', 'accent', TEXT);
    Object.entries(SIMULATED).forEach(([sight, matrix]) => SERIES.forEach((a, i) => SERIES.slice(i + 1).forEach(b => {
      const apart = distance(...[a, b].map(name => times(matrix, tokens[name].map(linear)).map(each => Math.max(0, each))));
      least.series = Math.min(least.series, apart);
      assert.ok(apart >= DISTANCE, `${scheme}, ${sight}: ${a} and ${b} are ${apart.toFixed(1)} apart`);
    })));
    await close(page);
  }
  return `contrast of text ${least.text.toFixed(1)}, of marks ${least.marks.toFixed(1)}, series ${least.series.toFixed(1)} apart in CIE Lab, at least`;
}
