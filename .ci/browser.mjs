// The browser of all checks: Debian's Chromium, which asks no host of its own accord.
import { chromium } from 'playwright-core';

export const browser = await chromium.launch({
  executablePath: '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking',
    '--disable-component-update', '--disable-sync'],
});
