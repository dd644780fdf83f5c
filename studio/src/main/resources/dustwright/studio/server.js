// Talks to the studio. Answers of a request that was overtaken by a newer one of its kind are dropped.
const running = new Map();

export async function ask(kind, path, parameters = {}) {
  const mine = (running.get(kind) ?? 0) + 1;
  running.set(kind, mine);
  const query = new URLSearchParams(parameters).toString();
  const answer = await fetch(query ? `${path}?${query}` : path);
  const content = (answer.headers.get('Content-Type') ?? '').includes('json') ? await answer.json() : await answer.text();
  if (running.get(kind) !== mine) return null;
  if (!answer.ok) throw new Error(typeof content === 'string' ? content : content.why ?? content.title ?? 'no answer');
  return content;
}

// The set shown, as parameters of a request for its colours.
let colours = () => ({});
export function onColours(asked) { colours = asked; }

// A change of the plant: the plant it answers brings these colours along, and how they were asked for.
export async function changePlant(path, body) {
  const how = colours();
  const result = await change(`${path}?${new URLSearchParams(how)}`, body);
  if (!result.ok) return result;
  (result.content.plant ?? result.content).how = how;
  // Colours that were asked for before are of another plant.
  running.set('set', (running.get('set') ?? 0) + 1);
  return result;
}

// A change is kept when this says ok; where nothing answers it says away, and why in words.
export async function change(path, body) {
  changing++;
  try { return await sent(path, body); } finally { changed(); }
}

async function sent(path, body) {
  let answer;
  try {
    answer = await fetch(path, {method: 'POST', headers: {'Content-Type': 'application/json', 'X-Dustwright': 'studio'}, body: JSON.stringify(body)});
  } catch {
    unheard();
    return {ok: false, away: true, stale: false, content: {why: 'Not done and not kept: the studio is not answering. Do it again once it answers.'}};
  }
  return {ok: answer.ok, stale: answer.status === 409, content: await answer.json()};
}

// A version that is told while a change of this page is under way is most likely its own: it is passed on once the page has that answer.
let changing = 0;
export const busy = () => changing > 0;
let told = null;
let pass = () => {};

function changed() {
  if (--changing === 0 && told !== null) setTimeout(() => { const version = told; told = null; if (version !== null) pass(version); });
}

let unheard = () => {};

// Told when a change met nobody.
export function onUnheard(told) { unheard = told; }

export function onVersion(heard, lost) {
  pass = heard;
  connect(heard, lost);
}

// A browser asks again by itself where nothing answers, but not where it was refused, as after signing out.
function connect(heard, lost) {
  const events = new EventSource('/api/events');
  events.addEventListener('version', event => { if (changing) told = Number(event.data); else heard(Number(event.data)); });
  events.onopen = () => heard(-1);
  events.onerror = () => {
    lost();
    if (events.readyState === EventSource.CLOSED) setTimeout(() => connect(heard, lost), 5000);
  };
}
