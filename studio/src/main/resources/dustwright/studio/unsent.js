// What was typed or drawn while the studio did not answer waits in this page and is sent, in order, when it answers again.
import {changePlant} from './server.js';

export class Unsent {
  constructor(say) {
    this.say = say;
    this.waiting = new Map();
    this.drawn = 0;
    addEventListener('beforeunload', event => { if (this.waiting.size) event.preventDefault(); });
  }

  // One value, as the studio takes it.
  keep(value) {
    this.waiting.delete(value.path);
    this.waiting.set(value.path, {to: '/api/value', body: value, words: `${value.path}: ${value.value}`});
  }

  // Something drawn on a step of the plant: on another one it would mean something else.
  keepDrawn(body, version, words) {
    this.waiting.set(`drawn ${++this.drawn}`, {to: '/api/draw', body, on: version, words});
  }

  typed(path) { return this.waiting.get(path)?.body.value; }

  get words() { return this.waiting.size ? `, ${this.waiting.size === 1 ? '1 edit waits' : `${this.waiting.size} edits wait`} to be sent` : ''; }

  // plant: {version, adopt}. What the studio refuses now is told with what was typed or drawn.
  async send(plant) {
    const refused = [];
    let sent = 0;
    const from = plant.version();
    let now = from;
    for (const [key, one] of [...this.waiting]) {
      const other = one.on !== undefined && (one.on !== from || now !== plant.version());
      const result = other ? {ok: false, content: {why: 'The plant was changed elsewhere in the meantime.'}} : await changePlant(one.to, {version: plant.version(), ...one.body});
      if (result.away) return;
      this.waiting.delete(key);
      if (result.ok) { sent++; await plant.adopt(result.content.plant ?? result.content); now = plant.version(); } else refused.push(`${one.words} was not taken. ${result.content.why}`);
    }
    const done = sent ? ` ${sent === 1 ? 'The edit that waited is' : `The ${sent} edits that waited are`} taken.` : '';
    this.say(`The studio answers again.${done}${refused.length ? ` ${refused.join(' ')}` : ''}`, refused.length ? 0 : 6000);
  }
}
