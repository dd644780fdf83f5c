// The papers of the working copy: each package with what it is, made behind the page, its files to be opened and kept.
import {ask, change} from './server.js';
import {element} from './element.js';

const at = id => document.getElementById(id);

export class Papers {
  constructor(units, marked) {
    this.units = units;
    this.marked = marked;
    at('makeall').addEventListener('click', () => this.all());
  }

  async load() {
    this.take(await ask('papers', '/api/papers'));
  }

  take(view) {
    if (!view) return;
    this.view = view;
    at('standing').textContent = view.standing;
    at('papershint').textContent = view.why;
    const held = document.activeElement?.closest('#packages [data-paper]')?.dataset.paper;
    at('packages').replaceChildren(...view.packages.map(one => this.row(one)));
    this.marked(...at('packages').querySelectorAll('li > p:not(.cap)'));
    if (held) at('packages').querySelector(`[data-paper="${CSS.escape(held)}"] .acts button`)?.focus();
    at('makeall').disabled = !!view.why;
    clearTimeout(this.timer);
    if (view.packages.some(one => this.busy(one))) this.timer = setTimeout(() => this.load(), 500);
  }

  busy(one) { return one.stage === 'waiting' || one.stage === 'working'; }

  row(one) {
    const row = element('li', {'data-paper': one.id}, element('h3', {}, one.title), element('p', {}, one.what));
    if (one.why) { row.append(element('p', {class: 'cap'}, `Not of this plant. ${one.why}`)); return row; }
    if (this.busy(one)) {
      row.append(element('div', {class: 'acts'}, element('progress', {max: 1, value: one.share, 'aria-label': `${one.title}, how far`}), element('span', {class: 'cap', role: 'status'}, one.stage === 'waiting' ? one.words : `making, ${one.words}`),
        element('button', {type: 'button', on: async () => { const result = await change('/api/papers/stop', {paper: one.id}); if (result.ok) this.take(result.content); else at('papershint').textContent = result.content.why; }}, 'Stop')));
    } else if (!this.view.why) {
      row.append(element('div', {class: 'acts'}, element('button', {type: 'button', on: () => this.make(one.id)}, one.files.length ? 'Make anew' : 'Make'), element('span', {class: 'cap', role: 'status'}, one.words)));
    }
    if (one.files.length) {
      row.append(element('p', {class: one.older ? 'of older' : 'of'}, `${one.older ? 'Of an older step: ' : 'Of '}${one.of}`),
        element('ul', {class: 'files'}, ...one.files.map(file => element('li', {}, element('a', {href: `/api/papers/file?${new URLSearchParams({paper: one.id, name: file.name})}`, target: '_blank', rel: 'noopener'}, file.name), ` ${file.what}`, element('small', {}, ` ${file.format}, ${this.size(file.bytes)}`)))));
    }
    return row;
  }

  size(bytes) {
    return bytes < 1_000_000 ? `${Math.max(1, Math.round(bytes / 1000))} kB` : `${(bytes / 1e6).toFixed(1)} MB`;
  }

  async make(paper) {
    const result = await change('/api/papers/make', {paper, units: this.units()});
    if (result.ok) this.take(result.content); else at('papershint').textContent = result.content.why;
  }

  async all() {
    for (const one of this.view.packages) if (!one.why && one.id !== 'sizing') await this.make(one.id);
  }
}
