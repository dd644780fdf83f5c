// What was typed while the studio did not answer waits in this page and is sent, in order, when it answers again.
import {change} from './server.js';

export class Unsent {
  constructor(say) {
    this.say = say;
    this.waiting = new Map();
  }

  // One value, as the studio takes it.
  keep(value) {
    this.waiting.delete(value.path);
    this.waiting.set(value.path, value);
  }

  typed(path) { return this.waiting.get(path)?.value; }

  get words() { return this.waiting.size ? `, ${this.waiting.size === 1 ? '1 edit waits' : `${this.waiting.size} edits wait`} to be sent` : ''; }

  // plant: {version, adopt}. What the studio refuses now is told with what was typed.
  async send(plant) {
    const refused = [];
    let sent = 0;
    for (const value of [...this.waiting.values()]) {
      const result = await change('/api/value', {version: plant.version(), ...value});
      this.waiting.delete(value.path);
      if (result.ok) { sent++; await plant.adopt(result.content); } else refused.push(`${value.path}: ${value.value} was not taken. ${result.content.why}`);
    }
    const done = sent ? ` ${sent === 1 ? 'The edit that waited is' : `The ${sent} edits that waited are`} taken.` : '';
    this.say(`The studio answers again.${done}${refused.length ? ` ${refused.join(' ')}` : ''}`, refused.length ? 0 : 6000);
  }
}
