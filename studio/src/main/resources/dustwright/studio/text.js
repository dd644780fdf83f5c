// The plant file as text: typed, taken, its faults by line.
import {element} from './element.js';
import {ask, change, changePlant} from './server.js';

// Faults above a text; each leads to its line.
export function list(place, source, faults) {
  place.replaceChildren(...faults.map(fault => element('li', {}, element('button', {type: 'button', on: () => go(source, fault.line)}, fault.text))));
}

function go(source, line) {
  source.focus();
  show(source, line);
}

function show(source, line) {
  const lines = source.value.split('\n');
  const start = lines.slice(0, line - 1).reduce((sum, one) => sum + one.length + 1, 0);
  source.setSelectionRange(start, start + (lines[line - 1] ?? '').length);
  source.scrollTop = Math.max(0, (line - 8) * 18.85);
}

const MOST_CELLS = 4e6;
const at = ({from, lines}) => lines.length > 1 ? `${from}-${from + lines.length - 1}:` : `${from}:`;

// Where two lists of lines differ, by their longest common lines: [{mine: {from, lines}, other: {from, lines}}], from counted from 1.
export function differences(mine, other) {
  let head = 0;
  while (head < mine.length && head < other.length && mine[head] === other[head]) head++;
  let tail = 0;
  while (tail < mine.length - head && tail < other.length - head && mine.at(-1 - tail) === other.at(-1 - tail)) tail++;
  const [a, b] = [mine.slice(head, mine.length - tail), other.slice(head, other.length - tail)];
  const wide = b.length + 1;
  const common = a.length * b.length > MOST_CELLS ? null : new Uint16Array((a.length + 1) * wide);
  for (let i = a.length - 1; common && i >= 0; i--) for (let j = b.length - 1; j >= 0; j--) common[i * wide + j] = a[i] === b[j] ? common[(i + 1) * wide + j + 1] + 1 : Math.max(common[(i + 1) * wide + j], common[i * wide + j + 1]);
  const found = [];
  let [i, j] = [0, 0];
  while (i < a.length || j < b.length) {
    if (common && i < a.length && j < b.length && a[i] === b[j]) { i++; j++; continue; }
    const [fromA, fromB] = [i, j];
    while ((i < a.length || j < b.length) && !(common && i < a.length && j < b.length && a[i] === b[j])) {
      if (j >= b.length || i < a.length && (!common || common[(i + 1) * wide + j] >= common[i * wide + j + 1])) i++; else j++;
    }
    found.push({mine: {from: head + fromA + 1, lines: a.slice(fromA, i)}, other: {from: head + fromB + 1, lines: b.slice(fromB, j)}});
  }
  return found;
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
    this.differing(kept?.text ?? '');
    document.getElementById('conflict').hidden = !kept;
    document.getElementById('letgo').hidden = !this.typed;
  }

  // Lines of both texts that differ, one row for each place; a click shows it in both.
  differing(kept) {
    const theirs = document.getElementById('theirs');
    const row = ({mine, other}) => element('li', {}, element('button', {type: 'button', on: () => { show(theirs, other.from); go(this.source, mine.from); }},
      element('span', {}, `yours ${at(mine)} `, element('code', {}, mine.lines.join(' ⏎ ') || 'nothing')), element('span', {}, `kept ${at(other)} `, element('code', {}, other.lines.join(' ⏎ ') || 'nothing'))));
    document.getElementById('differ').replaceChildren(...kept ? differences(this.source.value.split('\n'), kept.split('\n')).map(row) : []);
  }

  async load() {
    if (this.typed) return;
    const text = await ask('text', '/api/text');
    if (!text) return;
    if (this.typed) { this.version ??= text.version; return; }
    this.version = text.version;
    if (this.source.value !== text.text) this.hint.textContent = '';
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
