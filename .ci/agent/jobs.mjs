// Five whole jobs, as a sensible client of a small context would do them. Figures are those of the operations, asked beside.
import assert from 'node:assert/strict';

const quantity = (value, unit) => ({value, unit});
// Sentences have no-break spaces, figures have not.
const plain = text => text.replaceAll('\u00a0', ' ');
const holds = (text, ...parts) => {
  let from = 0;
  for (const part of parts) {
    const at = plain(text).indexOf(plain(part), from);
    assert.ok(at >= 0, `${part} (in this order) in ${text}`);
    from = at;
  }
};

export const jobs = [
  {
    title: '1 is a meter worth it',
    budget: 3_700,
    run: async ({asks, calls, post}) => {
      asks('18.5 grains, iron 0.2 mg/L, city water, four people, 1.5 cubic feet with a clock; a meter costs 480 dollars. Worth it?');
      const facts = {hardness: 18.5, hardnessUnit: 'gpg', ironMgPerL: 0.2, supply: 'publicSupply', people: 4, size: 1.5, sizeUnit: 'ft3',
        control: 'clock', conversionCost: 480};
      holds(await calls('quick_assess', facts, true), 'Nothing was calculated', 'everyDays:', 'saltPerRegeneration:');
      asks('Every 3 days, 15 pounds.');
      const text = await calls('quick_assess', {...facts, everyDays: 3, saltPerRegeneration: 15, saltUnit: 'lb'});
      const answer = await post('/v1/assessment', {water: {hardness: quantity(18.5, 'gpg'), iron: quantity(0.2, 'mg/L'), supply: 'publicSupply'},
        household: {people: 4}, softener: {resinVolume: quantity(1.5, 'ft3'), saltPerRegeneration: quantity(15, 'lb'),
          control: {kind: 'clock', everyDays: 3}}, retrofit: {cost: quantity(480, 'USD')}});
      holds(text, 'WARNING sodiumRestrictedDiet: ', `Summary: ${answer.summary}`, 'with iron and manganese 19.3 gpg',
        `hardness ${answer.settings.hardness.value} gpg`, 'cost after rebate 480 USD; simple payback ');
    },
  },
  {
    title: '2 what to set',
    budget: 4_700,
    run: async ({asks, calls, post}) => {
      asks('A well with 310 ppm and 0.4 mg/L iron, three people, 25 litres of resin, a night meter, 120 g of salt a litre. What to set?');
      await calls('describe_operation', {operation: 'assess'});
      const request = {water: {hardness: quantity(310, 'mg/L'), iron: quantity(0.4, 'mg/L'), supply: 'privateWell'}, household: {people: 3},
        softener: {resinVolume: quantity(25, 'L'), saltDose: quantity(120, 'g/L'), control: {kind: 'meteredDelayed'}}, units: 'metric'};
      const text = await calls('calculate', {operation: 'assess', arguments: request, show: ['/refill']});
      const {settings} = await post('/v1/assessment', request);
      holds(text, 'WARNING wellWithoutBacteriaTest: ', 'WARNING tankSizeNotGiven: ', 'Softener: fits yes', `Set: hardness ${settings.hardness.value} °dH`,
        `refill ${settings.refillMinutes} min`, '/refill: {');
    },
  },
  {
    title: '3 which one fits',
    budget: 5_100,
    run: async ({asks, calls, post}) => {
      asks('24 grains, iron 0.1 mg/L, five people. C-100 1 ft3 499 dollars, C-150 1.5 ft3 629, C-200 2 ft3 799. Which one fits?');
      holds(await calls('find_operation', {question: 'Which of three softeners fits five people?'}), 'sizeSoftener: ');
      await calls('describe_operation', {operation: 'sizeSoftener'});
      await calls('describe_operation', {part: 'candidate'});
      const candidate = (sku, volume, diameter, height, price) => ({sku, resinVolume: quantity(volume, 'ft3'),
        tankDiameter: quantity(diameter, 'in'), tankHeight: quantity(height, 'in'), price: quantity(price, 'USD')});
      const request = {water: {hardness: quantity(24, 'gpg'), iron: quantity(0.1, 'mg/L')}, household: {people: 5},
        candidates: [candidate('C-100', 1, 9, 48, 499), candidate('C-150', 1.5, 10, 54, 629), candidate('C-200', 2, 12, 52, 799)]};
      const text = await calls('calculate', {operation: 'sizeSoftener', arguments: request});
      const {choice, candidates} = await post('/v1/softener-sizing', request);
      const failed = candidates.find(one => one.sku === 'C-100');
      assert.equal(failed.fits, false);
      holds(text, 'WARNING sodiumRestrictedDiet: ', `Rank 1: “${choice}”; fits yes`, `Rank 3: “C-100”; fits no`, 'continuousFlowTooHigh');
    },
  },
  {
    title: '4 explain two settings',
    budget: 2_900,
    run: async ({asks, calls, post}) => {
      asks('Why that reserve and that dose?');
      const request = {water: {hardness: quantity(18.5, 'gpg'), iron: quantity(0.2, 'mg/L')}, household: {people: 4},
        softener: {resinVolume: quantity(1.5, 'ft3'), control: {kind: 'clock', everyDays: 3}}};
      const text = await calls('calculate', {operation: 'assess', arguments: request, explain: ['/settings/reserve', '/settings/saltDose']});
      const {settings} = await post('/v1/assessment', request);
      holds(text, 'WARNING sodiumRestrictedDiet: ', `/settings/reserve = ${settings.reserve.value} gal`, 'Source (',
        `/settings/saltDose = ${settings.saltDose.value} lb/ft³`, 'Source (published): ', '/softener/saltDose 10 lb/ft3');
    },
  },
  {
    title: '5 check a list of settings',
    budget: 5_000,
    run: async ({asks, calls, post}) => {
      asks('Set: 22 grains, capacity 48000, reserve 100 gal, override 14, hour 2, backwash 10, refill 15 at 0.5 gpm, 18 lb. Test 22 with iron '
        + '0.5 mg/L, 1.5 ft3, four people. Right?');
      const request = control => ({water: {hardness: quantity(22, 'gpg'), iron: quantity(0.5, 'mg/L')}, household: {people: 4},
        softener: {resinVolume: quantity(1.5, 'ft3'), saltPerRegeneration: quantity(18, 'lb'), minutes: {backwash: 10, refill: 15},
          flows: {refill: quantity(0.5, 'gpm')}, control}});
      const guessed = request({kind: 'meter', hardness: quantity(22, 'gpg'), capacity: quantity(48000, 'gr')});
      holds(await calls('calculate', {operation: 'reviewSettings', arguments: guessed}, true), '3 faults; nothing was calculated',
        'did you mean capacitySetting?', 'did you mean hardnessSetting?', 'did you mean meteredDelayed?', 'describe_operation part control');
      await calls('describe_operation', {part: 'control'});
      await calls('describe_operation', {part: 'reserve'});
      const right = request({kind: 'meteredDelayed', hardnessSetting: quantity(22, 'gpg'), capacitySetting: quantity(48000, 'gr'),
        reserve: {rule: 'volume', volume: quantity(100, 'gal')}, dayOverride: 14, regenerationHour: 2});
      const text = await calls('calculate', {operation: 'reviewSettings', arguments: right});
      const {findings} = await post('/v1/settings-review', right);
      assert.ok(findings.length >= 5);
      holds(text, ...findings.map(one => `${one.code}: set ${one.set}, should be ${one.shouldBe}`));
    },
  },
];
