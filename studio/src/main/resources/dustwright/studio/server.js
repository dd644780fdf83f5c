// Talks to the studio. Answers of a request that was overtaken by a newer one of its kind are dropped.
const running = new Map();

export async function ask(kind, path, parameters = {}) {
  const mine = (running.get(kind) ?? 0) + 1;
  running.set(kind, mine);
  const query = new URLSearchParams(parameters).toString();
  const answer = await reached(query ? `${path}?${query}` : path);
  if (running.get(kind) !== mine) return null;
  if (!answer.ok) throw new NoAnswer(why(answer));
  return answer.content;
}

// Why there is no answer, in words a person can act on.
export class NoAnswer extends Error {}

export const AWAY = 'The studio is not answering. What was kept is kept; this page asks again by itself.';

// Hears of each request whether it was answered, met nobody (away) or nobody signed in (out).
let reach = () => {};
export function onReach(told) { reach = told; }

async function reached(path, options) {
  let answer;
  let content;
  try {
    answer = await fetch(path, options);
    const text = await answer.text();
    content = (answer.headers.get('Content-Type') ?? '').includes('json') ? JSON.parse(text) : text;
  } catch {
    reach('away');
    throw new NoAnswer(AWAY);
  }
  reach(answer.status === 401 ? 'out' : 'answers');
  return {ok: answer.ok, status: answer.status, content};
}

// The studio gives its reasons as why; what gives none is not the studio, or a fault of it.
const why = ({status, content}) => content?.why ?? `No reason was given (${status}): the studio failed, or a program before it. What was kept is kept; try again.`;

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
  const file = body instanceof Blob;
  let answer;
  try {
    answer = await reached(path, {method: 'POST', headers: {'Content-Type': file ? 'application/octet-stream' : 'application/json', 'X-Dustwright': 'studio'}, body: file ? body : JSON.stringify(body)});
  } catch {
    return {ok: false, away: true, stale: false, content: {why: 'Not done and not kept: the studio is not answering. Do it again once it answers.'}};
  }
  const told = typeof answer.content === 'object';
  return {ok: answer.ok && told, stale: answer.status === 409, content: told && (answer.ok || answer.content.why) ? answer.content : {why: why(answer)}};
}

// A version that is told while a change of this page is under way is most likely its own: it is passed on once the page has that answer.
let changing = 0;
export const busy = () => changing > 0;
let told = null;
let pass = () => {};

function changed() {
  if (--changing === 0 && told !== null) setTimeout(() => { const version = told; told = null; if (version !== null) pass(version); });
}

// What was told while the line was down is missed: a line that is open again has the page look anew.
let opened = false;

export function onVersion(heard, broken) {
  pass = heard;
  connect(heard, broken);
}

// A browser asks again by itself where nothing answers, but not where it was refused, as after signing out.
function connect(heard, broken) {
  const events = new EventSource('/api/events');
  events.addEventListener('version', event => { if (changing) told = Number(event.data); else heard(Number(event.data)); });
  events.onopen = () => { if (opened) heard(-1); opened = true; };
  events.onerror = () => {
    broken();
    if (events.readyState === EventSource.CLOSED) setTimeout(() => connect(heard, broken), 5000);
  };
}
