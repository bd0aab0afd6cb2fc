// SPDX-License-Identifier: EPL-2.0
// Keeps what is ticked and written on a page of a pack on this device, and finds in its contents. Nothing leaves the page.
'use strict';
(function () {
    const page = document.body.dataset;
    const prefix = 'benchlore:' + page.pack + ':' + page.page + ':';
    const fields = Array.from(document.querySelectorAll('[data-keep]'));

    // Some browsers refuse to keep anything for a file from a stick; then it is kept while the page is open, and said.
    const memory = {};
    let shelf = memory;
    try {
        window.localStorage.setItem('benchlore:try', '1');
        window.localStorage.removeItem('benchlore:try');
        shelf = window.localStorage;
    } catch (e) {
        document.querySelectorAll('.not-kept').forEach(function (note) { note.hidden = false; });
    }
    function read(key) { return shelf === memory ? memory[key] : shelf.getItem(key); }
    function write(key, value) {
        try {
            if (shelf === memory) { memory[key] = value; } else { shelf.setItem(key, value); }
        } catch (e) {
            document.querySelectorAll('.not-kept').forEach(function (note) { note.hidden = false; });
        }
    }
    function forget(key) { if (shelf === memory) { delete memory[key]; } else { shelf.removeItem(key); } }

    function isTick(field) { return field.type === 'checkbox' || field.type === 'radio'; }
    function keyOf(field) { return prefix + field.dataset.keep; }
    function show() {
        fields.forEach(function (field) {
            const kept = read(keyOf(field));
            if (field.type === 'radio') { field.checked = kept === field.value; }
            else if (field.type === 'checkbox') { field.checked = kept === '1'; }
            else { field.value = kept || ''; }
        });
    }
    function keep(field) {
        if (field.type === 'radio') { if (field.checked) { write(keyOf(field), field.value); } return; }
        const value = field.type === 'checkbox' ? (field.checked ? '1' : '') : field.value;
        if (value) { write(keyOf(field), value); } else { forget(keyOf(field)); }
    }
    show();
    fields.forEach(function (field) {
        field.addEventListener(isTick(field) ? 'change' : 'input', function () { keep(field); });
    });

    document.querySelectorAll('[data-do]').forEach(function (button) {
        button.hidden = false;
        button.addEventListener('click', function () {
            if (button.dataset.do === 'print') { window.print(); }
            if (button.dataset.do === 'clear' && window.confirm('Clear every tick and value of this page on this device?')) {
                fields.forEach(function (field) { forget(keyOf(field)); });
                show();
            }
            if (button.dataset.do === 'progress') { progress(); }
        });
    });

    const today = new Date();
    function two(number) { return (number < 10 ? '0' : '') + number; }
    const day = today.getFullYear() + '-' + two(today.getMonth() + 1) + '-' + two(today.getDate());
    document.querySelectorAll('.printed').forEach(function (place) { place.textContent = day; });
    const line = document.createElement('style');
    line.textContent = '@page { @top-right { content: ' + JSON.stringify('printed ' + day) + '; font: 8pt sans-serif; } }';
    document.head.appendChild(line);
    window.addEventListener('beforeprint', function () {
        document.querySelectorAll('details').forEach(function (part) { if (!part.open) { part.open = true; part.dataset.shut = '1'; } });
    });
    window.addEventListener('afterprint', function () {
        document.querySelectorAll('details[data-shut]').forEach(function (part) { part.open = false; delete part.dataset.shut; });
    });

    // The learner's progress as a small text file that the library takes back.
    function plain(text) { return (text || '').replace(/[\t\r\n]+/g, ' ').trim(); }
    function progress() {
        const lines = ['benchlore-progress\t1', 'pack\t' + plain(page.title)];
        const learner = document.querySelector('[data-keep="learner"]');
        const name = plain(learner && learner.value);
        lines.push('learner\t' + name);
        document.querySelectorAll('[data-task]').forEach(function (task) {
            const level = task.querySelector('input[type=radio]:checked');
            if (level) {
                lines.push(['task', task.dataset.task, level.value, plain(task.querySelector('.on').value), plain(task.querySelector('.by').value)].join('\t'));
            }
        });
        const link = document.createElement('a');
        link.href = 'data:text/plain;charset=utf-8,' + encodeURIComponent(lines.join('\n') + '\n');
        link.download = 'progress' + (name ? '-' + name.replace(/[^A-Za-z0-9]+/g, '-').toLowerCase() : '') + '.txt';
        document.body.appendChild(link);
        link.click();
        link.remove();
    }
    document.querySelectorAll('[data-task] input[type=radio]').forEach(function (level) {
        level.addEventListener('change', function () {
            const on = level.closest('[data-task]').querySelector('.on');
            if (!on.value) { on.value = day; keep(on); }
        });
    });

    // Search, on the page of contents only.
    const box = document.getElementById('search');
    const found = document.getElementById('found');
    if (!box || !found || !window.MiniSearch || !window.benchlorePages) { return; }
    const pages = new Map(window.benchlorePages.map(function (one) { return [one.id, one]; }));
    let index = null;
    function ready() {
        if (!index) {
            index = new window.MiniSearch({ fields: ['title', 'marks', 'text'],
                searchOptions: { boost: { title: 4, marks: 3 }, prefix: true, combineWith: 'AND',
                    fuzzy: function (word) { return word.length > 4 && !/[0-9]/.test(word) ? 0.2 : 0; } } });
            index.addAll(window.benchlorePages);
        }
        return index;
    }
    function element(name, text, look) {
        const made = document.createElement(name);
        if (text) { made.textContent = text; }
        if (look) { made.className = look; }
        return made;
    }
    function snippet(text, words) {
        const low = text.toLowerCase();
        let at = -1;
        let length = 0;
        words.forEach(function (word) {
            const here = low.indexOf(word);
            if (here >= 0 && (at < 0 || here < at)) { at = here; length = word.length; }
        });
        const line = element('p');
        if (at < 0) { line.textContent = text.slice(0, 160); return line; }
        const from = Math.max(0, at - 70);
        line.append((from > 0 ? '… ' : '') + text.slice(from, at), element('mark', text.slice(at, at + length)),
            text.slice(at + length, at + length + 110) + ' …');
        return line;
    }
    function search() {
        const asked = box.value.trim();
        found.textContent = '';
        const said = document.getElementById('said');
        if (!asked) { said.textContent = ''; return; }
        const hits = ready().search(asked);
        const results = hits.length ? hits : ready().search(asked, { combineWith: 'OR' });
        said.textContent = results.length === 0 ? 'Nothing found for “' + asked + '”.'
            : results.length + (results.length === 1 ? ' page' : ' pages') + ' found for “' + asked + '”'
                + (hits.length ? '.' : ', with some of the words.');
        results.slice(0, 50).forEach(function (hit) {
            const one = pages.get(hit.id);
            const result = element('li', '', 'result');
            const link = element('a', one.title);
            link.href = 'pages/' + one.id + '.html';
            const head = element('p');
            head.append(link, ' ');
            if (one.mark) { head.append(element('span', one.mark, 'mark')); }
            result.append(head, element('p', one.kind, 'kind'), snippet(one.text, hit.terms));
            found.append(result);
        });
    }
    let waiting = 0;
    box.addEventListener('input', function () { window.clearTimeout(waiting); waiting = window.setTimeout(search, 120); });
    document.getElementById('search-form').addEventListener('submit', function (event) { event.preventDefault(); search(); });
    const asked = new URLSearchParams(window.location.search).get('q');
    if (asked) { box.value = asked; search(); }
}());
