'use strict';

/*
 * Stands between the pages and the network. What the network answers is shown as it is; where it
 * does not answer, the copy this phone kept is shown and says so, and forms that are safe to send
 * later wait here. Sending them is the pages' work (reception.js). Without this worker every page
 * works as it does without scripts.
 */
importScripts('/reception-store.js');

/** Forms that may wait: each carries a key by which the service counts it once. */
const MAY_WAIT =
  /^\/(steps\/\d+\/report(-with-photos)?|trees\/\d+\/(measure|asks|aftercare\/[^/]+\/(done|not-needed)))$/;

const FILE = /\.(css|js|svg|woff2?|ttf)$/;

/** Papers, files and the service's own doors are left to the browser. */
const NO_PAGE = /^\/(api|q|openapi)(\/|$)|\.[a-z0-9]+$|\/(print|pdf)$/;

/** What the service takes at once, less the text. */
const MOST_PHOTO_BYTES = 25 * 1024 * 1024;

/** A line that has not answered by then has no reception worth waiting for, if there is a copy. */
const PATIENCE_MS = 10_000;

/** As the service's pages have it. */
const POLICY =
  "default-src 'none'; img-src 'self'; style-src 'self'; font-src 'self'; script-src 'self';"
  + " connect-src 'self'; worker-src 'self'; manifest-src 'self'; form-action 'self';"
  + " frame-ancestors 'none'; base-uri 'none'";

self.addEventListener('install', () => self.skipWaiting());
self.addEventListener('activate', event => event.waitUntil(self.clients.claim()));

self.addEventListener('fetch', event => {
  const request = event.request;
  const url = new URL(request.url);
  if (url.origin !== self.location.origin) {
    return;
  }
  const path = url.pathname;
  if (request.mode === 'navigate' && request.method === 'POST') {
    if (path === '/sign-out') {
      event.respondWith(signOut(request));
    } else if (MAY_WAIT.test(path)) {
      event.respondWith(send(request, path));
    }
  } else if (request.mode === 'navigate' && request.method === 'GET') {
    if (path === '/sign-in') {
      event.respondWith(signInPage(request));
    } else if (!NO_PAGE.test(path)) {
      event.respondWith(page(request, path));
    }
  } else if (request.method === 'GET' && FILE.test(path)) {
    event.respondWith(file(request, path));
  }
});

async function file(request, path) {
  try {
    return await fetch(request);
  } catch (noConnection) {
    return (await Kept.file(path)) || Response.error();
  }
}

async function page(request, path) {
  const copy = await Kept.page(path === '/' ? '/home' : path).catch(() => null);
  try {
    const answer = fetch(request);
    return await (copy ? Promise.race([answer, tooLate()]) : answer);
  } catch (noConnection) {
    return copy ? html(shown(copy), 200) : notKept();
  }
}

function tooLate() {
  return new Promise((done, failed) => setTimeout(() => failed(new Error('late')), PATIENCE_MS));
}

/**
 * A copy as it is shown. Each time its forms get keys of their own: two entries made on one copy
 * are two entries.
 */
function shown(copy) {
  const line = `Kept copy of ${clock(copy.at)} – no connection; what you enter is sent when it is back.`;
  return copy.html
    .replace(/(<input type="hidden" name="once" value=)"[^"]*"/g, (whole, start) => `${start}"${crypto.randomUUID()}"`)
    .replace(/<script src="\/reception.js"/, '$& data-kept="yes"')
    .replace(/<main id="main"[^>]*>/, main => `${main}<p class="caution" role="status">${line}</p>`);
}

function clock(moment) {
  const time = moment.toLocaleTimeString('en-GB', {hour: '2-digit', minute: '2-digit'});
  return moment.toDateString() === new Date().toDateString()
    ? time
    : `${moment.toLocaleDateString('en-GB', {day: 'numeric', month: 'long'})}, ${time}`;
}

/**
 * Sends a form that may wait. Who is signed in is asked first: so a form that finds no connection,
 * or an ended sign-in, has not been sent at all, and is kept as it was typed.
 */
async function send(request, path) {
  const typed = await request.clone().formData();
  const person = await Kept.person();
  let tried = null;
  let signedIn = person;
  try {
    signedIn = (await Kept.fresh()).person;
    if (signedIn) {
      tried = Date.now();
      const answer = await fetch(request);
      if (![502, 503, 504].includes(answer.status)) {
        return answer;
      }
    }
  } catch (noConnection) {
    // it waits
  }
  if (!person || (signedIn && signedIn !== person)) {
    // nobody this phone keeps things for
    return Response.error();
  }
  if (path.endsWith('/done') && !typed.get('on')) {
    // sent tomorrow it would be tomorrow's
    return html(plain('Not sent', '<p>Without a connection, care that was done has to say on which day.'
      + ' Go back, open “On another day” and give the day; that is kept and sent later.</p>', ''), 503);
  }
  const entry = entryOf(request, path, typed, person, tried);
  await keep(entry);
  return Response.redirect(signedIn ? `${entry.page}#kept-entries` : '/sign-in', 303);
}

function entryOf(request, path, typed, person, tried) {
  const from = request.referrer ? new URL(request.referrer).pathname : '/home';
  return {
    id: crypto.randomUUID(),
    once: typed.get('once'),
    person,
    action: path,
    // a refused form stands at the address it was sent to, which no reader can open
    page: from.startsWith('/steps/') ? from.replace(/\/report.*/, '') : from,
    parts: (request.headers.get('Content-Type') || '').startsWith('multipart'),
    fields: [...typed].filter(([name]) => name !== 'csrf-token'),
    at: Date.now(),
    tried,
    refused: null,
  };
}

/** The same form sent again, before anything of it went out, takes the place of the first. */
async function keep(entry) {
  const same = (await Kept.entries()).find(one => one.once === entry.once && !one.tried);
  if (same) {
    entry.id = same.id;
  }
  const bytes = entry.fields.reduce((sum, [, value]) => sum + (value.size || 0), 0);
  if (bytes > MOST_PHOTO_BYTES) {
    return Kept.put(withoutPhotos(entry, 'The photos have more than 25 MB together.'));
  }
  try {
    return await Kept.put(entry);
  } catch (full) {
    return Kept.put(withoutPhotos(entry, 'This phone has no room for the photos.'));
  }
}

/** The words are kept in any case, and the person is told what is missing. */
function withoutPhotos(entry, why) {
  entry.fields = entry.fields.filter(([, value]) => typeof value === 'string');
  entry.refused = `${why} Your words are kept: open the form and choose fewer or smaller photos.`;
  return entry;
}

/** Whoever sees the sign-in page is not signed in: copies go; entries wait for their person. */
async function signInPage(request) {
  await Kept.forgetPages();
  return fetch(request);
}

async function signOut(request) {
  try {
    const answer = await fetch(request);
    if (answer.type === 'opaqueredirect') {
      await Kept.forget();
    }
    return answer;
  } catch (noConnection) {
    await Kept.forget();
    return html(plain('You are still signed in',
      '<p>What this phone kept is thrown away. Without a connection the service cannot end your'
      + ' sign-in: sign out once more when there is one.</p>', ''), 503);
  }
}

/** Instead of a page that is not kept: which ones are. */
async function notKept() {
  const person = await Kept.person().catch(() => null);
  const links = [];
  for (const path of person ? await Kept.paths() : []) {
    const copy = await Kept.page(path);
    const title = copy && /<title>([^<]*)/.exec(copy.html);
    if (title) {
      links.push(`<li><a class="row" href="${path}">${title[1].split(' · ')[0]}</a></li>`);
    }
  }
  const list = links.length
    ? `<p>These pages are kept on this phone:</p><ul class="plain">${links.join('')}</ul>`
    : '<p>Try it again where there is reception.</p>';
  const scripts = person
    ? '<script src="/reception-store.js" defer></script>'
      + `<script src="/reception.js" data-kept="yes" data-person="${person}" defer></script>`
    : '';
  return html(plain('No connection', `<p>This page is not kept on this phone.</p>${list}`, scripts), 503);
}

function plain(title, body, scripts) {
  return '<!DOCTYPE html><html lang="en"><head><meta charset="utf-8">'
    + '<meta name="viewport" content="width=device-width, initial-scale=1">'
    + `<title>${title} · Ripewood</title><link rel="stylesheet" href="/style.css">${scripts}</head>`
    + '<body><header class="masthead"><a class="brand" href="/">Ripewood</a></header>'
    + `<main id="main" tabindex="-1"><div class="stack"><h1>${title}</h1>${body}</div></main></body></html>`;
}

function html(text, status) {
  const headers = {
    'Content-Type': 'text/html; charset=UTF-8',
    'Content-Security-Policy': POLICY,
    'Cache-Control': 'no-store',
  };
  return new Response(text, {status, headers});
}
