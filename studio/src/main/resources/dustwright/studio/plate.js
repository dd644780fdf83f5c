// The plate of the panel: gauge, lamps, push buttons. Lamps keep their place, lit or dark; what is lit has rays and a word, not only a colour.
import {element} from './element.js';

const NS = 'http://www.w3.org/2000/svg';

export function shape(name, attributes = {}, ...children) {
  const made = document.createElementNS(NS, name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  made.append(...children);
  return made;
}

const RAYS = Array.from({length: 12}, (_, n) => {
  const turn = n * Math.PI / 6;
  return `M${(21 * Math.cos(turn)).toFixed(1)} ${(21 * Math.sin(turn)).toFixed(1)}L${(25 * Math.cos(turn)).toFixed(1)} ${(25 * Math.sin(turn)).toFixed(1)}`;
}).join('');

function lamp(one) {
  const picture = shape('svg', {viewBox: '-27 -27 54 54', width: 38, height: 38, 'aria-hidden': 'true'},
    shape('path', {d: RAYS, class: 'rays'}), shape('circle', {r: 18, class: 'bezel'}), shape('circle', {r: 13, class: 'glass'}));
  return element('li', {class: `lamp ${one.colour}${one.flashes ? ' flashes' : ''}`, 'data-lamp': one.name, title: one.tag}, picture, element('span', {}, one.words), element('small', {}, 'dark'));
}

function button(one, press) {
  const kind = one.name === 'start' ? 'white' : one.name === 'stop' ? 'black' : one.name === 'reset' ? 'blue' : 'grey';
  return element('button', {type: 'button', class: `push ${kind}`, 'data-push': one.name, title: one.tag, on: () => press({press: one.name})},
    element('span', {class: 'cap'}, ''), element('span', {class: 'word'}, one.words));
}

// A figure and its unit, which stand on one line.
const together = value => value.replace(/^([\d.]+) (\S+)$/, '$1\u00A0$2');

// A step of 1, 2 or 5 that gives at most so many.
function even(most, steps) {
  const raw = most / steps;
  const power = 10 ** Math.floor(Math.log10(raw));
  return [1, 2, 5, 10].map(one => one * power).find(one => one >= raw);
}

export class Plate {
  constructor(place, press) {
    this.place = place;
    this.press = press;
  }

  build(panel) {
    this.scaled = '';
    this.gauge = element('div', {class: 'gauge'});
    this.words = element('dl', {class: 'readings'});
    this.lamps = element('ul', {class: 'lamps', 'aria-label': 'Lamps'}, ...panel.lamps.map(lamp));
    const pushes = element('div', {class: 'pushes', role: 'group', 'aria-label': 'Push buttons'}, ...panel.buttons.map(one => button(one, this.press)));
    this.stop = element('button', {type: 'button', class: 'push estop', 'data-push': 'estop', on: () => this.press({[this.pushedIn ? 'mended' : 'breaks']: 'emergency stop'})},
      element('span', {class: 'cap'}, ''), element('span', {class: 'word'}, 'EMERGENCY STOP'));
    pushes.append(this.stop);
    this.place.replaceChildren(element('div', {class: 'reads'}, this.gauge, this.words), this.lamps, pushes);
  }

  show(now) {
    this.dial(now.vacuum);
    this.words.replaceChildren(...[['step', now.step], ['vacuum in receiver', now.vacuum.words], ['drop over filter', now.drop.words], ['motor current', now.current.words]]
      .flatMap(([name, value]) => [element('dt', {}, name), element('dd', {}, together(value))]));
    for (const one of this.lamps.children) {
      const lit = now.lit.includes(one.dataset.lamp);
      one.classList.toggle('lit', lit);
      const word = lit ? one.classList.contains('flashes') ? 'flashes' : 'lit' : 'dark';
      if (one.lastChild.textContent !== word) one.lastChild.textContent = word;
    }
    this.pushedIn = now.broken.includes('emergency stop');
    this.stop.classList.toggle('in', this.pushedIn);
    this.stop.setAttribute('aria-pressed', String(this.pushedIn));
    this.stop.lastChild.textContent = this.pushedIn ? 'EMERGENCY STOP pushed in: pull' : 'EMERGENCY STOP';
  }

  dial(vacuum) {
    const step = even(Math.max(vacuum.most, 1e-9) * 1.1, 6);
    const end = step * Math.ceil(vacuum.most * 1.1 / step);
    const turn = value => (0.75 + 1.5 * Math.min(1, value / end)) * Math.PI;
    const on = (radius, value) => `${(radius * Math.cos(turn(value))).toFixed(1)} ${(radius * Math.sin(turn(value))).toFixed(1)}`;
    if (this.scaled !== `${end}${vacuum.unit}`) {
      this.scaled = `${end}${vacuum.unit}`;
      const ticks = [];
      const labels = [];
      for (let n = 0; n * step <= end + 1e-9; n++) {
        ticks.push(`M${on(70, n * step)}L${on(60, n * step)}`);
        const [x, y] = on(48, n * step).split(' ');
        labels.push(shape('text', {x, y: Number(y) + 4, 'text-anchor': 'middle', class: 'num'}, String(Number((n * step).toPrecision(3)))));
        for (let part = 1; part < 5 && (n + part / 5) * step <= end + 1e-9; part++) ticks.push(`M${on(70, (n + part / 5) * step)}L${on(65, (n + part / 5) * step)}`);
      }
      // Under the numerals, which keep an edge: they can be read wherever it points.
      this.needle = shape('path', {class: 'needle'});
      this.gauge.replaceChildren(shape('svg', {viewBox: '-80 -80 160 160', role: 'img', 'aria-label': 'Vacuum gauge'},
        shape('circle', {r: 78, class: 'face'}), shape('path', {d: ticks.join(''), class: 'ticks'}), this.needle, ...labels,
        shape('text', {x: 0, y: 34, 'text-anchor': 'middle', class: 'num'}, vacuum.unit), shape('circle', {r: 5, class: 'hub'})));
    }
    this.needle.setAttribute('d', `M0 0L${on(62, vacuum.value)}`);
  }
}
