// Who is signed in: shown at the top, written into revisions, and what the role may do.
import {ask, change} from './server.js';
import {element} from './element.js';

const at = id => document.getElementById(id);
const DESIGNING = '#take, #write, #accept button, #keepas button, #back, #forth, [data-hand=move], [data-hand=inlet], [data-hand=tube]';

export class People {
  constructor(say, again) {
    this.say = say;
    this.again = again;
    this.session = {signIn: false, name: '', role: ''};
  }

  async load() {
    this.session = await ask('session', '/api/session') ?? this.session;
    if (!this.session.name) return;
    at('author').value = this.session.name;
    at('author').readOnly = true;
    if (this.session.role !== 'designer') for (const one of document.querySelectorAll(DESIGNING)) one.disabled = true;
    at('person').hidden = false;
    at('person').replaceChildren(element('span', {title: `${this.session.name}, ${this.session.role}`}, `${this.session.name}, ${this.session.role}`),
      element('button', {type: 'button', on: () => this.end()}, 'Sign out'));
  }

  async end() {
    await change('/api/session/end', {});
    location.replace('/sign-in');
  }

  // Who signed a revision off, and for a checker who has not yet, where to do it.
  signed(revision) {
    const lines = revision.signed.map(one => element('span', {class: 'signed'}, `Signed off ${one.at.replace('T', ' ').replace('Z', ' UTC')}, ${one.by}${one.note ? ': ' + one.note : ''}`));
    if (this.session.role === 'checker' && revision.author !== this.session.name && !revision.signed.some(one => one.by === this.session.name)) {
      const note = element('input', {maxLength: 500, 'aria-label': `Note on revision ${revision.number}`, placeholder: 'Note'});
      lines.push(element('span', {class: 'signoff'}, note, element('button', {type: 'button', on: () => this.sign(revision, note.value)}, `Sign revision ${revision.number} off`)));
    } else if (this.session.signIn && !revision.signed.length) lines.push(element('span', {class: 'signed'}, 'Not signed off.'));
    return lines;
  }

  async sign(revision, note) {
    const result = await change('/api/sign', {revision: revision.number, note});
    this.say(result.ok ? `Revision ${revision.number} is signed off.` : result.content.why);
    if (result.ok) this.again();
  }
}
