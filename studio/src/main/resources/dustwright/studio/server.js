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

export async function change(path, body) {
  const answer = await fetch(path, {method: 'POST', headers: {'Content-Type': 'application/json', 'X-Dustwright': 'studio'}, body: JSON.stringify(body)});
  return {ok: answer.ok, stale: answer.status === 409, content: await answer.json()};
}

const listeners = [];
let events = null;

function listen(name, heard) {
  listeners.push([name, heard]);
  events?.addEventListener(name, heard);
}

export function onFloorPlan(heard) { listen('floorplan', heard); }

export function onVersion(heard, lost) {
  listen('version', event => heard(Number(event.data)));
  connect(() => heard(-1), lost);
}

// A browser asks again by itself where nothing answers, but not where it was refused, as after signing out.
function connect(again, lost) {
  events = new EventSource('/api/events');
  for (const [name, heard] of listeners) events.addEventListener(name, heard);
  events.onopen = again;
  events.onerror = () => {
    lost();
    if (events.readyState === EventSource.CLOSED) setTimeout(() => connect(again, lost), 5000);
  };
}
