// SPDX-License-Identifier: EPL-2.0
// Opens a pack of pages from file: with the network off and holds it to what issue-free use on a tablet needs.
// node check.mjs PACK_FOLDER CHROMIUM [SCREENSHOT_FOLDER]
import { createRequire } from 'node:module';
import { pathToFileURL } from 'node:url';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { tmpdir } from 'node:os';

const require = createRequire(join(process.env.BENCHLORE_PAGES_MODULES ?? process.cwd(), 'x.js'));
const { chromium } = require('playwright-core');
const axe = readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8');

const [folder, browserPath, shots] = process.argv.slice(2).map((one, i) => (i === 1 ? one : resolve(one)));
const address = (path) => pathToFileURL(join(folder, path)).href;
const failures = [];
const fail = (what) => { failures.push(what); console.error('FAILED  ' + what); };
const said = (what) => console.log('ok      ' + what);

const home = mkdtempSync(join(tmpdir(), 'benchlore-pages-'));
const context = await chromium.launchPersistentContext(home, { executablePath: browserPath, headless: true, offline: true,
    args: ['--no-sandbox', '--allow-file-access-from-files=false', '--disable-background-networking'] });

function watch(page) {
    page.on('console', (message) => { if (['error', 'warning'].includes(message.type())) { fail(page.url() + ': ' + message.text()); } });
    page.on('pageerror', (error) => fail(page.url() + ': ' + error.message));
    page.on('request', (request) => {
        const inside = request.url().startsWith(pathToFileURL(folder).href) || request.url().startsWith('data:');
        if (!inside) { fail(page.url() + ' asks for ' + request.url()); }
    });
    page.on('requestfailed', (request) => {
        if (request.failure()?.errorText !== 'net::ERR_ABORTED') { fail(page.url() + ' lacks ' + request.url()); }
    });
}

async function open(path) {
    const page = await context.newPage();
    watch(page);
    await page.goto(address(path));
    return page;
}

async function accessible(page, what) {
    await page.evaluate(axe);
    const result = await page.evaluate(() => window.axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] }));
    for (const one of result.violations) {
        const grave = ['serious', 'critical'].includes(one.impact);
        const line = what + ': ' + one.id + ' (' + one.impact + ', ' + one.nodes.length + '): ' + one.help + ' ' + one.nodes[0].html.slice(0, 160);
        if (grave) { fail(line); } else { console.log('minor   ' + line); }
    }
}

async function fits(page, what) {
    const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    if (over > 0) { fail(what + ' is ' + over + ' px wider than the screen'); }
}

const names = readdirSync(join(folder, 'pages')).filter((name) => name.endsWith('.html'));
const data = readFileSync(join(folder, 'assets/search-data.js'), 'utf8');
const procedures = [...data.matchAll(/\{id:"([^"]+)",title:"[^"]*",kind:"Procedure"/g)].map((found) => 'pages/' + found[1] + '.html');
const machines = [...data.matchAll(/\{id:"([^"]+)",title:"[^"]*",kind:"Machine"/g)].map((found) => 'pages/' + found[1] + '.html');
const notes = [...data.matchAll(/\{id:"([^"]+)",title:"[^"]*",kind:"Field note"/g)].map((found) => 'pages/' + found[1] + '.html');
const learn = readdirSync(folder).includes('learn.html') ? ['learn.html'] : [];

// Every page opens without an error, asks for nothing outside and has a title and one heading of the first level.
for (const path of ['index.html', ...learn, ...names.map((name) => 'pages/' + name)]) {
    const page = await open(path);
    if (await page.locator('h1').count() !== 1) { fail(path + ' has not one heading of the first level'); }
    if (!(await page.locator('footer').innerText()).includes('Check for a newer one')) { fail(path + ' does not say to check for a newer one'); }
    await page.close();
}
said((names.length + 1 + learn.length) + ' pages open from file: with the network off');

// No link within the pack leads to nothing.
for (const path of ['index.html', ...learn, ...procedures, ...machines]) {
    const page = await open(path);
    const targets = await page.locator('a[href]').evaluateAll((links) => links.map((link) => link.href));
    for (const target of new Set(targets)) {
        const url = new URL(target);
        if (url.protocol === 'data:') { continue; }
        try {
            const text = readFileSync(url, 'utf8');
            const id = decodeURIComponent(url.hash.slice(1));
            if (id && id !== 'main' && !text.includes('id="' + id + '"')) { fail(path + ' links to ' + target + ', where no place has that name'); }
        } catch { fail(path + ' links to ' + target + ', which is not there'); }
    }
    await page.close();
}
said('links lead to pages of the pack');

// Search.
{
    const page = await open('index.html');
    const words = await page.evaluate(() => window.benchlorePages.find((one) => one.kind === 'Procedure').title.split(' ').filter((word) => word.length > 4).slice(0, 2).join(' '));
    await page.fill('#search', words);
    await page.waitForFunction(() => document.querySelectorAll('#found li').length > 0);
    const first = await page.locator('#found li a').first().innerText();
    said('search for “' + words + '” finds “' + first + '” and ' + (await page.locator('#found li').count() - 1) + ' more');
    await page.fill('#search', 'zzqqxx');
    await page.waitForFunction(() => document.getElementById('said').textContent.startsWith('Nothing found'));
    await page.fill('#search', '<img src=x onerror=alert(1)>');
    await page.waitForTimeout(300);
    await page.fill('#search', words.slice(0, 5));
    await page.waitForFunction(() => document.querySelectorAll('#found li').length > 0);
    said('half a word is enough');
    await page.close();
    const other = await open(procedures[0]);
    await other.fill('#asked', words);
    await other.press('#asked', 'Enter');
    await other.waitForFunction(() => document.querySelectorAll('#found li').length > 0);
    said('search from another page leads to the contents');
    await other.close();
}

// Ticks, values and initials persist after a reload, and on another page of the same browser they are not those of this one.
{
    let done = false;
    for (const path of procedures) {
        let page = await open(path);
        const ticks = page.locator('main input[type=checkbox]');
        const texts = page.locator('main input[type=text]');
        if (await ticks.count() > 1 && await texts.count() > 0) {
            await ticks.nth(1).check();
            await texts.first().fill('41.5');
            await page.reload();
            if (!await ticks.nth(1).isChecked() || await ticks.nth(0).isChecked() || await texts.first().inputValue() !== '41.5') { fail(path + ' forgets ticks'); }
            await page.close();
            page = await open(path);
            const again = page.locator('main input[type=checkbox]').nth(1);
            if (!await again.isChecked()) { fail(path + ' forgets ticks when it is opened again'); }
            page.on('dialog', (dialog) => dialog.accept());
            await page.locator('[data-do=clear]').click();
            await page.reload();
            if (await again.isChecked()) { fail(path + ' does not forget what was cleared'); }
            done = true;
        }
        await page.close();
        if (done) { break; }
    }
    if (done) { said('ticks and values persist, and go when they are cleared'); } else { fail('no procedure with ticks and values was found'); }
}

// The learner's progress is a file.
if (learn.length > 0) {
    const page = await open('learn.html');
    await page.locator('[data-keep="learner"]').fill('Tilda Example');
    await page.locator('input[type=radio][value=DONE_WITH]').first().check();
    await page.locator('.by').first().fill('OB');
    const wait = page.waitForEvent('download');
    await page.locator('[data-do=progress]').click();
    const text = readFileSync(await (await wait).path(), 'utf8');
    if (!/^benchlore-progress\t1\npack\t.*\nlearner\tTilda Example\ntask\t[a-z0-9-]+\tDONE_WITH\t\d{4}-\d\d-\d\d\tOB\n$/.test(text)) { fail('the progress file reads ' + text); }
    else { said('progress is saved as a file'); }
    await page.close();
}

// Accessibility, sizes, dark and light, paper.
if (shots) { mkdirSync(shots, { recursive: true }); }
const looked = ['index.html', ...learn, procedures.at(0), procedures.at(-1), machines[0], notes[0]].filter(Boolean);
for (const path of new Set(looked)) {
    const page = await open(path);
    const name = path.replace(/^pages\//, '').replace('.html', '');
    for (const scheme of ['light', 'dark']) {
        await page.emulateMedia({ colorScheme: scheme });
        for (const width of [360, 820, 1280]) {
            await page.setViewportSize({ width, height: 900 });
            await fits(page, path + ' at ' + width + ' px');
            await accessible(page, path + ' at ' + width + ' px, ' + scheme);
            if (shots) { await page.screenshot({ path: join(shots, name + '-' + scheme + '-' + width + '.png'), fullPage: width === 360 }); }
        }
    }
    await page.emulateMedia({ colorScheme: 'light' });
    if (shots) {
        for (const format of ['A4', 'Letter']) {
            await page.pdf({ path: join(shots, name + '-' + format + '.pdf'), format, preferCSSPageSize: false, printBackground: false });
        }
    }
    await page.close();
}
said('looked at ' + new Set(looked).size + ' pages at 360, 820 and 1280 px, light and dark');

await context.close();
rmSync(home, { recursive: true, force: true });
console.log(failures.length === 0 ? 'All well.' : failures.length + ' failed.');
process.exit(failures.length === 0 ? 0 : 1);
