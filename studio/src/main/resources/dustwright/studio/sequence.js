// The sequence behind the panel as text: typed, judged, taken. The panel begins anew with what was taken.
import {element} from './element.js';
import {ask, change} from './server.js';
import {list} from './text.js';

const at = id => document.getElementById(id);

export class Sequence {
  // station: which one; taken: what to do once another sequence is taken; turn: shows what `shown` says
  constructor(station, taken, turn, say) {
    this.station = station;
    this.taken = taken;
    this.turn = turn;
    this.say = say;
    this.shown = false;
    this.typed = false;
    at('seqtext').addEventListener('input', () => { this.typed = true; this.judged(); at('seqhint').textContent = 'typed, not taken yet'; });
    at('seqopen').addEventListener('click', () => this.open());
    at('seqback').addEventListener('click', () => this.close());
    at('seqtake').addEventListener('click', () => this.take(at('seqtext').value));
    at('seqprove').addEventListener('click', () => this.prove());
    at('seqplain').addEventListener('click', () => this.plain());
    at('seqown').addEventListener('click', () => this.take(''));
    at('panelstation').addEventListener('change', () => { if (this.shown) this.load(); });
  }

  async open() {
    this.shown = true;
    this.turn();
    await this.load();
    at('seqtext').focus();
  }

  close() {
    this.shown = false;
    this.turn();
    at('seqopen').focus();
  }

  // What was typed for this station and not taken stays.
  async load() {
    const view = await ask('sequence', '/api/sequence', {station: this.station()});
    if (!view) return;
    if (this.typed && this.view?.station === view.station) { this.view = view; this.earlier(); return; }
    this.show(view);
  }

  show(view) {
    this.view = view;
    this.put(view.text);
    this.typed = false;
    at('seqhint').textContent = '';
    at('seqof').textContent = view.own ? `Station ${view.station}: edit ${view.number}, ${when(view)}.` : `Station ${view.station}: the sequence the plant begins with.`;
    at('seqown').hidden = !view.own;
    at('seqextras').replaceChildren(...view.extras.map(one => element('label', {}, element('input', {type: 'checkbox', value: one.name}), ` ${one.words}`)));
    this.judged();
    this.earlier();
  }

  earlier() {
    at('seqearlier').replaceChildren(...this.view.earlier.map(one => element('li', {}, `Edit ${one.number}, ${when(one)}${one.text ? '' : ': back to the one the plant begins with'} `,
      ...(one.text ? [element('button', {type: 'button', on: () => this.propose(one.text, `edit ${one.number}`)}, 'Put into the text')] : []))));
  }

  put(text) {
    at('seqtext').value = text;
    at('seqtext').setSelectionRange(0, 0);
    at('seqtext').scrollTop = 0;
  }

  propose(text, what) {
    this.put(text);
    this.typed = true;
    this.judged();
    at('seqhint').textContent = `${what}, not taken yet`;
  }

  async plain() {
    const extras = [...at('seqextras').querySelectorAll('input:checked')].map(one => one.value).join(',');
    const text = await ask('plain', '/api/sequence/plain', {station: this.station(), extras});
    if (text) this.propose(text, 'to begin with');
  }

  // Nothing is known any more of a text that changed.
  judged(faults = [], proof = '') {
    list(at('seqfaults'), at('seqtext'), faults);
    at('seqproof').textContent = proof;
    at('seqproof').hidden = !proof;
  }

  async take(text) {
    const result = await change('/api/sequence', {station: this.view.station, number: this.view.number, text});
    if (result.ok) {
      const typed = this.typed;
      this.show(result.content);
      at('seqhint').textContent = 'kept; the panel begins anew with it';
      if (!typed && !text) this.say('The panel goes by the sequence the plant begins with.');
      await this.taken();
      return;
    }
    if (result.away) { at('seqhint').textContent = 'not kept: the studio is not answering. What you typed stays on this page; take it again once it answers'; return; }
    this.judged(result.content.faults);
    at('seqhint').textContent = `not taken: ${result.content.why}`;
    if (result.stale) this.load();
  }

  async prove() {
    at('seqprove').disabled = true;
    at('seqhint').textContent = 'visiting every state it can reach';
    const text = at('seqtext').value;
    try {
      const result = await change('/api/sequence/prove', {text});
      if (at('seqtext').value !== text) { at('seqhint').textContent = 'typed on since it was asked to be proven'; return; }
      this.judged(result.content.faults, result.content.text);
      at('seqhint').textContent = result.ok ? (result.content.holds ? 'every property holds' : 'not every property holds') : result.content.why;
      if (result.ok) at('seqproof').focus();
    } finally {
      at('seqprove').disabled = false;
    }
  }
}

const when = one => `${one.at.replace('T', ' ').replace('Z', ' UTC')}${one.author ? `, ${one.author}` : ''}`;
