// Who is signed in: shown at the top, written into revisions, and what the role may do.
import {ask, change} from './server.js';
import {element} from './element.js';
import {differences} from './text.js';

// Two names are one person's however they are written; the studio goes by the same.
const plain = name => name.normalize('NFKC').replace(/\s+/g, ' ').trim().toLowerCase();
const same = (one, other) => plain(one) === plain(other);

const at = id => document.getElementById(id);
// What only a designer may press or fill in, also where it is put on the page later.
const PRESSED = '#standstoday, #piece select, #piece .away, #piece .put, #piece .acts button, #take, #mine, #write, #starter, #accept button, #keepas button, #alternatives button, #revisions li > button, #left button, #back, #forth, #seqtake, [data-hand=move], [data-hand=inlet], [data-hand=tube], [data-hand=wall], [data-hand=machine], [data-hand=floor]';
const FILLED = '#piece input, #piece textarea, #source, #seqtext, #altname, #note, #author';

export class People {
  constructor(say, again, units) {
    this.units = units;
    this.say = say;
    this.again = again;
    this.session = {signIn: false, name: '', role: ''};
    at('password').addEventListener('submit', event => { event.preventDefault(); this.password(); });
  }

  async load() {
    this.session = await ask('session', '/api/session') ?? this.session;
    if (!this.session.name) return;
    at('author').value = this.session.name;
    at('author').readOnly = true;
    if (!this.designs && !this.barred) {
      this.barred = true;
      at('accept').hidden = true;
      for (const bar of document.querySelectorAll('#text > .bar, #sequence > .bar:first-child, #compare > .bar, #extend > .bar, #papers > .bar:first-child, #plan .under .hint')) bar.append(element('p', {class: 'cap may'}, this.may));
      this.bar();
      new MutationObserver(() => this.bar()).observe(document.body, {childList: true, subtree: true, attributes: true, attributeFilter: ['disabled']});
    }
    at('person').hidden = at('password').hidden = false;
    at('person').replaceChildren(element('span', {title: `${this.session.name}, ${this.session.role}`}, this.session.name, element('small', {}, this.session.role)),
      element('button', {type: 'button', on: () => this.end()}, 'Sign out'));
  }

  get designs() { return !this.session.name || this.session.role === 'designer'; }

  get may() { return this.session.role === 'checker' ? 'A checker looks and signs off; a designer makes changes.' : 'A viewer looks; a designer makes changes.'; }

  bar() {
    for (const one of document.querySelectorAll(PRESSED)) if (!one.disabled) { one.disabled = true; one.title = this.may; }
    for (const one of document.querySelectorAll(FILLED)) if (!one.readOnly) { one.readOnly = true; one.title = this.may; }
  }

  // One's own password, by whoever knows the old one.
  async password() {
    const [old, next, again] = ['oldword', 'newword', 'newagain'].map(id => at(id).value);
    if (next !== again) { at('passwordhint').textContent = 'The two new passwords differ. Nothing was changed.'; return; }
    const result = await change('/api/session/password', {old, new: next});
    at('passwordhint').textContent = result.ok ? 'Your password is changed. Wherever else you were signed in, you no longer are.' : result.content.why;
    if (result.ok) at('password').reset();
  }

  async end() {
    await change('/api/session/end', {});
    location.replace('/sign-in');
  }

  // Who signed a revision off or refused it, and for a checker who did neither yet, where to look at it and do so.
  signed(revision, all) {
    const lines = revision.signed.map(one => element('span', {class: 'signed'}, `${one.refused ? 'Refused' : 'Signed off'} ${one.at.replace('T', ' ').replace('Z', ' UTC')}, ${one.by}${one.note ? ': ' + one.note : ''}`));
    if (this.session.signIn && !revision.signed.length) lines.push(element('span', {class: 'signed'}, 'Not signed off.'));
    if (this.session.role === 'checker' && !same(revision.author, this.session.name) && !revision.signed.some(one => same(one.by, this.session.name))) {
      const place = element('div', {class: 'check', hidden: true});
      const button = element('button', {type: 'button', 'aria-expanded': 'false', on: () => {
        place.hidden = !place.hidden;
        button.setAttribute('aria-expanded', String(!place.hidden));
        if (!place.hidden && !place.firstChild) this.check(place, revision, all);
      }}, `Check revision ${revision.number}`);
      lines.push(element('span', {class: 'signoff'}, button), place);
    }
    return lines;
  }

  // What a checker goes by: what differs from the last revision that was signed off, and the coverage of this one. Only then the two ways to decide.
  async check(place, revision, all) {
    const before = all.filter(one => one.number < revision.number && one.signed.length && !one.signed.some(by => by.refused))[0];
    const lines = differences(revision.text.split('\n'), before ? before.text.split('\n') : []);
    const verdict = element('p', {role: 'status'});
    const note = element('input', {maxLength: 500, size: 40, 'aria-label': `Note on revision ${revision.number}`, placeholder: 'Note, or the reason for refusing'});
    const buttons = [element('button', {type: 'button', on: () => this.sign(revision, note.value, false)}, `Sign revision ${revision.number} off for good`), element('button', {type: 'button', on: () => this.sign(revision, note.value, true)}, 'Refuse it, for the reason in the note')];
    buttons[0].disabled = true;
    place.append(
      element('p', {}, !before ? 'No revision before it is signed off: all of its text is to be checked (Compare shows it).' : lines.length ? `Lines that differ from revision ${before.number}, the last one signed off:` : `Its text is that of revision ${before.number}, the last one signed off.`),
      ...(before && lines.length ? [element('ol', {class: 'differ', 'aria-label': `Lines that differ from revision ${before.number}`}, ...lines.map(({mine, other}) => element('li', {},
        element('span', {}, `now ${mine.from}: `, element('code', {}, mine.lines.join(' ⏎ ') || 'nothing')), element('span', {}, ` before ${other.from}: `, element('code', {}, other.lines.join(' ⏎ ') || 'nothing')))))] : []),
      verdict, element('p', {class: 'signoff'}, note, ...buttons),
      element('p', {class: 'cap'}, 'Either stands for good, with your name and the time. Screening; local codes, the authority having jurisdiction and a licensed engineer decide.'));
    for (let done = false; !done && place.isConnected;) {
      const told = await ask(`coverage of ${revision.number}`, '/api/revision/coverage', {revision: revision.number, units: this.units()}).catch(why => { verdict.textContent = `Coverage of every set is not known: ${why.message}`; return null; });
      if (!told) { await new Promise(on => setTimeout(on, 2000)); continue; }
      done = told.done;
      verdict.textContent = `Coverage of every set of this revision: ${done ? `${told.verdict} ${told.asked}` : `not finished, ${Math.min(99, Math.floor(100 * told.share))} % done. Signing off waits for it.`}`;
      if (!done) await new Promise(on => setTimeout(on, 500));
    }
    buttons[0].disabled = false;
  }

  async sign(revision, note, refused) {
    const result = await change('/api/sign', {revision: revision.number, note, refused});
    this.say(result.ok ? `Revision ${revision.number} is ${refused ? 'refused' : 'signed off'}.` : result.content.why);
    if (result.ok) this.again();
  }
}
