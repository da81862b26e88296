'use strict';

/*
 * On pages of somebody signed in: keeps copies of their home, checklists and bench forms on this
 * phone, and sends what was entered without reception once it is back, each entry once. The worker
 * (reception-worker.js) shows the copies. Pages need none of this to work.
 */
(() => {
  const PAGES = /^\/(home|trees\/\d+\/(checklist|measure)|steps\/\d+)$/;
  const MOST_TREES = 12;
  const FETCHED_AGAIN_AFTER_MS = 3 * 3600 * 1000;
  const BETWEEN_TRIES_MS = 20_000;

  /**
   * The service knows a key for 48 hours. What got no answer may be written already, so that past
   * this time only its person decides whether it is sent again.
   */
  const KEY_IS_GOOD_MS = 40 * 3600 * 1000;

  /** While the first of two is still being worked on, the second is refused with 409. */
  const STILL_AT_WORK_MS = 2 * 60 * 1000;

  /** The part of the page that tells of entries; a name no page has. */
  const BOX = 'kept-entries';

  /** Fields of the form's own, which are made anew with each page. */
  const OWN_FIELDS = ['once', 'version', 'csrf-token', 'confirmed'];

  const tag = document.querySelector('script[data-person]');
  const person = tag.dataset.person;
  const isCopy = 'kept' in tag.dataset;
  const path = location.pathname;
  let waiting = 0;
  let signedOut = false;
  const sent = [];

  // taken before anything is changed on the page
  const asItCame = copyOfPage();

  if ('serviceWorker' in navigator && window.caches && window.indexedDB) {
    start().catch(() => { /* the page works without */ });
  }

  async function start() {
    if (!isCopy && (await Kept.person()) !== person) {
      // somebody else used this phone
      await Kept.forget();
      await Kept.setPerson(person);
    }
    await navigator.serviceWorker.register('/reception-worker.js');
    document.addEventListener('submit', askBeforeSignOut);
    window.addEventListener('hashchange', fillForm);
    window.addEventListener('online', sendAll);
    document.addEventListener('visibilitychange', () => document.hidden || sendAll());
    await show();
    await fillForm();
    if (asItCame) {
      await Kept.keepPage(path, asItCame);
      await Kept.keepFiles(filesOfPage());
    }
    await sendAll();
    setInterval(() => waiting > 0 && sendAll(), BETWEEN_TRIES_MS);
    if (path === '/home' && !isCopy) {
      await keepTrees();
    }
  }

  /** The page without what is said once; null when it is not one to keep. */
  function copyOfPage() {
    if (isCopy || !PAGES.test(path) || document.title.startsWith('Not saved')) {
      return null;
    }
    const copy = document.documentElement.cloneNode(true);
    copy.querySelectorAll('main > .notice[role=status]').forEach(said => said.remove());
    return `<!DOCTYPE html>\n${copy.outerHTML}`;
  }

  function filesOfPage() {
    const loaded = performance.getEntriesByType('resource')
      .map(file => new URL(file.name))
      .filter(url => url.origin === location.origin && /\.(css|js|svg|woff2?|ttf)$/.test(url.pathname))
      .map(url => url.pathname);
    return loaded.filter(file => file !== '/reception-worker.js');
  }

  /** Checklists and bench forms of the trees on one's home, one after the other. */
  async function keepTrees() {
    const trees = [...document.querySelectorAll('main a[href^="/trees/"]')]
      .map(link => /^\/trees\/\d+(?=\/checklist)/.exec(link.getAttribute('href')))
      .filter(found => found)
      .map(found => found[0]);
    for (const tree of [...new Set(trees)].slice(0, MOST_TREES)) {
      await keepAhead(`${tree}/checklist`);
      await keepAhead(`${tree}/measure`);
    }
  }

  async function keepAhead(page) {
    const copy = await Kept.page(page);
    if (copy && Date.now() - copy.at < FETCHED_AGAIN_AFTER_MS) {
      return;
    }
    const answer = await fetch(page, {cache: 'no-store'});
    const html = await answer.text();
    if (answer.ok && !answer.redirected && Kept.personOf(html) === person
        && (await Kept.person()) === person) {
      await Kept.keepPage(page, html);
      await Kept.keepFiles([...html.matchAll(/<link rel="stylesheet" href="(\/[^"]+)"/g)].map(link => link[1]));
    }
  }

  /** One page at a time sends; two that did would still count once, by the key. */
  function sendAll() {
    return navigator.locks
      ? navigator.locks.request('ripewood-send', {ifAvailable: true}, lock => lock && sendInTurn())
      : sendInTurn();
  }

  async function sendInTurn() {
    try {
      for (const entry of await mine()) {
        if (!entry.refused && !isDoubtful(entry)) {
          await sendOne(entry);
        }
      }
    } catch (noConnection) {
      // they wait on
    }
    await show();
  }

  /** Only ever what this page's person entered, and only while they are whom this phone is of. */
  async function mine() {
    return (await Kept.person()) === person
      ? (await Kept.entries()).filter(entry => entry.person === person)
      : [];
  }

  function isDoubtful(entry) {
    return entry.tried !== null && Date.now() - entry.tried > KEY_IS_GOOD_MS && !entry.sendAnyway;
  }

  /** Fails without an answer; then the entry waits on, marked as one that may have arrived. */
  async function sendOne(entry) {
    const now = await Kept.fresh();
    signedOut = now.person === undefined;
    if (now.person !== person || !now.token) {
      return;
    }
    const lastTry = entry.lastTry || entry.tried;
    entry.lastTry = Date.now();
    entry.tried = entry.tried || entry.lastTry;
    await Kept.put(entry);
    const answer = await fetch(entry.action, {method: 'POST', body: body(entry, now.token)});
    const text = await answer.text();
    if (answer.redirected && /^\/(trees|steps)\//.test(new URL(answer.url).pathname)) {
      await Kept.drop(entry.id);
      sent.push(saidOn(text));
    } else if (!isPassing(answer, text, lastTry)) {
      entry.refused = problemOn(text);
      await Kept.put(entry);
    }
  }

  /** Whether the refusal says nothing about the entry, so that it is sent again later. */
  function isPassing(answer, text, lastTry) {
    return answer.redirected || answer.status >= 500 || [408, 429].includes(answer.status)
      || (answer.status === 400 && text.includes('This form is no longer good'))
      || (answer.status === 409 && lastTry && Date.now() - lastTry < STILL_AT_WORK_MS);
  }

  /** As it was typed, under its first key, with a token that is good now. */
  function body(entry, token) {
    const fields = [...entry.fields, ['csrf-token', token]];
    if (!entry.parts) {
      return new URLSearchParams(fields);
    }
    const parts = new FormData();
    fields.forEach(([name, value]) => parts.append(name, value));
    return parts;
  }

  function read(html) {
    return new DOMParser().parseFromString(html, 'text/html');
  }

  function saidOn(html) {
    const said = read(html).querySelector('main > .notice[role=status]');
    return said ? said.textContent.trim() : 'It is in the record.';
  }

  function problemOn(html) {
    const page = read(html);
    const lines = page.querySelectorAll('#problem h2, #problem > p:not(.small), #problem li');
    const told = lines.length ? lines : page.querySelectorAll('main h1, main .lede, main li');
    return [...told].map(line => line.textContent.trim().replace(/\.?$/, '.')).join(' ');
  }

  /** Shows what waits, what was refused and what has been sent, above the page. */
  async function show() {
    const entries = await mine();
    waiting = entries.length;
    const old = document.getElementById(BOX);
    if (old && old.contains(document.activeElement)) {
      // taken away while somebody is about to press one of its buttons
      return;
    }
    const box = element('section', null, 'stack');
    box.id = BOX;
    box.setAttribute('aria-label', 'Entries kept on this phone');
    box.setAttribute('aria-live', 'polite');
    for (const said of sent) {
      box.append(element('p', `Sent now: ${said}`, 'notice'));
    }
    if (sent.length && PAGES.test(path)) {
      box.append(paragraph(link('Open this page as it is now', path)));
    }
    if (waiting) {
      box.append(element('h2', `Waiting on this phone: ${waiting}`));
    }
    for (const entry of entries) {
      box.append(await told(entry));
    }
    if (old && old.isEqualNode(box)) {
      // or it would be read out again and again
      return;
    }
    if (old) {
      old.remove();
    }
    if (box.childElementCount) {
      const main = document.getElementById('main');
      const line = main.querySelector(':scope > .caution');
      line ? line.after(box) : main.prepend(box);
      if (!old && location.hash === `#${BOX}`) {
        box.scrollIntoView();
      }
    }
  }

  async function told(entry) {
    const one = element('div', null, 'sheet pad stack tight');
    const copy = await Kept.page(entry.page);
    const page = copy && read(copy.html);
    one.append(element('h3', title(entry, page)));
    const at = new Date(entry.at).toLocaleString('en-GB',
      {day: 'numeric', month: 'long', hour: '2-digit', minute: '2-digit'});
    one.append(element('p', `Entered ${at}: ${typed(entry, page)}`));
    one.append(element('p', state(entry), entry.refused ? 'caution' : 'soft'));
    one.append(buttons(entry));
    return one;
  }

  function state(entry) {
    if (entry.refused) {
      return `Not taken. ${entry.refused}`;
    }
    if (isDoubtful(entry)) {
      return 'It was sent and no answer came, too long ago to be sent again by itself. Look whether it'
        + ' is in the record; then send it or throw it away.';
    }
    return signedOut
      ? 'Your sign-in has ended. Sign in again, and it is sent.'
      : 'It is sent when the connection is back.';
  }

  function buttons(entry) {
    const row = element('div', null, 'actions');
    if (signedOut && !entry.refused) {
      row.append(link('Sign in', '/sign-in'));
    }
    if (isDoubtful(entry) && !entry.refused) {
      row.append(button('Send it', async () => {
        await Kept.put({...entry, sendAnyway: true});
        await sendAll();
      }));
    }
    // what may have arrived must not be sent under another key
    if (entry.refused || !entry.tried) {
      row.append(button('Open the form with it', () => { location.href = `${entry.page}#entry-${entry.id}`; }));
    }
    row.append(button('Throw it away', async () => {
      await Kept.drop(entry.id);
      await show();
    }));
    return row;
  }

  function title(entry, page) {
    const of = page ? page.title.split(' · ')[0].replace(/^(Checklist,|Measure) /, '') : entry.page;
    const what = entry.action.includes('/report') ? 'Report'
      : entry.action.endsWith('/asks') ? 'Asked'
      : entry.action.includes('/aftercare/') ? 'Care' : 'Measured';
    return `${what}: ${of}`;
  }

  /** All that was typed, by the labels of its form, so that it can be read even where that is gone. */
  function typed(entry, page) {
    const files = entry.fields.filter(([, value]) => value.size > 0).length;
    const form = page && [...page.forms].find(one => one.getAttribute('action') === entry.action);
    const words = entry.fields
      .filter(([name, value]) => !OWN_FIELDS.includes(name) && typeof value === 'string' && value)
      .map(([name, value]) => `${labelOf(form, name)}${day(value)}`);
    return words.join('; ') + (files ? `; photos: ${files}` : '');
  }

  function labelOf(form, name) {
    const field = form && [...form.elements].find(one => one.name === name);
    const label = field && field.id && form.querySelector(`label[for="${CSS.escape(field.id)}"]`);
    return label ? `${label.firstChild.textContent.trim()}: ` : '';
  }

  function day(value) {
    return /^\d{4}-\d{2}-\d{2}$/.test(value)
      ? new Date(`${value}T12:00`).toLocaleDateString('en-GB', {day: 'numeric', month: 'long', year: 'numeric'})
      : value;
  }

  /** Puts what waits back into its form; once that is sent, it takes the place of what waited. */
  async function fillForm() {
    const asked = /^#entry-([\w-]+)$/.exec(location.hash);
    const entry = asked && (await mine()).find(one => one.id === asked[1]);
    const form = entry && [...document.forms].find(one => one.getAttribute('action') === entry.action);
    if (!form) {
      return;
    }
    entry.fields.filter(([name]) => !OWN_FIELDS.includes(name))
      .forEach(([name, value]) => fill(form, name, value, entry));
    for (let part = form.closest('details'); part; part = part.parentElement.closest('details')) {
      part.open = true;
    }
    form.scrollIntoView();
    form.addEventListener('submit', async event => {
      event.preventDefault();
      await Kept.drop(entry.id);
      form.requestSubmit();
    }, {once: true});
  }

  function fill(form, name, value, entry) {
    for (const field of [...form.elements].filter(one => one.name === name)) {
      if (field.type === 'file') {
        const files = new DataTransfer();
        entry.fields.filter(([of, one]) => of === name && one.size > 0)
          .forEach(([, one]) => files.items.add(one));
        field.files = files.files;
      } else if (field.type === 'checkbox' || field.type === 'radio') {
        field.checked = field.checked || field.value === value;
      } else {
        field.value = value;
      }
    }
  }

  function askBeforeSignOut(event) {
    const leaves = event.target.getAttribute('action') === '/sign-out';
    if (leaves && waiting > 0
        && !confirm(`Not sent yet: ${waiting}. Signing out throws it away. Sign out all the same?`)) {
      event.preventDefault();
    }
  }

  function element(name, text, style) {
    const made = document.createElement(name);
    if (text) {
      made.textContent = text;
    }
    if (style) {
      made.className = style;
    }
    return made;
  }

  function paragraph(inside) {
    const made = element('p');
    made.append(inside);
    return made;
  }

  function link(text, href) {
    const made = element('a', text, 'row');
    made.href = href;
    return made;
  }

  function button(text, act) {
    const made = element('button', text, 'quiet');
    made.type = 'button';
    made.addEventListener('click', () => {
      // so that what is shown may be shown anew
      made.blur();
      act();
    });
    return made;
  }
})();
