'use strict';

/*
 * What a phone keeps for one person, so that their pages can be read and their entries wait without
 * reception. Read by the pages (reception.js) and by the worker (reception-worker.js). Pages and
 * files lie in caches, entries that wait and the person's number in a database of the browser.
 */
const Kept = (() => {
  const PAGES = 'ripewood-pages';
  const FILES = 'ripewood-files';
  const DATABASE = 'ripewood';

  /** More pages than this push the oldest out. */
  const MOST_PAGES = 60;

  /** A copy is shown for three days, and then no more. */
  const LONGEST_MS = 3 * 24 * 3600 * 1000;

  // with the bracket before them, which no text of a page can have
  const PERSON = /<script src="\/reception.js" data-person="(\d+)"/;
  const TOKEN = /<input type="hidden" name="csrf-token" value="([^"]+)"/;

  function open() {
    return new Promise((done, failed) => {
      const asked = indexedDB.open(DATABASE, 1);
      asked.onupgradeneeded = () => {
        asked.result.createObjectStore('entries', {keyPath: 'id'});
        asked.result.createObjectStore('about');
      };
      asked.onsuccess = () => done(asked.result);
      asked.onerror = () => failed(asked.error);
    });
  }

  /** Does one thing with one table; closed at once, so that forgetting never waits. */
  async function table(name, mode, act) {
    const database = await open();
    try {
      return await new Promise((done, failed) => {
        const work = database.transaction(name, mode);
        const asked = act(work.objectStore(name));
        work.oncomplete = () => done(asked.result);
        work.onabort = () => failed(work.error);
      });
    } finally {
      database.close();
    }
  }

  /** Entries that wait, oldest first. */
  async function entries() {
    const all = await table('entries', 'readonly', rows => rows.getAll());
    return all.sort((one, other) => one.at - other.at);
  }

  const entry = id => table('entries', 'readonly', rows => rows.get(id));
  const put = one => table('entries', 'readwrite', rows => rows.put(one));
  const drop = id => table('entries', 'readwrite', rows => rows.delete(id));

  /** For whom this phone keeps things: a number as text, undefined for nobody. */
  const person = () => table('about', 'readonly', rows => rows.get('person'));

  const setPerson = number => table('about', 'readwrite', rows => rows.put(number, 'person'));

  const forgetPages = () => caches.delete(PAGES);

  /** Everything, of whoever it is. */
  async function forget() {
    await Promise.all([caches.delete(PAGES), caches.delete(FILES)]);
    await new Promise(done => {
      const asked = indexedDB.deleteDatabase(DATABASE);
      asked.onsuccess = asked.onerror = asked.onblocked = done;
    });
  }

  async function keepPage(path, html) {
    const pages = await caches.open(PAGES);
    const headers = {
      'Content-Type': 'text/html; charset=UTF-8',
      'Kept-At': new Date().toISOString(),
    };
    // taken out first, so that the oldest stands first
    await pages.delete(path);
    await pages.put(path, new Response(html, {headers}));
    const paths = await pages.keys();
    await Promise.all(paths.slice(0, -MOST_PAGES).map(old => pages.delete(old)));
  }

  /** The copy of a page, if it is of the person this phone keeps things for; otherwise null. */
  async function page(path) {
    const found = await caches.match(path, {cacheName: PAGES});
    if (!found) {
      return null;
    }
    const at = new Date(found.headers.get('Kept-At'));
    const html = await found.text();
    const isTheirs = personOf(html) === (await person());
    return isTheirs && Date.now() - at < LONGEST_MS ? {html, at} : null;
  }

  /** Paths of the pages kept, newest first. */
  async function paths() {
    const pages = await caches.open(PAGES);
    return (await pages.keys()).map(asked => new URL(asked.url).pathname).reverse();
  }

  /** Style sheets, fonts and scripts; they are the same for everybody. */
  async function keepFiles(files) {
    const kept = await caches.open(FILES);
    for (const file of new Set(files)) {
      const answer = await fetch(file);
      if (answer.ok) {
        await kept.put(file, answer);
      }
    }
  }

  const file = path => caches.match(path, {cacheName: FILES});

  /** Whose a page is; undefined when nobody is signed in. */
  const personOf = html => (PERSON.exec(html) || [])[1];

  /**
   * Who is signed in now, and a token of forms that is good now. Tokens are made for a person and
   * stand in a cookie as well, so one of a page kept before a new sign-in is no longer good. Fails
   * without a connection; nothing that writes has been sent by then.
   */
  async function fresh() {
    const answer = await fetch('/help', {cache: 'no-store'});
    if (answer.status >= 500) {
      throw new Error('the service does not answer');
    }
    const html = await answer.text();
    return {person: personOf(html), token: (TOKEN.exec(html) || [])[1]};
  }

  return {
    entries, entry, put, drop, person, setPerson, forget, forgetPages,
    keepPage, page, paths, keepFiles, file, personOf, fresh,
  };
})();
