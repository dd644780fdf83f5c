// Who is signed in: shown at the top, written into revisions, and what the role may do.
import {ask, change} from './server.js';
import {element} from './element.js';

// Two names are one person's however they are written; the studio goes by the same.
const plain = name => name.normalize('NFKC').replace(/\s+/g, ' ').trim().toLowerCase();
const same = (one, other) => plain(one) === plain(other);

const at = id => document.getElementById(id);
// What only a designer may press or fill in, also where it is put on the page later.
const PRESSED = '#standstoday, #piece select, #piece .away, #piece .put, #piece .acts button, #take, #mine, #write, #starter, #accept button, #keepas button, #alternatives button, #revisions li > button, #left button, #packages progress ~ button, #back, #forth, #seqtake, [data-hand=move], [data-hand=inlet], [data-hand=tube], [data-hand=wall], [data-hand=machine], [data-hand=floor]';
const FILLED = '#piece input, #piece textarea, #source, #seqtext, #altname, #note, #author';

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
    if (!this.designs && !this.barred) {
      this.barred = true;
      this.bar();
      new MutationObserver(() => this.bar()).observe(document.body, {childList: true, subtree: true, attributes: true, attributeFilter: ['disabled']});
    }
    at('person').hidden = false;
    at('person').replaceChildren(element('span', {title: `${this.session.name}, ${this.session.role}`}, this.session.name, element('small', {}, this.session.role)),
      element('button', {type: 'button', on: () => this.end()}, 'Sign out'));
  }

  get designs() { return !this.session.name || this.session.role === 'designer'; }

  get may() { return `A ${this.session.role} looks; a designer makes changes.`; }

  bar() {
    for (const one of document.querySelectorAll(PRESSED)) if (!one.disabled) { one.disabled = true; one.title = this.may; }
    for (const one of document.querySelectorAll(FILLED)) if (!one.readOnly) { one.readOnly = true; one.title = this.may; }
  }

  async end() {
    await change('/api/session/end', {});
    location.replace('/sign-in');
  }

  // Who signed a revision off, and for a checker who has not yet, where to do it.
  signed(revision) {
    const lines = revision.signed.map(one => element('span', {class: 'signed'}, `Signed off ${one.at.replace('T', ' ').replace('Z', ' UTC')}, ${one.by}${one.note ? ': ' + one.note : ''}`));
    if (this.session.role === 'checker' && !same(revision.author, this.session.name) && !revision.signed.some(one => same(one.by, this.session.name))) {
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
