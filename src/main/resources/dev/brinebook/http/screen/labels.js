/** Fixed words of the page by language and key, which the service puts in from its texts. */
const TEXTS = {/* texts */};

const asked = (navigator.languages ?? [navigator.language]).map(each => each.slice(0, 2).toLowerCase());
export const language = asked.find(each => TEXTS[each]) ?? 'en';

/** The words of a key in the reader's language, with values in its slots. */
export const label = (key, ...values) =>
  (TEXTS[language][key] ?? key).replace(/\{(\d)}/g, (slot, index) => values[index] ?? slot);
