// Words of the trade: marked where they stand on a page, explained with their source in the margin column, all listed in the help.
import {element} from './element.js';

const at = id => document.getElementById(id);
const NOT_IN = 'button, a, input, textarea, select, option, label, kbd, summary, svg, #term, #help';

export class Terms {
  constructor() {
    this.box = element('section', {id: 'term', tabindex: '-1', 'aria-label': 'Word', hidden: ''});
    at('termsearch').addEventListener('input', () => this.list());
    document.addEventListener('click', event => {
      const word = event.target.closest('.term');
      if (word) this.explain(word.dataset.term, word);
    });
  }

  async load() {
    this.terms = await (await fetch('/assets/terms.json')).json();
    this.byWord = new Map(this.terms.flatMap(one => [one.term, ...one.also].map(word => [word.toLowerCase(), one])));
    const words = [...this.byWord.keys()].sort((a, b) => b.length - a.length).map(word => word.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
    this.pattern = new RegExp(`(?<![\\p{L}\\p{N}-])(?:${words.join('|')})(?![\\p{L}\\p{N}-])`, 'giu');
    this.list();
    this.mark(...document.querySelectorAll('.users h2, aside h2, .sheet h2, .sheet > p, .sheet .bar > h2'));
  }

  // Each word once in each of these.
  mark(...roots) {
    if (!this.pattern) return;
    for (const root of roots) {
      const seen = new Set([...root.querySelectorAll('.term')].map(word => word.dataset.term));
      const walker = document.createTreeWalker(root, NodeFilter.SHOW_TEXT, node => node.parentElement.closest(NOT_IN) ? NodeFilter.FILTER_REJECT : NodeFilter.FILTER_ACCEPT);
      const nodes = [];
      while (walker.nextNode()) nodes.push(walker.currentNode);
      for (const node of nodes) this.markIn(node, seen);
    }
  }

  markIn(node, seen) {
    const parts = [];
    let from = 0;
    const stop = at => /^[.,;:)]+/.exec(node.data.slice(at))?.[0] ?? '';
    for (const found of node.data.matchAll(this.pattern)) {
      const one = this.byWord.get(found[0].toLowerCase());
      if (seen.has(one.term) || (one.term.startsWith('loss coefficient') && found[0] === 'k')) continue;
      seen.add(one.term);
      const word = element('button', {type: 'button', class: 'term', 'data-term': one.term}, found[0]);
      const end = found.index + found[0].length;
      // What ends a sentence stays on the line of its word.
      parts.push(node.data.slice(from, found.index), stop(end) ? element('span', {class: 'held'}, word, stop(end)) : word);
      from = end + stop(end).length;
    }
    if (parts.length) node.replaceWith(...parts, node.data.slice(from));
  }

  explain(term, from) {
    const one = this.terms.find(other => other.term === term);
    const column = [...document.querySelectorAll('aside.margin')].find(aside => !aside.hidden);
    if (!one || !column) return;
    this.from = from;
    this.box.replaceChildren(element('div', {class: 'headline'}, element('h2', {}, one.term), element('button', {type: 'button', on: () => this.close()}, 'Done')), ...this.words(one));
    column.prepend(this.box);
    this.box.hidden = false;
    this.box.focus();
  }

  words(one) {
    return [element('p', {}, one.means), ...(one.also.length ? [element('p', {class: 'cap'}, `Also: ${one.also.join(', ')}`)] : []),
      element('p', {class: 'cap'}, element('span', {class: one.source.startsWith('common practice') || one.source.startsWith('from memory') ? 'mark weak' : 'mark'}, one.source))];
  }

  close() {
    if (this.box.hidden) return false;
    this.box.hidden = true;
    if (this.from?.isConnected) this.from.focus();
    return true;
  }

  list() {
    const wanted = at('termsearch').value.trim().toLowerCase();
    const has = (...texts) => texts.some(text => text.toLowerCase().includes(wanted));
    const named = this.terms.filter(one => has(one.term, ...one.also));
    const found = [...named, ...this.terms.filter(one => !named.includes(one) && has(one.means))];
    at('termcount').textContent = found.length ? `${found.length} of ${this.terms.length} words` : `No word here has "${wanted}" in it.`;
    at('termlist').replaceChildren(...found.map(one => element('details', found.length < 4 ? {open: ''} : {}, element('summary', {}, one.term), ...this.words(one))));
  }
}
