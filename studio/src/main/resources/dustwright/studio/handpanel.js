// What the hand holds, beside the findings: typed distances, copies, sizes; every drag has its typed way here.
import {element} from './element.js';
import {named} from './hand.js';

export function handPanel(box, hint, hand, say) {
  hint.textContent = hand.hint();
  box.hidden = !(hand.mode === 'move' && hand.taken.length || ['tube', 'wall', 'machine', 'floor'].includes(hand.mode));
  if (box.hidden) return;
  if (hand.mode === 'floor') { hand.page.floor.fill(box); return; }
  if (hand.mode === 'tube') { box.replaceChildren(...laid('New tube', hand, sizeOf(hand), heightOf(hand))); return; }
  if (hand.mode === 'machine') { machinePanel(box, hand); return; }
  if (hand.mode === 'wall') { wallPanel(box, hand, say); return; }
  const words = hand.taken.length > 4 ? `${hand.taken.length} places` : hand.taken.map(named).join(', ');
  const {fields, rows, also} = lengths(hand, ['east', 'north', 'up'], 'By how much');
  const by = () => {
    const [dx, dy, dz] = fields.map(one => one.value.trim() === '' ? 0 : hand.typed(one.value));
    if ([dx, dy, dz].includes(null)) { say(`How far? ${hand.why}`); return null; }
    return {dx, dy, dz};
  };
  const act = (name, deed) => element('button', {type: 'button', on: () => { const how = by(); if (how) deed(how); }}, name);
  const one = hand.taken.length === 1 ? hand.taken[0] : null;
  box.replaceChildren(element('div', {class: 'headline'}, element('h2', {}, 'Taken'), element('span', {class: 'cap'}, words)),
    element('div', {class: 'acts'}, ...rows, also, act('Move', how => hand.shift(how)), act('Copy', how => hand.copy(how)),
      element('button', {type: 'button', on: () => hand.takeAway()}, 'Take away'),
      ...(one?.kind === 'point' ? [element('button', {type: 'button', on: () => hand.act({what: 'join', point: one.id}, ids => `One run now: ${ids[0]}.`)}, 'Join its two runs')] : []),
      ...(one?.kind === 'corner' ? [element('button', {type: 'button', on: () => hand.act({what: 'split', run: one.id}, ids => `Split at ${ids[0]}.`)}, 'Split this run')] : [])));
}

// Lengths that are typed: the unit of a bare number beside each, below them what was understood.
function lengths(hand, names, what) {
  const fields = names.map(name => element('input', {'aria-label': `${what} ${name}`, size: '6', autocomplete: 'off'}));
  const also = element('small', {class: 'also', role: 'status'});
  for (const field of fields) field.addEventListener('input', () => { also.textContent = fields.map((one, n) => understood(hand, names[n], one.value)).filter(Boolean).join(', '); });
  return {fields, also, rows: fields.map((field, n) => element('label', {}, `${inUnit(names[n], hand)} `, field))};
}

// With the unit of a bare number, where the plant file states one.
const inUnit = (name, hand) => hand.unit ? `${name}, ${hand.unit}` : name;

// What is no length leaves the height as it was, and is said.
function heightTyped(hand, field) {
  const metres = hand.typed(field.value);
  if (metres === null) hand.page.say(`How high? ${hand.why}`);
  return metres ?? hand.height;
}

function understood(hand, name, text) {
  const metres = text.trim() === '' ? null : hand.typed(text);
  return metres === null ? '' : `${name} ${hand.both(metres)}`;
}

function laid(name, hand, ...fields) {
  return [element('div', {class: 'headline'}, element('h2', {}, name), element('span', {class: 'cap'}, hand.from ? `from ${hand.from.id}` : '')), element('div', {class: 'acts'}, ...fields)];
}

function sizeOf(hand) {
  const size = element('select', {'aria-label': 'Tube size'}, ...(hand.places?.tubes ?? []).map(id => element('option', {value: id}, id)));
  size.value = hand.size ?? hand.places?.tubes[0];
  size.addEventListener('change', () => { hand.size = size.value; });
  return element('label', {}, 'Size ', size);
}

function heightOf(hand, otherwise = 'as it begins') {
  const height = element('input', {'aria-label': 'Height', size: '11', autocomplete: 'off', placeholder: otherwise, value: hand.height === undefined ? '' : hand.length(hand.height)});
  const also = element('small', {class: 'also'}, hand.height === undefined ? '' : hand.both(hand.height));
  height.addEventListener('change', () => { hand.height = height.value.trim() === '' ? undefined : heightTyped(hand, height); also.textContent = hand.height === undefined ? '' : hand.both(hand.height); });
  return element('label', {}, `${inUnit('Height', hand)} `, height, ' ', also);
}

const MACHINES = [['receiver', 'Receiver with its machines'], ['producers', 'Vacuum producer'], ['rotary valve', 'Rotary valve'], ['container', 'Bulk bag or drum'], ['relief valve', 'Relief valve'], ['vent valve', 'Vent valve'], ['safety filter', 'Safety filter'], ['panel', 'Control panel']];

function machinePanel(box, hand) {
  const what = element('select', {'aria-label': 'Which machine'}, ...MACHINES.map(([key, words]) => element('option', {value: key}, words)));
  what.value = hand.what;
  what.addEventListener('change', () => { hand.what = what.value; hand.from = null; hand.corners = []; hand.panel(); hand.overlay(); box.querySelector('select')?.focus(); });
  const own = {receiver: [sizeOf(hand), heightOf(hand)], panel: [heightOf(hand, 'floor, 0')]}[hand.what] ?? [];
  box.replaceChildren(...laid('New machine', hand, what, ...own));
}

function wallPanel(box, hand, say) {
  const {fields: point, rows, also} = lengths(hand, ['east', 'north'], 'Corner');
  const height = element('input', {'aria-label': 'Height of the floor', size: '6', autocomplete: 'off', value: hand.length(hand.height ?? 0)});
  height.addEventListener('change', () => { hand.height = heightTyped(hand, height); });
  const next = () => {
    const [x, y] = point.map(one => hand.typed(one.value));
    if (x === null || y === null) { say(`Where? ${hand.why}`); return; }
    hand.corners.push({x, y, z: hand.height ?? 0});
    hand.panel(); hand.overlay();
  };
  const walls = hand.places?.walls ?? [];
  box.replaceChildren(element('div', {class: 'headline'}, element('h2', {}, 'Walls'), element('span', {class: 'cap'}, hand.corners.length ? `${hand.corners.length} corners so far` : 'for the drawing only')),
    element('div', {class: 'acts'}, element('label', {}, `${inUnit('Floor at', hand)} `, height), ...rows, also, element('button', {type: 'button', on: next}, 'Next corner'),
      ...(hand.corners.length > 1 ? [element('button', {type: 'button', on: () => hand.finishWall()}, 'End the wall')] : [])),
    ...walls.map(wall => element('div', {class: 'acts'}, element('span', {}, `${wall.id}, ${wall.corners.length} corners`),
      element('button', {type: 'button', on: () => hand.act({what: 'take wall away', wall: wall.id}, () => `Wall ${wall.id} taken away. Back undoes that.`)}, 'Take away'))));
}
