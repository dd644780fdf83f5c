// The panel of this plant, rehearsed by hand: time goes on as fast as one likes, everything that is pressed or broken goes to the studio, which answers what is seen.
import {ask, change} from './server.js';
import {element} from './element.js';
import {Plate} from './plate.js';
import {station} from './station.js';

const at = id => document.getElementById(id);
const SPEEDS = [1, 10, 60, 300, 1000];
const TICK_ms = 100;
const CHART_ms = 1500;
const SAID = {high: 'at once', medium: 'within minutes', low: 'within the shift', status: 'nothing to do'};

export class Panel {
  constructor(units, say, block) {
    this.units = units;
    this.say = say;
    this.block = block;
    this.queue = Promise.resolve();
    this.speed = 10;
    this.acts = [];
    this.plate = new Plate(at('plate'), act => this.act(act));
    at('runs').addEventListener('click', () => this.run(!this.running));
    at('nexts').addEventListener('click', () => this.next());
    at('speeds').replaceChildren(...SPEEDS.map(speed => element('button', {type: 'button', 'data-speed': speed, 'aria-pressed': String(speed === this.speed), on: () => this.faster(speed)}, `×${speed}`)));
    at('begins').addEventListener('click', () => this.begin());
    for (const id of ['panelstation', 'paneldrill']) at(id).addEventListener('change', () => this.begin());
    at('usersact').addEventListener('click', () => this.act({users: !this.now?.users}));
  }

  async load() {
    if (!this.panel) { at('panelall').hidden = true; at('panelwhy').textContent = 'The panel is being set up.'; }
    const offer = await ask('panel', '/api/panel');
    if (!offer) return;
    const chosen = [at('panelstation').value, at('paneldrill').value];
    at('panelstation').replaceChildren(...offer.stations.map(id => element('option', {value: id}, id)));
    at('panelstation').parentElement.hidden = offer.stations.length < 2;
    at('paneldrill').replaceChildren(element('option', {value: ''}, 'By hand, nothing planned'), element('option', {value: 'full'}, 'By hand, container nearly full'),
      ...offer.drills.map((drill, n) => element('option', {value: drill.name}, `Drill ${n + 1}`)));
    if (offer.stations.includes(chosen[0])) at('panelstation').value = chosen[0];
    if (chosen[1]) at('paneldrill').value = chosen[1];
    if (!this.panel) await this.begin();
  }

  async begin() {
    this.run(false);
    const drill = at('paneldrill').value;
    const mine = this.begun = (this.begun ?? 0) + 1;
    const result = await change(`/api/panel/begin?units=${this.units()}`, {station: at('panelstation').value, drill: drill === 'full' ? '' : drill, soonFull: drill === 'full'});
    if (mine !== this.begun) return;
    if (!result.ok) { at('panelwhy').textContent = result.content.why; at('panelall').hidden = true; return; }
    at('panelwhy').textContent = '';
    at('panelall').hidden = false;
    this.panel = result.content;
    this.drill = at('paneldrill').selectedOptions[0].textContent;
    this.known = 0;
    this.acts = [];
    at('told').replaceChildren();
    this.plate.build(this.panel);
    at('script').href = `/api/panel/script?id=${this.panel.id}`;
    this.rehearsed = `${this.panel.station}, step ${this.panel.step} of the working copy, ${this.panel.edit ? `its sequence as edited here, edit ${this.panel.edit}` : 'the sequence it begins with'}`;
    this.help();
    this.faults();
    this.show(this.panel.now);
    this.chart();
  }

  help() {
    const list = (name, items) => items.length ? [element('h3', {}, name), element('ul', {}, ...items.map(item => element('li', {}, item)))] : [];
    const answers = this.panel.training ? [element('details', {}, element('summary', {}, 'What one would see and do'), ...list('Sees', this.panel.sees), ...list('Does', this.panel.does))] : [];
    at('panelhelp').replaceChildren(...answers, element('details', {}, element('summary', {}, 'What this rests on'), ...list('Taken as common practice, without a source', this.panel.rests)));
  }

  // In a drill one only looks for what is wrong; by hand one breaks things too.
  faults() {
    at('faultshead').textContent = this.panel.training ? 'Look and mend' : 'Make it happen';
    at('panelfaults').replaceChildren(...this.panel.faults.filter(one => one.id !== 'emergency stop').map(one => element('button', {type: 'button', 'data-fault': one.id, title: one.words, 'aria-pressed': 'false',
      on: () => this.act(this.panel.training || this.now.broken.includes(one.id) ? {mended: one.id} : {breaks: one.id})}, one.name)));
  }

  faster(speed) {
    this.speed = speed;
    for (const button of at('speeds').children) button.setAttribute('aria-pressed', String(Number(button.dataset.speed) === speed));
  }

  run(on) {
    if (on && !this.panel) return;
    this.running = on;
    at('runs').textContent = on ? 'Hold' : 'Run';
    at('runs').setAttribute('aria-pressed', String(on));
    clearTimeout(this.timer);
    this.last = performance.now();
    if (on) this.timer = setTimeout(() => this.tick(), TICK_ms);
    else if (this.panel) this.chart();
  }

  async tick() {
    const now = performance.now();
    const by = Math.min(2000, now - this.last) * this.speed;
    this.last = now;
    await this.go({by_ms: Math.round(by)});
    if (this.running) this.timer = setTimeout(() => this.tick(), TICK_ms);
  }

  act(act) {
    if (!this.panel) return;
    this.acts.push(act);
    if (!this.running) this.go({by_ms: 100}).then(() => this.chart());
  }

  async next() {
    this.run(false);
    const told = await this.go({next: true});
    if (told === 0) this.say('Nothing happens by itself within an hour.');
    this.chart();
  }

  // One after the other, in the order in which they were asked; gives how many things happened.
  go(how) {
    this.queue = this.queue.catch(() => 0).then(() => this.send(how));
    return this.queue;
  }

  async send(how) {
    const panel = this.panel;
    const acts = this.acts;
    this.acts = [];
    try {
      const result = await change(`/api/panel/go?units=${this.units()}`, {id: panel.id, known: this.known, acts, ...how});
      if (this.panel !== panel) return 0;
      if (!result.ok) { this.run(false); this.say(result.content.why, 0); return -1; }
      const told = result.content.told.length;
      this.show(result.content);
      if (performance.now() - (this.charted ?? 0) > CHART_ms) this.chart();
      return told;
    } catch (why) {
      this.run(false);
      throw why;
    }
  }

  // Other units: the same moment anew.
  again() {
    if (this.panel && !this.running) this.go({by_ms: 0}).then(() => this.chart());
  }

  show(now) {
    const first = !this.known;
    this.now = now;
    this.known = now.known;
    this.plate.show(now);
    at('station').replaceChildren(station(this.panel, now));
    at('clock').textContent = now.clock;
    at('stepname').textContent = now.step;
    at('usersact').textContent = now.users ? 'Users hang up their hoses' : 'Users take up their hoses';
    at('messages').replaceChildren(...(now.messages.length ? now.messages.map(one => element('li', {}, element('b', {}, one.words), element('small', {}, ` ${SAID[one.priority]}`), element('p', {}, one.response))) : [element('li', {class: 'none'}, 'No message.')]));
    at('held').textContent = !now.outputs.vent_shut && now.held.length ? `No suction: ${now.held.join('; ')}.` : '';
    for (const button of at('panelfaults').children) if (!this.panel.training) button.setAttribute('aria-pressed', String(now.broken.includes(button.dataset.fault)));
    at('told').prepend(...now.told.reverse().map(one => element('li', {}, element('time', {}, one.at), element('span', {}, one.words))));
    while (at('told').children.length > 200) at('told').lastChild.remove();
    this.marks(now);
    this.titles();
    if (now.over && !first) { this.run(false); this.say(`The drill has come to its end: ${this.panel.title.replace(/\.$/, '')}.`); }
  }

  // What is wrong is for the trainee to find: a drill has its own name once it is over.
  title() { return this.panel.training && !this.now.over ? this.drill : this.panel.title; }

  // Fields of the title block.
  titles() {
    if (!this.panel) return;
    const now = this.now;
    at('panelof').textContent = `${this.title()} · ${this.rehearsed}`;
    const lit = this.panel.lamps.filter(one => now.lit.includes(one.name)).map(one => one.words);
    this.block([{name: 'Rehearsal', value: this.title()}, {name: 'Station', value: this.panel.station}, {name: 'Time', value: now.clock}, {name: 'Step', value: now.step},
      {name: 'Vacuum in the receiver', value: now.vacuum.words}, {name: 'Lamps lit', value: lit.join(', ') || 'none'}]);
  }

  // What the points are for would say what is wrong: while the drill runs they are only counted.
  marks(now) {
    at('marks').hidden = !this.panel.training;
    if (!this.panel.training) return;
    const met = now.marks.filter(one => one.met).length;
    at('score').textContent = now.over ? `${met} of ${now.marks.length} points at the end` : `${met} of ${now.marks.length} points so far, ${now.marks.length - met} not yet. What each is for stands here at the end.`;
    at('marklist').replaceChildren(...(now.over ? now.marks : []).map(one => element('li', {class: one.met ? 'met' : 'unmet'}, element('span', {'aria-hidden': 'true'}, one.met ? '○' : '▼'), element('span', {}, one.asked, element('small', {}, ` ${one.went}`)))));
  }

  async chart() {
    this.charted = performance.now();
    const drawn = await ask('chart', '/api/panel/chart', {id: this.panel.id, units: this.units()});
    if (drawn) at('course').innerHTML = drawn;
  }
}
