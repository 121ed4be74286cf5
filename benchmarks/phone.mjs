// How long the on-court page takes to be usable without a network on a slow phone: from opening the
// address to the first drawn scene that answers taps. Chromium, CPU slowed down four times.
//
//   node benchmarks/phone.mjs DRIVER SIGN-IN-ADDRESS [RUNS]

import { createRequire } from 'node:module';

const [driver, signIn, runs = '21'] = process.argv.slice(2);
const { chromium } = createRequire(import.meta.url)(`${driver}/package/index.js`);
const browser = await chromium.launch({ executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu'] });
const context = await browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true,
  isMobile: true });
await context.addInitScript(() => {
  new MutationObserver((_, observer) => {
    if (document.querySelector('.bar')) {
      globalThis.usable = performance.now();
      observer.disconnect();
    }
  }).observe(document, { childList: true, subtree: true });
});

const page = await context.newPage();
await page.goto(signIn);
await page.waitForURL((url) => !url.pathname.includes('sign-in'));
const { origin } = new URL(signIn);
await page.goto(`${origin}/sessions`);
const session = (await page.locator('ul.rows a').first().getAttribute('href')).split('/').pop();
const address = `${origin}/court/${session}`;
const started = Date.now();
await page.goto(address);
await page.locator('.bar').waitFor();
const first = Date.now() - started;
await page.evaluate(() => navigator.serviceWorker.ready);
await context.setOffline(true);

const times = [];
for (let run = 0; run < Number(runs); run++) {
  const fresh = await context.newPage();
  const phone = await context.newCDPSession(fresh);
  await phone.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  await fresh.goto(address);
  await fresh.locator('.bar').waitFor();
  times.push(await fresh.evaluate(() => globalThis.usable));
  await fresh.close();
}
await browser.close();
times.sort((a, b) => a - b);
const at = (share) => Math.round(times[Math.floor(share * (times.length - 1))]);
console.log(`first visit ${first} ms; offline at a quarter of the speed, ${times.length} openings: `
  + `median ${at(0.5)} ms, nine in ten within ${at(0.9)} ms, slowest ${at(1)} ms`);
