// The plant file as text: typed, taken, its faults by line.
import {element} from './element.js';
import {ask, change, changePlant} from './server.js';

// Faults above a text; each leads to its line.
export function list(place, source, faults) {
  place.replaceChildren(...faults.map(fault => element('li', {}, element('button', {type: 'button', on: () => go(source, fault.line)}, fault.text))));
}

function go(source, line) {
  const lines = source.value.split('\n');
  const start = lines.slice(0, line - 1).reduce((sum, one) => sum + one.length + 1, 0);
  source.focus();
  source.setSelectionRange(start, start + (lines[line - 1] ?? '').length);
  source.scrollTop = Math.max(0, (line - 8) * 18.85);
}

export class Text {
  constructor(taken, say) {
    this.taken = taken;
    this.say = say;
    this.source = document.getElementById('source');
    this.hint = document.getElementById('texthint');
    this.typed = false;
    this.source.addEventListener('input', () => { this.typed = true; document.getElementById('letgo').hidden = false; this.hint.textContent = 'typed, not taken yet'; });
    document.getElementById('take').addEventListener('click', () => this.take());
    document.getElementById('write').addEventListener('click', () => this.write());
    document.getElementById('mine').addEventListener('click', () => this.take(this.now));
    document.getElementById('letgo').addEventListener('click', () => this.letGo());
  }

  // What was typed goes, what is kept comes.
  letGo() {
    this.typed = false;
    this.beside();
    this.load();
    this.hint.textContent = 'what was typed is let go';
  }

  // What somebody else kept meanwhile stands beside what was typed, until one is chosen.
  beside(kept) {
    this.now = kept?.version;
    document.getElementById('theirs').value = kept?.text ?? '';
    document.getElementById('conflict').hidden = !kept;
    document.getElementById('letgo').hidden = !this.typed;
  }

  async load() {
    if (this.typed) return;
    const text = await ask('text', '/api/text');
    if (!text) return;
    if (this.typed) { this.version ??= text.version; return; }
    this.version = text.version;
    const place = this.source.selectionStart;
    this.source.value = text.text;
    this.source.setSelectionRange(place, place);
  }

  async take(version = this.version) {
    const result = await changePlant('/api/text', {version, text: this.source.value});
    if (result.away) { this.hint.textContent = 'not kept: the studio is not answering. What you typed stays on this page; take it again once it answers'; return false; }
    if (!result.ok) {
      this.hint.textContent = result.stale ? 'not taken: the plant was changed elsewhere since this text was shown' : result.content.why;
      if (result.stale) this.beside(await ask('theirs', '/api/text'));
      return false;
    }
    this.typed = false;
    this.beside();
    this.version = result.content.version;
    this.hint.textContent = result.content.faults.length ? 'kept, with faults: the drawing shows the plant before them' : 'kept';
    this.taken(result.content);
    return true;
  }

  async write() {
    if (this.typed && !await this.take()) return;
    if (this.faulty && !this.sure) { this.sure = true; this.hint.textContent = 'This text has faults. Write to the file once more to write it all the same.'; return; }
    this.sure = false;
    const result = await change('/api/write', {version: this.version});
    this.hint.textContent = result.ok ? `written to ${result.content.file}` : result.content.why;
  }

  faults(lines) { this.faulty = lines.length > 0; this.sure = false; list(document.getElementById('faults'), this.source, lines); }
}
