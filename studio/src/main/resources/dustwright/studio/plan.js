// The plan: one set of open inlets, drawn and judged; what is chosen; the way back.
import {AWAY, NoAnswer, ask, busy, change, changePlant, onColours, onReach, onVersion} from './server.js';
import {Drawing} from './drawing.js';
import {element} from './element.js';
import {FloorPlan} from './floorplan.js';
import {findingRow, marginBar} from './findingrow.js';
import {Hand, shownAs} from './hand.js';
import {handPanel} from './handpanel.js';
import {Compare} from './compare.js';
import {Extend} from './extend.js';
import {Figures} from './figures.js';
import {People} from './people.js';
import {Machines} from './machines.js';
import {Panel} from './panel.js';
import {Papers} from './papers.js';
import {Sequence} from './sequence.js';
import {Terms} from './terms.js';
import {Text} from './text.js';
import {Tour} from './tour.js';
import {Unsent} from './unsent.js';

const at = id => document.getElementById(id);
// The columns lie below each other.
const SMALL = matchMedia('(max-width: 560px)');
const state = {plant: null, open: [], filter: 'normal', dust: 'yes', view: 'plan', units: null, kind: '', id: '', place: 'plan', finding: -1, scale: [], set: null, worst: 0, users: null};
const drawing = new Drawing(at('drawing'), choose);
const panel = new Panel(() => state.units, say, cells => { if (state.place === 'panel') block(cells); });
const sequence = new Sequence(() => at('panelstation').value, () => panel.begin(), () => place('panel'), say);
const compare = new Compare({version: () => state.plant.version, asked: () => asked(), adopt: plant => adopt(plant)}, say);
const extend = new Extend({version: () => state.plant.version, units: () => state.units, show: (kind, id) => { if (kind === 'run' || kind === 'inlet') { place('plan'); state.kind = kind; state.id = id; drawing.mark(kind, id); drawing.inSight(kind, id); figuresShown(); profile(); } }}, say);
const terms = new Terms();
const machines = new Machines(() => asked(), () => toAddress(), (...roots) => terms.mark(...roots));
const papersMade = new Papers(() => state.units, (...roots) => terms.mark(...roots));
const text = new Text(plant => adopt(plant), say);
const floor = new FloorPlan(drawing, {say, length: metres => hand.length(metres), typed: words => hand.typed(words), why: () => hand.why, panel: () => { if (hand.mode === 'floor') hand.panel(); }});
const hand = new Hand(drawing, {
  floor, cross: at('cross'), choice: () => state,
  view: () => state.view, units: () => state.units, version: () => state.plant.version, chosen: () => state.kind === 'inlet' ? state.id : '',
  adopt: plant => adopt(plant), reload: () => load(), say, panel: () => handPanel(at('hand'), at('hint'), hand, say),
  unsent: {keepDrawn: (...drawn) => unsent.keepDrawn(...drawn)}, notAnswering: () => unanswered(),
  shown: place => {
    const kind = place ? shownAs(place) : '';
    if (kind === state.kind && (place?.id ?? '') === state.id) return;
    state.kind = kind; state.id = place?.id ?? '';
    drawing.mark(state.kind, state.id); figuresShown(); toAddress();
  },
  choose: (kind, id) => { state.kind = kind; state.id = id; drawing.mark(kind, id); piece(); toAddress(); }, part: path => part(path),
});

const people = new People(say, () => { papers(); since(); }, () => state.units);
const unsent = new Unsent(say);
const tour = new Tour(state, tools);
const figures = new Figures(at('piece'), {
  version: () => state.plant.version, adopt: plant => adopt(plant), load: () => load(), unsent, notAnswering: () => unanswered(), show: path => part(path), below: () => [at('reading')],
  around: () => [...(drawn() ? [element('button', {type: 'button', title: 'z', on: () => drawing.to(state.kind, state.id)}, 'Show it')] : []),
    ...(state.kind === 'run' && people.designs ? [element('button', {type: 'button', id: 'split', title: 'Where it was clicked, else in the middle of its longest straight', on: () => hand.split(state.id, drawing.cut?.at)}, 'Split'), element('button', {type: 'button', on: () => hand.act({what: 'take tube away', run: state.id}, () => 'The tube is taken away. Back undoes that.')}, 'Take away')] : []),
    element('button', {type: 'button', on: () => { state.kind = ''; drawing.mark(); piece(); toAddress(); }}, 'Done')],
});

// Whether requests are answered, meet nobody (away), or nobody signed in (out).
let reach = 'answers';
const ASKS_ms = 2000;

// What was left behind stands behind whatever is said first of it.
function say(words, hold = 6000) {
  const behind = state.leftBehind;
  state.leftBehind = '';
  at('say').textContent = [words, behind].filter(Boolean).join(' ');
  if (behind && hold) hold = 15000;
  if (words && reach === 'out') at('say').append(' ', element('a', {href: '/sign-in', target: '_blank', rel: 'noopener'}, 'Sign in on a page of its own'));
  clearTimeout(say.timer);
  if (hold) say.timer = setTimeout(() => { at('say').textContent = ''; }, hold);
}

const asked = () => ({open: state.open.join('\n'), filter: state.filter, dust: state.dust, view: state.view, units: state.units});
const along = () => drawn() ? {kind: state.kind, id: state.id} : {};

// ------------------------------------------------------------------ the plant and its set

async function load() {
  const plant = await ask('plant', '/api/plant');
  if (plant) await adopt(plant);
}

// What another page did that could be missed: a step taken back, or one that was left behind.
async function hear() {
  const before = state.plant;
  await load();
  const [now, who] = [state.plant, state.plant.mover || 'Another page'];
  if (before && now.version > before.version && now.step < before.step) say(`${who} went back to step ${now.step}: ${quoted(before.what)} is undone. Forth brings it again.`, 15000);
}

async function adopt(plant) {
  const first = !state.plant;
  if (!first && plant.left && plant.version > state.plant.version) state.leftBehind = `${plant.left === 1 ? 'One step that was' : `${plant.left} steps that were`} taken back ${plant.left === 1 ? 'is' : 'are'} left behind by ${plant.author ? `this step of ${plant.author}` : 'this step'}. Papers lists ${plant.left === 1 ? 'it' : 'them'}, to be taken up again.`;
  state.plant = plant;
  state.units ??= plant.units;
  if (first) fromAddress(plant);
  state.open = state.open.filter(id => plant.inlets.includes(id));
  at('name').textContent = plant.name;
  at('name').title = plant.note;
  document.title = `${plant.name}: studio`;
  if (plant.floor !== floor.plan.number) floor.load().catch(why => say(why.message));
  at('kept').textContent = plant.faults.length ? `${plant.file}, step ${plant.step}, kept with ${plant.faults.length === 1 ? 'a fault' : plant.faults.length + ' faults'}: what is shown is of the plant before` : `${plant.file}, step ${plant.step}, kept · ${plant.assumptions} assumptions, ${plant.overrides} overrides`;
  at('units').textContent = state.units === 'us' ? 'US units' : 'SI units';
  text.faults(plant.faults);
  at('begin').hidden = plant.known;
  at('scale').classList.add('stale');
  if (plant.faults.length) say(`The text has ${plant.faults.length === 1 ? 'a fault' : plant.faults.length + ' faults'}: see Text. The drawing shows the plant before it.`);
  if (!plant.known) { at('judged').textContent = at('worstof').textContent = ''; at('scale').replaceChildren(); at('scale').classList.remove('stale'); if (state.place === 'text') await text.load(); return; }
  if (plant.shown.length && JSON.stringify(plant.how) === JSON.stringify(colours())) show(plant.shown[0]); else await solve();
  await painted();
  follow(plant);
  await Promise.all([hand.load(), plant.faults.length ? null : figuresShown(), state.place === 'text' ? text.load() : null]);
  setTimeout(() => { if (state.leftBehind) say(''); });
  if (first) tour.first(plant.demo);
}

// The rest once nobody has changed anything for a moment, and of the newest plant alone.
async function follow(plant) {
  do await new Promise(on => setTimeout(on, SOON_ms)); while (busy());
  if (state.plant !== plant) return;
  await Promise.all([sets(), since(), state.place === 'machines' ? machines.load() : null, state.place === 'extend' ? extend.load() : null, state.place === 'papers' ? papersMade.load() : null]);
}

// Once the colours are seen, or soon where nobody looks.
const painted = () => new Promise(on => { requestAnimationFrame(() => setTimeout(on)); setTimeout(on, SOON_ms); });

const colours = () => ({...asked(), part: 'drawing', had: drawing.number});
onColours(colours);

async function solve() {
  const waiting = setTimeout(() => at('drawing').classList.add('stale'), 400);
  try {
    const set = await ask('set', '/api/set', colours());
    if (set) show(set);
  } catch (why) {
    at('drawing').classList.add('stale');
    say(why.message);
  } finally {
    clearTimeout(waiting);
  }
}

function show(set) {
  state.set = set;
  state.told = false;
  state.how = asked();
  draw(set);
  index();
  painted().then(toAddress);
}

// The colours first: what is written of them is asked for when they are seen, and not where the next set is asked for meanwhile.
const SOON_ms = 60;

function draw(set) {
  if (set.solved) drawing.show(set.drawing, set.sheet, set.drawn);
  at('drawing').classList.toggle('stale', !set.solved);
  performance.clearMarks();
  performance.mark('drawn');
  changed();
  drawing.mark(state.kind, state.id);
  requestAnimationFrame(() => setTimeout(() => words(set).catch(why => say(why.message)), SOON_ms));
}

async function words(set) {
  if (state.set !== set) return;
  const way = along();
  const told = await ask('words', '/api/set', {...state.how, ...way, findings: state.rest ? 'all' : 'prominent', part: 'words'});
  // Of another version: the page is about to ask anew.
  if (!told || state.set !== set || told.version !== set.version) return;
  state.set = told;
  state.told = true;
  tell(told, JSON.stringify(way) === JSON.stringify(along()));
}

function tell(set, alongStill) {
  if (!set.solved) say(`No answer for this set: ${set.why}`, 0); else if (at('say').textContent.startsWith('No answer')) say('');
  if (alongStill) at('profile').innerHTML = set.profile; else profile();
  at('setname').textContent = set.set;
  if (state.place !== 'panel') block(set.block);
  findings(set);
  shownStation(set);
  if (drawn()) at('reading').textContent = reading(state.kind, state.id);
  pressed('[data-view]', 'view');
  pressed('[data-filter]', 'filter');
  pressed('[data-dust]', 'dust');
}

function block(cells) {
  if (state.plant?.faults.length) cells = cells.map(cell => cell.name === 'State' ? {name: 'State', value: 'of the plant before the faults in its text'} : cell);
  at('block').replaceChildren(...cells.map(cell => element('div', {}, element('small', {}, cell.name), cell.value)));
}

// Along the way through what is chosen.
async function profile() {
  if (!state.set?.solved) return;
  const drawn = await ask('profile', '/api/profile', {...state.how, ...along()});
  if (drawn !== null) at('profile').innerHTML = drawn;
}

// What the air does in a piece of the set shown.
function reading(kind, id) {
  if (!state.told) return '';
  const all = state.set.readings;
  return (kind === 'run' ? all.runs[id] : all.inlets[id]) ?? (kind === 'run' ? 'hardly any air in this set' : '');
}

function pressed(what, key) {
  for (const button of document.querySelectorAll(what)) button.setAttribute('aria-pressed', button.dataset[key] === state[key]);
}

function toggle(inlet) {
  state.open = state.open.includes(inlet) ? state.open.filter(id => id !== inlet) : [...state.open, inlet];
  if (at('say').textContent === state.toldSet) say('');
  state.finding = -1;
  return solve();
}

function choose(kind, id, where) {
  state.kind = kind;
  state.id = id;
  drawing.cut = kind === 'run' && where ? {run: id, at: where} : null;
  // The colours first: what is written of the piece follows.
  if (kind === 'inlet' && hand.mode === 'look') { toggle(id).then(figuresSoon); return; }
  drawing.mark(kind, id);
  profile();
  piece();
  toAddress();
}

// ------------------------------------------------------------------ findings

function findings(set) {
  const shown = set.findings;
  state.shown = shown;
  const rows = shown.map((one, n) => findingRow(one, n === state.finding, () => { go(n); derive(); }));
  const more = element('div', {class: 'rest'}, `${set.rest} ${set.rest === 1 ? 'requirement holds' : 'requirements hold'} with +10 % or more, or by design`,
    element('button', {type: 'button', on: () => { state.rest = !state.rest; solve(); }}, state.rest ? 'hide' : 'show'));
  at('findings').replaceChildren(...rows, ...(set.rest ? [more] : []), ...(set.findings.length + set.rest ? [] : [element('div', {class: 'rest'}, 'Nothing is asked in this set.')]));
}

function go(n) {
  if (!state.shown?.length) return;
  state.finding = Math.max(0, Math.min(state.shown.length - 1, n));
  const one = state.shown[state.finding];
  [...at('findings').children].forEach((child, i) => child.setAttribute('aria-current', String(i === state.finding)));
  at('findings').children[state.finding]?.scrollIntoView({block: 'nearest'});
  const kind = one.kind === 'run' ? 'run' : one.kind === 'inlet' || one.kind === 'hose' ? 'inlet' : '';
  if (kind) { state.kind = kind; state.id = one.place.replace(/\/hose$/, ''); drawing.mark(kind, state.id); drawing.inSight(kind, state.id); piece(); profile(); }
}

async function derive() {
  const one = state.shown?.[state.finding];
  if (!one) return;
  const markup = await ask('derivation', '/api/derivation', {...state.how, finding: one.id});
  if (!markup) return;
  at('steps').innerHTML = markup;
  at('steps').querySelector('.finding')?.after(marginBar(one));
  terms.mark(at('steps'));
  at('steps').prepend(element('button', {type: 'button', on: underive}, 'Back to the drawing'));
  at('steps').hidden = false;
  if (SMALL.matches) { at('steps').scrollIntoView({block: 'start'}); at('steps').focus({preventScroll: true}); }
}

function underive() {
  at('steps').hidden = true;
  (SMALL.matches && at('findings').children[state.finding] || at('drawing')).focus();
}

// ------------------------------------------------------------------ the chosen piece

const SECTIONS = {run: 'runs', inlet: 'inlets', point: 'points', station: 'stations'};
const pathOf = ({kind, id}) => kind === 'part' ? id : kind === 'panel' ? 'panel' : kind ? `${SECTIONS[kind]}.${id}` : null;

async function piece() {
  hand.follow(state);
  const path = pathOf(state);
  at('reading').textContent = drawn() ? reading(state.kind, state.id) : '';
  if (path === null) { at('piece').after(at('reading')); figures.hide(); return; }
  await figures.show(path);
  if (at('split')) at('split').textContent = drawing.cut ? 'Split here' : 'Split';
}

// Whether what is chosen is a tube or an inlet of the drawing.
function drawn() { return state.kind === 'run' || state.kind === 'inlet'; }

// Where the column with what is chosen is not seen, to the place where it is.
function onPlan() { if (at('findingscolumn').hidden || at('findingscolumn').classList.contains('words')) place('plan'); }

// A part of the plant file, chosen by its path; a tube or an inlet is one of the drawing.
function part(path) {
  onPlan();
  const [, section, id] = /^(runs|inlets)\.(.+)$/.exec(path) ?? [];
  const piece = section && drawing.pieces().find(one => (section === 'runs' ? one.dataset.run : one.dataset.inlet) === id);
  state.kind = piece ? section.slice(0, -1) : 'part';
  state.id = piece ? id : path;
  drawing.mark(piece ? state.kind : '', piece ? id : '');
  piece && profile();
  toAddress();
  return figuresShown();
}

function figuresSoon() { clearTimeout(figuresSoon.timer); figuresSoon.timer = setTimeout(figuresShown, SOON_ms); }

async function figuresShown() { try { await piece(); } catch (why) { say(why.message); } }

// ------------------------------------------------------------------ the hand

async function take(mode) {
  if (state.plant && !state.plant.known) mode = 'look';
  if (!people.designs && !['look', 'measure'].includes(mode)) { say(people.may); mode = 'look'; }
  tools(false);
  await hand.set(mode);
  for (const button of document.querySelectorAll('[data-hand]')) if (button.tagName === 'BUTTON') button.setAttribute('aria-pressed', String(button.dataset.hand === hand.mode));
}

// ------------------------------------------------------------------ since the last revision

async function since() {
  const told = await ask('since', '/api/since');
  if (!told) return;
  state.since = told;
  state.changed = told.pieces;
  changed();
  at('since').hidden = !told.pieces.length && !told.parts.length;
  if (at('since').hidden) return;
  const words = what => told.pieces.filter(one => one.what === what).length;
  const counts = ['new', 'changed', 'gone'].filter(words).map(what => `${words(what)} ${what}`);
  at('sincewords').textContent = [...counts, ...told.parts].join(', ');
  at('sincehead').textContent = `Since revision ${told.revision}`;
  at('sincelist').replaceChildren(...told.pieces.slice(0, 60).map(one => element('li', {},
    one.what === 'gone' || one.kind === 'station' ? `${one.kind} ${one.id} ${one.what}`
      : element('button', {type: 'button', on: () => { onPlan(); state.kind = one.kind; state.id = one.id; drawing.mark(one.kind, one.id); piece(); toAddress(); }}, `${one.kind === 'run' ? 'tube' : one.kind} ${one.id} ${one.what}`))),
    ...(told.pieces.length > 60 ? [element('li', {}, `and ${told.pieces.length - 60} more: see Compare`)] : []));
}

// On the drawing a band lies under what is new or changed.
function changed() {
  const changed = new Set((state.changed ?? []).filter(one => one.what !== 'gone').map(one => `${one.kind} ${one.id}`));
  for (const piece of drawing.pieces()) piece.classList.toggle('changed', changed.has(piece.dataset.inlet ? `inlet ${piece.dataset.inlet}` : `run ${piece.dataset.run}`));
}

// ------------------------------------------------------------------ the users scale

// Asked again after a while, and not while a change is under way: that one is waited for, and asks itself.
function later(asks, after_ms) {
  clearTimeout(asks.timer);
  asks.timer = setTimeout(() => { if (busy()) later(asks, after_ms); else asks(); }, after_ms);
}

async function sets() {
  clearTimeout(sets.timer);
  const progress = await ask('sets', '/api/sets');
  if (!progress) return;
  const done = progress.scale.length > 0 || progress.all === 0;
  if (!done) at('worstof').textContent = 'of the plant before';
  at('judged').textContent = done ? `${progress.done} of ${progress.all} sets solved: those the plant file names and every single user.` : `solving, ${progress.done} of ${progress.all} sets`;
  if (!done) { later(sets, 250); return; }
  at('worstof').textContent = 'worst of the sets asked';
  scale(progress.scale);
  covered();
}

at('coverstop').addEventListener('click', () => change('/api/coverage/stop', {version: state.plant.version}));

// Every set, behind the page; the scale is that of all sets once they are covered.
async function covered() {
  clearTimeout(covered.timer);
  const progress = await ask('coverage', '/api/coverage', {units: state.units});
  if (!progress || progress.version !== state.plant.version) return;
  at('coverstop').hidden = progress.done;
  at('coveredof').textContent = `Coverage of every set: ${progress.done ? progress.verdict : `not finished, ${Math.min(99, Math.floor(100 * progress.share))} % done.`}`;
  if (!progress.done) {
    at('judged').textContent = `covering every set, ${Math.min(99, Math.floor(100 * progress.share))} % done; shown are those the plant file names and every single user`;
    later(covered, 400);
    return;
  }
  if (!progress.scale.length) { at('judged').textContent = progress.verdict; return; }
  at('judged').textContent = `${progress.verdict} ${progress.asked} Filter clean and dirty, with dust and without.`;
  at('worstof').textContent = 'worst of all sets';
  scale(progress.scale);
}

function scale(stations) {
  state.scale = stations;
  at('scale').classList.remove('stale');
  at('scale').replaceChildren(...stations.map(station => onScale(station, {'data-users': String(station.users), on: () => users(station.users)}, element('small', {class: 'nth'}))));
  index();
  if (state.told) shownStation(state.set);
}

function onScale(station, attributes, ...more) {
  return element('button', {type: 'button', role: 'radio', ...attributes},
    station.users === 0 ? 'All closed' : station.users === 1 ? '1 user' : `${station.users} users`,
    element('small', {}, element('span', {class: station.marginClass, 'aria-hidden': 'true'}, station.glyph), ` ${station.margin}`),
    element('small', {}, station.words), ...more);
}

// The index stands at the station one of whose sets is shown, and at none where it is another set.
function index() {
  const shown = one => one.filter === state.filter && one.dust === (state.dust === 'yes') && one.open.length === state.open.length && one.open.every(id => state.open.includes(id));
  const station = state.scale.find(one => one.worst.some(shown));
  state.users = station?.users ?? null;
  state.worst = station ? station.worst.findIndex(shown) : -1;
  for (const button of at('scale').querySelectorAll('[data-users]')) {
    const here = button.dataset.users === String(state.users);
    button.setAttribute('aria-checked', String(here));
    button.querySelector('.nth').textContent = here && station.worst.length > 1 ? `set ${state.worst + 1} of ${station.worst.length}, worst first` : '';
  }
  if (station) at('own')?.remove();
}

// A set that is none of the worst is a station of its own, with its own margin, and says there where it is not asked.
function shownStation(set) {
  at('own')?.remove();
  if (state.users === null && state.scale.length) at('scale').append(...set.station.map(station => onScale(station, {id: 'own', 'aria-checked': 'true'})));
}

function users(number, step = 0, aloud = false) {
  const station = state.scale.find(one => one.users === number);
  if (!station) { say(`No set with ${number} users is asked.`); return; }
  const nth = Math.max(0, Math.min(station.worst.length - 1, step));
  const worst = station.worst[nth];
  state.open = [...worst.open];
  state.filter = worst.filter;
  state.dust = worst.dust ? 'yes' : 'no';
  state.finding = -1;
  // One who clicks reads it on the scale.
  state.toldSet = `${worst.name}: ${worst.margin}. Set ${nth + 1} of ${station.worst.length}, worst first.`;
  if (aloud) say(state.toldSet);
  solve();
}

// ------------------------------------------------------------------ places, address, keys

function place(name) {
  state.place = name;
  for (const button of document.querySelectorAll('[data-place]')) {
    if (button.dataset.place === name) { button.setAttribute('aria-current', 'page'); button.scrollIntoView({block: 'nearest', inline: 'nearest'}); } else button.removeAttribute('aria-current');
  }
  at('plan').hidden = at('profile').hidden = document.querySelector('.users').hidden = name !== 'plan';
  at('text').hidden = name !== 'text';
  at('papers').hidden = name !== 'papers';
  at('compare').hidden = name !== 'compare';
  at('extend').hidden = name !== 'extend';
  at('machines').hidden = at('machinescolumn').hidden = name !== 'machines';
  at('rehearse').hidden = name !== 'panel';
  at('panel').hidden = name !== 'panel' || sequence.shown;
  at('sequence').hidden = name !== 'panel' || !sequence.shown;
  at('findingscolumn').hidden = name === 'panel' || name === 'machines';
  // Findings stand beside the drawing they are of; elsewhere the column has words and what changed.
  at('findingscolumn').classList.toggle('words', ['compare', 'extend', 'papers'].includes(name) || (name === 'text' && SMALL.matches));
  if (name === 'text') text.load();
  if (name === 'machines') machines.load();
  if (name === 'papers') papers();
  if (name === 'compare') compare.load();
  if (name === 'extend') extend.load();
  if (name === 'panel') { panel.titles(); panelLoad(); } else { panel.run(false); if (state.told) block(state.set.block); }
  toAddress();
}

function panelLoad() { return panel.load().catch(why => { at('panelwhy').textContent = why.message; }); }

async function papers() {
  papersMade.load();
  const revisions = await ask('revisions', '/api/revisions');
  if (!revisions) return;
  at('revisions').replaceChildren(...revisions.map(one => element('li', {value: one.number}, `${time(one.at)}, ${one.author}${one.note ? ': ' + one.note : ''} `,
    ...people.signed(one, revisions), element('button', {type: 'button', on: () => again(one)}, 'Work on from here'))));
  const left = await ask('left', '/api/left');
  if (left) {
    at('leftbehind').hidden = !left.length;
    at('left').replaceChildren(...left.slice(0, 200).map(one => element('li', {}, `Step ${one.number}${one.author ? ` by ${one.author}` : ''}${one.at ? `, ${time(one.at)}` : ''}: ${quoted(one.what)}, left behind${one.leaver ? ` by ${one.leaver}` : ''} ${time(one.leftAt)} `, element('button', {type: 'button', on: () => takeUp(one)}, 'Work on from here'))), ...(left.length > 200 ? [element('li', {}, `and ${left.length - 200} more, older ones`)] : []));
  }
  if (!revisions.length) at('revisions').replaceChildren(element('li', {class: 'none'}, 'None yet. Accepting keeps the plant as it stands now.'));
}

const time = at => at.replace('T', ' ').replace('Z', ' UTC');

async function takeUp(one) {
  const result = await changePlant('/api/left', {version: state.plant.version, left: one.version});
  if (result.ok) { await adopt(result.content); say(`The plant of step ${one.number} is the working copy now. Back undoes that.`); papers(); } else say(result.content.why);
}

async function again(revision) {
  const result = await changePlant('/api/text', {version: state.plant.version, text: revision.text});
  if (result.ok) { await adopt(result.content); say(`Revision ${revision.number} is the working copy now. Back undoes that.`); } else say(result.content.why);
}

// Steps asked for one after the other are walked one after the other, however quickly.
let walked = Promise.resolve();
function walk(steps, over, version) { walked = walked.then(() => step(steps, over, version)).catch(why => say(why.message)); }

const quoted = what => what.length > 80 ? `“${what.slice(0, 80)}…”` : `“${what}”`;

async function step(steps, over = '', version = state.plant.version) {
  if (text.typed) { place('text'); say('Something is typed here and not taken. Take it or let go of it, then walk on.', 12000); return; }
  const result = await changePlant('/api/walk', {version, steps, over});
  if (result.ok) { const undone = state.plant.what; await adopt(result.content); say(steps < 0 ? `One step back: ${quoted(undone)} is undone.` : `One step forth: ${quoted(result.content.what)}.`); return; }
  say(result.content.why, result.content.whose ? 0 : 6000);
  if (result.content.whose) at('say').append(' ', element('button', {type: 'button', on: () => walk(steps, result.content.whose, version)}, `Take back what ${result.content.whose} did`));
  if (result.stale) load();
}

function toAddress() {
  const parts = new URLSearchParams({open: state.open.join(','), filter: state.filter, dust: state.dust, view: state.view, units: state.units ?? '', place: state.place});
  if (state.kind) parts.set(state.kind, state.id);
  if (state.place === 'machines') parts.set('sets', machines.sets);
  // A browser takes long to note an address, even the one it has.
  if (state.address === `#${parts}`) return;
  state.address = `#${parts}`;
  history.replaceState(null, '', state.address);
}

function fromAddress(plant) {
  const parts = new URLSearchParams(location.hash.slice(1));
  state.open = parts.has('open') ? parts.get('open').split(',').filter(Boolean) : plant.opened;
  state.filter = parts.get('filter') || 'normal';
  state.dust = parts.get('dust') || 'yes';
  state.view = parts.get('view') || 'plan';
  state.units = parts.get('units') || plant.units;
  for (const kind of ['run', 'inlet', 'station', 'point', 'part']) if (parts.has(kind)) { state.kind = kind; state.id = parts.get(kind); }
  if (parts.has('sets')) machines.sets = parts.get('sets');
  if (parts.get('place') && parts.get('place') !== 'plan') place(parts.get('place'));
}

function light() {
  const root = document.documentElement;
  const night = root.dataset.light ? root.dataset.light === 'night' : matchMedia('(prefers-color-scheme: dark)').matches;
  root.dataset.light = night ? 'day' : 'night';
  localStorage.setItem('light', root.dataset.light);
}
if (localStorage.getItem('light')) document.documentElement.dataset.light = localStorage.getItem('light');

// On a phone the buttons of register and drawing are folded under one.
function tools(show) {
  at('tools').setAttribute('aria-expanded', String(show));
  document.body.classList.toggle('tools', show);
}

function help(show) {
  if (show) tools(false);
  at('help').hidden = !show;
  at('keys').setAttribute('aria-expanded', String(show));
}

const keys = {
  '/': () => at('find').focus(), a: () => part(''), j: () => nextFinding(1), k: () => nextFinding(-1), Enter: () => { if (state.place === 'machines') machines.open(); else if (!hand.enter()) derive(); }, d: light, '?': () => help(at('help').hidden),
  o: () => { if (state.kind === 'inlet') toggle(state.id); else say('Choose an inlet first.'); },
  '[': () => users(state.users ?? state.scale[0]?.users, state.worst - 1, true), ']': () => users(state.users ?? state.scale[0]?.users, state.worst + 1, true),
  '+': () => drawing.zoom(1.3), '-': () => drawing.zoom(1 / 1.3), 0: () => drawing.all(), 1: () => place('plan'), 2: () => place('text'), 3: () => place('machines'), 4: () => place('panel'), 5: () => place('compare'), 6: () => place('papers'), 7: () => place('extend'),
  ArrowLeft: () => near(-1, 0), ArrowRight: () => near(1, 0), ArrowUp: () => near(0, -1), ArrowDown: () => near(0, 1),
  l: () => take('look'), g: () => take('move'), n: () => take('inlet'), b: () => take('tube'), w: () => take('wall'), s: () => take('machine'), x: () => take('measure'), p: () => take('floor'), Delete: () => hand.takeAway(),
  ' ': () => { if (state.place === 'panel') panel.run(!panel.running); }, e: () => { if (state.place === 'panel') panel.next(); },
  z: () => { if (drawn()) drawing.to(state.kind, state.id); else say('Choose a piece or a finding first.'); },
  v: () => { help(true); at('termsearch').focus(); },
  Escape: () => { if (terms.close() || hand.back()) return; if (!at('help').hidden) help(false); else if (state.place === 'machines') machines.back(); else if (!at('steps').hidden) underive(); else { state.kind = ''; drawing.mark(); piece(); } },
};

function nextFinding(by) {
  if (state.place === 'machines') machines.go(by); else go(state.finding + by);
}

function near(dx, dy) {
  if (hand.walk(dx, dy)) return;
  const next = drawing.towards(state.kind, state.id, dx, dy);
  if (!next) return;
  state.kind = next.dataset.inlet ? 'inlet' : 'run';
  state.id = next.dataset[state.kind];
  drawing.mark(state.kind, state.id);
  next.focus();
  piece();
}

addEventListener('keydown', event => {
  const field = event.target.matches('input, textarea, select');
  if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 'z' && !field) { event.preventDefault(); walk(event.shiftKey ? 1 : -1); return; }
  const arrow = {ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1]}[event.key];
  if (arrow && !field && state.place === 'plan' && hand.cross.step(arrow, event.shiftKey)) { event.preventDefault(); return; }
  if (event.shiftKey && arrow && !field && hand.mode === 'move') { event.preventDefault(); hand.nudge(...arrow, event.altKey); return; }
  if (event.key === 'Escape' && field && event.target.closest('.find, #hand, #cross')) { event.target.blur(); at('drawing').focus(); return; }
  if (event.ctrlKey || event.metaKey || event.altKey || field) return;
  if ((event.key === 'Enter' || event.key === ' ') && event.target.matches('button, a, summary')) return;
  if (state.awaiting && /^[0-9]$/.test(event.key)) { state.awaiting = false; users(Number(event.key), 0, true); return; }
  state.awaiting = event.key === 'u';
  if (state.awaiting) { say('How many users? 0 to 9.'); return; }
  if (Object.hasOwn(keys, event.key)) { event.preventDefault(); keys[event.key](); }
});

for (const button of document.querySelectorAll('[data-view]')) button.addEventListener('click', () => { state.view = button.dataset.view; solve(); hand.load(); });
for (const button of document.querySelectorAll('button[data-hand]')) button.addEventListener('click', () => take(button.dataset.hand));
for (const button of document.querySelectorAll('[data-filter]')) button.addEventListener('click', () => { state.filter = button.dataset.filter; solve(); });
for (const button of document.querySelectorAll('[data-dust]')) button.addEventListener('click', () => { state.dust = button.dataset.dust; solve(); });
for (const button of document.querySelectorAll('[data-place]')) button.addEventListener('click', () => place(button.dataset.place));
for (const button of document.querySelectorAll('[data-zoom]')) button.addEventListener('click', () => ({in: () => drawing.zoom(1.5), out: () => drawing.zoom(1 / 1.5), all: () => drawing.all()})[button.dataset.zoom]());
at('tools').addEventListener('click', () => tools(at('tools').getAttribute('aria-expanded') !== 'true'));
at('figures').addEventListener('click', () => { tools(false); part(''); at('piece').scrollIntoView({block: 'nearest'}); });
at('shut').addEventListener('click', () => { state.open = []; solve(); });
at('back').addEventListener('click', () => walk(-1));
at('forth').addEventListener('click', () => walk(1));
at('light').addEventListener('click', light);
at('tourbegin').addEventListener('click', () => { help(false); place('plan'); tour.begin(); });
at('keys').addEventListener('click', () => help(at('help').hidden));
at('help').addEventListener('keydown', event => { if (event.key === 'Escape') { event.stopPropagation(); help(false); at('keys').focus(); } });
at('units').addEventListener('click', () => { state.units = state.units === 'us' ? 'si' : 'us'; at('units').textContent = state.units === 'us' ? 'US units' : 'SI units'; solve(); covered(); hand.panel(); panel.again(); if (state.place === 'machines') machines.load(); if (state.place === 'compare') compare.show(); if (state.place === 'extend') extend.show(); });
// What can be found: {words, kind, id}; pieces of the drawing are at hand, all else is asked for.
const piecesToFind = () => drawing.pieces().map(one => one.dataset.inlet ? {words: one.dataset.inlet, kind: 'inlet', id: one.dataset.inlet} : {words: one.dataset.run, kind: 'run', id: one.dataset.run});

async function findable() {
  const parts = await Promise.all(['stations', 'points'].map(async path => ((await ask(`find ${path}`, '/api/part', {path}))?.values ?? []).map(one => ({words: one.key, kind: path.slice(0, -1), id: one.key}))));
  return [...piecesToFind(), ...parts.flat(), ...(state.shown ?? []).map((one, n) => ({words: one.claim, kind: 'finding', id: n})), ...(terms.terms ?? []).map(one => ({words: one.term, kind: 'word', id: one.term}))];
}
at('find').addEventListener('focus', async () => {
  const words = new Set((await findable()).map(one => one.words));
  at('pieces').replaceChildren(...[...words].sort().map(value => element('option', {value})));
});
at('find').addEventListener('change', async () => {
  const wanted = at('find').value.trim().toLowerCase();
  const named = one => one.words.toLowerCase() === wanted;
  const piece = piecesToFind().find(named);
  if (piece) { foundPiece(piece); return; }
  const all = await findable();
  const found = all.find(named) ?? all.find(one => ['finding', 'word'].includes(one.kind) && wanted.length > 2 && one.words.toLowerCase().includes(wanted));
  if (!found) { say(`Nothing is called ${at('find').value.trim()}: no inlet, tube, point or station, no finding of this set, no word of the trade.`); return; }
  at('find').value = '';
  say('');
  if (found.kind === 'word') { terms.explain(found.id, at('find')); return; }
  if (found.kind !== 'finding') { foundPiece(found); return; }
  if (state.place !== 'plan') place('plan');
  go(found.id);
  at('findings').children[found.id]?.focus();
});

function foundPiece({kind, id}) {
  at('find').value = '';
  if (state.place !== 'plan') place('plan');
  state.kind = kind; state.id = id;
  drawing.mark(kind, id);
  drawing.inSight(kind, id);
  at('drawing').focus();
  piece();
  profile();
}

at('accept').addEventListener('submit', async event => {
  event.preventDefault();
  const result = await change('/api/accept', {version: state.plant.version, author: at('author').value, note: at('note').value});
  at('accepted').textContent = result.ok ? `Revision ${result.content.number} is kept. ${at('coveredof').textContent}` : result.content.why;
  since();
  if (result.ok) { at('note').value = ''; papers(); } else if (result.stale) load();
});

// Above what is printed: what it is, of which step, whether somebody accepted that, and when; in the words of the papers.
function paperOf() {
  const what = state.place === 'panel' ? 'Rehearsal for training and review, not connected to a plant. ' : '';
  at('paperof').textContent = `${what}Printed ${new Date().toLocaleString('sv-SE').slice(0, 16)}${state.plant ? `; ${state.plant.file}` : ''}. ${state.since ? `${state.since.standing}.` : ''}`;
}

addEventListener('beforeprint', () => { paperOf(); drawing.paper(true); });
addEventListener('afterprint', () => drawing.paper(false));
at('say').addEventListener('click', () => say(''));

// Why there is no answer is told, once where it is the same for all that was asked; anything else is a fault of the page.
addEventListener('unhandledrejection', event => {
  if (!(event.reason instanceof NoAnswer)) { say(`The page failed at this: ${event.reason?.message ?? event.reason}`); return; }
  event.preventDefault();
  if (reach === 'answers') say(event.reason.message);
});

at('starter').addEventListener('click', async () => {
  const starter = await ask('starter', '/api/starter');
  const result = await changePlant('/api/text', {version: state.plant.version, text: starter});
  if (!result.ok) { say(result.content.why); return; }
  text.typed = false;
  await adopt(result.content);
  say('A plant to begin with: every figure in it is invented. Move its pieces, lay inlets like the first ones, put your own figures in their place.', 15000);
});

// What is pointed at says what its air does.
drawing.place.addEventListener('pointerover', event => {
  const piece = event.target.closest('[data-run], [data-inlet]');
  const kind = piece?.dataset.inlet ? 'inlet' : 'run';
  at('pointed').textContent = piece ? `${kind === 'run' ? 'Tube' : 'Inlet'} ${piece.dataset[kind]}: ${reading(kind, piece.dataset[kind])}` : '';
});
drawing.place.addEventListener('pointerleave', () => { at('pointed').textContent = ''; });

onVersion(version => { if (reach !== 'answers') alive(); else if (state.plant && (version < 0 || version > state.plant.version)) hear(); }, alive);

onReach(now => {
  if (now === reach) return;
  reach = now;
  if (now === 'answers') { answeringAgain(); return; }
  say(now === 'out' ? 'You are not signed in any more. What you typed stays on this page; sign in, then go on here.' : AWAY, 0);
  unanswered();
  later(alive, ASKS_ms);
});

function answeringAgain() { answering().catch(() => later(answeringAgain, ASKS_ms)); }

// The studio answers again: what it shows is read anew, what waited is sent; not in the name of somebody else.
async function answering() {
  const before = people.session.name;
  await load();
  await people.load();
  if (people.session.name !== before && unsent.waiting.size) { say(`${people.session.name || 'Nobody'} is signed in now${unsent.words}, made by ${before || 'nobody who was signed in'}. Sign in as before, or load the page anew to let go of it.`, 0); return; }
  await unsent.send({version: () => state.plant.version, adopt});
  if (state.place === 'panel') await panelLoad(); else if (state.place === 'compare') await compare.load();
}

// While nothing answers this asks by itself.
async function alive() {
  await ask('alive', '/api/session').catch(() => {});
  if (reach !== 'answers') later(alive, ASKS_ms);
}

function unanswered() {
  if (state.plant && reach !== 'answers') at('kept').textContent = `${reach === 'out' ? 'signed out' : 'not answering'} · ${state.plant.file}, kept up to step ${state.plant.step}${unsent.words}`;
}
addEventListener('offline', alive);
addEventListener('online', alive);
addEventListener('beforeunload', event => { if (reach !== 'answers' && text.typed) event.preventDefault(); });
terms.load();
take('look');
people.load().catch(why => say(why.message));
load().catch(why => say(why.message, 0));
