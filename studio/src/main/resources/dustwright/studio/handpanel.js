// What the hand holds, beside the findings: typed distances, copies, sizes; every drag has its typed way here.
import {element} from './element.js';
import {named} from './hand.js';

export function handPanel(box, hint, hand, say) {
  hint.textContent = hand.hint();
  box.hidden = !(hand.mode === 'move' && hand.taken.length || ['tube', 'wall', 'floor'].includes(hand.mode));
  if (box.hidden) return;
  if (hand.mode === 'floor') { hand.page.floor.fill(box); return; }
  if (hand.mode === 'tube') { tubePanel(box, hand); return; }
  if (hand.mode === 'wall') { wallPanel(box, hand, say); return; }
  const words = hand.taken.length > 4 ? `${hand.taken.length} places` : hand.taken.map(named).join(', ');
  const fields = ['east', 'north', 'up'].map(name => element('input', {'aria-label': `By how much ${name}`, placeholder: name, size: '6', autocomplete: 'off'}));
  const by = () => {
    const [dx, dy, dz] = fields.map(one => one.value.trim() === '' ? 0 : hand.typed(one.value));
    if ([dx, dy, dz].includes(null)) { say('How far? 2, 0.5 m, 18 in, 4 ft.'); return null; }
    return {dx, dy, dz};
  };
  const act = (name, deed) => element('button', {type: 'button', on: () => { const how = by(); if (how) deed(how); }}, name);
  const one = hand.taken.length === 1 ? hand.taken[0] : null;
  box.replaceChildren(element('div', {class: 'headline'}, element('h2', {}, 'Taken'), element('span', {class: 'cap'}, words)),
    element('div', {class: 'acts'}, ...fields, act('Move', how => hand.shift(how)), act('Copy', how => hand.copy(how)),
      element('button', {type: 'button', on: () => hand.takeAway()}, 'Take away'),
      ...(one?.kind === 'point' ? [element('button', {type: 'button', on: () => hand.act({what: 'join', point: one.id}, ids => `One run now: ${ids[0]}.`)}, 'Join its two runs')] : []),
      ...(one?.kind === 'corner' ? [element('button', {type: 'button', on: () => hand.act({what: 'split', run: one.id}, ids => `Split at ${ids[0]}.`)}, 'Split this run')] : [])));
}

function tubePanel(box, hand) {
  const size = element('select', {'aria-label': 'Tube size'}, ...(hand.places?.tubes ?? []).map(id => element('option', {value: id}, id)));
  size.value = hand.size ?? hand.places?.tubes[0];
  size.addEventListener('change', () => { hand.size = size.value; });
  const height = element('input', {'aria-label': 'Height', size: '7', autocomplete: 'off', placeholder: 'as it begins', value: hand.height === undefined ? '' : hand.length(hand.height)});
  height.addEventListener('change', () => { hand.height = height.value.trim() === '' ? undefined : hand.typed(height.value) ?? hand.height; });
  box.replaceChildren(element('div', {class: 'headline'}, element('h2', {}, 'New tube'), element('span', {class: 'cap'}, hand.from ? `from ${hand.from.id}` : '')),
    element('div', {class: 'acts'}, element('label', {}, 'Size ', size), element('label', {}, 'Height ', height)));
}

function wallPanel(box, hand, say) {
  const point = ['east', 'north'].map(name => element('input', {'aria-label': `Corner ${name}`, placeholder: name, size: '6', autocomplete: 'off'}));
  const height = element('input', {'aria-label': 'Height of the floor', size: '6', autocomplete: 'off', value: hand.length(hand.height ?? 0)});
  height.addEventListener('change', () => { hand.height = hand.typed(height.value) ?? hand.height; });
  const next = () => {
    const [x, y] = point.map(one => hand.typed(one.value));
    if (x === null || y === null) { say('Where? 12 m, 40 ft.'); return; }
    hand.corners.push({x, y, z: hand.height ?? 0});
    hand.panel(); hand.overlay();
  };
  const walls = hand.places?.walls ?? [];
  box.replaceChildren(element('div', {class: 'headline'}, element('h2', {}, 'Walls'), element('span', {class: 'cap'}, hand.corners.length ? `${hand.corners.length} corners so far` : 'for the drawing only')),
    element('div', {class: 'acts'}, element('label', {}, 'Floor at ', height), ...point, element('button', {type: 'button', on: next}, 'Next corner'),
      ...(hand.corners.length > 1 ? [element('button', {type: 'button', on: () => hand.finishWall()}, 'End the wall')] : [])),
    ...walls.map(wall => element('div', {class: 'acts'}, element('span', {}, `${wall.id}, ${wall.corners.length} corners`),
      element('button', {type: 'button', on: () => hand.act({what: 'take wall away', wall: wall.id}, () => `Wall ${wall.id} taken away. Back undoes that.`)}, 'Take away'))));
}
