// What each piece of equipment comes to: curve and operating point, the dust's week, sheets; every figure opens how it came about.
import {ask} from './server.js';
import {element} from './element.js';
import {findingRow} from './findingrow.js';

const at = id => document.getElementById(id);

export class Machines {
  constructor(asked, moved, marked) {
    this.asked = asked;
    this.marked = marked;
    this.moved = moved;
    this.sets = 'all';
    this.finding = -1;
    for (const button of document.querySelectorAll('[data-sets]')) button.addEventListener('click', () => { this.sets = button.dataset.sets; this.moved(); this.load(); });
    at('machinebody').addEventListener('click', event => {
      const line = event.target.closest('button.opens');
      if (line) this.derive(line.closest('[data-sheet]').dataset.sheet, line.dataset);
    });
  }

  // Old figures stay, marked, until the new ones are there.
  async load() {
    for (const button of document.querySelectorAll('[data-sets]')) button.setAttribute('aria-pressed', String(button.dataset.sets === this.sets));
    const began = performance.now();
    const waiting = setInterval(() => {
      at('machineall').classList.add('stale');
      at('machineset').textContent = `solving, ${Math.round((performance.now() - began) / 1000)} s${this.view ? '; what is shown is of the plant before' : ''}`;
    }, 400);
    try {
      const view = await ask('machines', '/api/machines', {...this.asked(), sets: this.sets});
      if (!view) return;
      this.view = view;
      this.show();
      at('machineall').classList.remove('stale');
      if (this.opened) await this.derive(...this.opened);
    } catch (why) {
      at('machineset').textContent = why.message;
    } finally {
      clearInterval(waiting);
    }
  }

  show() {
    const view = this.view;
    at('machineset').textContent = (view.set ? `Set ${view.set} of the plan.` : `Figures over ${view.sets} sets: those the plant file names and every single user, filter clean and dirty. Curves: of each station the worst set with the most users on it, and with one.`) + (view.unsolved ? ` ${view.unsolved}` : '');
    const drawn = (one, id) => this.part(id, one.title, element('figure', {}, element('div', {class: 'sideways', tabindex: '0', role: 'group', 'aria-label': one.caption}, this.markup(one.markup)), element('p', {class: 'cap drags'}, 'Drag it sideways for the rest.'), element('figcaption', {class: 'cap'}, one.caption)));
    const sheets = view.sheets.map(one => this.part(`sheet-${one.id}`, one.title, this.markup(one.markup), one.id));
    const firstDust = view.sheets.findIndex(one => one.dust);
    if (firstDust >= 0) sheets[firstDust].querySelector('h3').after(element('p', {class: 'mind'}, element('b', {}, 'Mind: '), view.caution));
    const place = at('machinebody').scrollTop;
    at('machinebody').replaceChildren(...(view.why ? [element('p', {}, view.why)] : []),
      ...view.charts.map((one, n) => drawn(one, `curve-${n}`)), ...view.weeks.map((one, n) => drawn(one, `week-${n}`)), ...sheets);
    at('machinebody').scrollTop = place;
    for (const wide of at('machinebody').querySelectorAll('.sideways')) this.pointInSight(wide);
    this.marked(...at('machinebody').querySelectorAll('h3, figcaption'));
    const entry = (id, title, one) => element('button', {type: 'button', on: () => this.to(id)}, title, ...(one?.margin ? [element('small', {}, element('span', {class: one.marginClass, 'aria-hidden': 'true'}, one.glyph), ` ${one.margin}`)] : []));
    at('machineindex').replaceChildren(...view.charts.slice(0, 1).map(() => entry('curve-0', 'Operating point')), ...view.weeks.slice(0, 1).map(() => entry('week-0', 'Bag and receiver, a week')), ...view.sheets.map(one => entry(`sheet-${one.id}`, one.title, one)));
    this.findings();
  }

  // Where a curve goes on beyond its place, its operating point is seen first.
  pointInSight(wide) {
    const point = wide.querySelector('circle')?.getBoundingClientRect();
    if (point) wide.scrollLeft += point.left - wide.getBoundingClientRect().left - wide.clientWidth / 2;
  }

  part(id, title, content, sheet) {
    return element('section', {'data-part': id, ...(sheet ? {'data-sheet': sheet} : {})}, ...(title ? [element('h3', {}, title)] : []), content);
  }

  markup(text) {
    const place = element('div');
    place.innerHTML = text;
    return place;
  }

  to(id) {
    this.back();
    const part = at('machinebody').querySelector(`[data-part="${CSS.escape(id)}"]`);
    part.scrollIntoView({block: 'start'});
    part.querySelector('button.opens')?.focus({preventScroll: true});
  }

  findings() {
    const titles = new Map(this.view.sheets.map(one => [one.id, one.title]));
    const all = this.view.findings.toSorted((a, b) => a.row.holds - b.row.holds || a.row.bar - b.row.bar);
    const rest = all.filter(one => !one.row.prominent).length;
    this.shown = this.rest ? all : all.filter(one => one.row.prominent);
    at('machinefindings').replaceChildren(...this.shown.map((one, n) => {
      const row = findingRow(one.row, n === this.finding, () => { this.finding = n; this.mark(); this.open(); });
      row.querySelector('.figures').append(element('small', {class: 'of'}, titles.get(one.sheet)));
      return row;
    }), ...(rest ? [element('div', {class: 'rest'}, `${rest} ${rest === 1 ? 'requirement holds' : 'requirements hold'} with +10 % or more, or by design`, element('button', {type: 'button', on: () => { this.rest = !this.rest; this.findings(); }}, this.rest ? 'hide' : 'show'))] : []),
    ...(all.length ? [] : [element('div', {class: 'rest'}, 'Nothing is asked on these sheets.')]));
  }

  go(by) {
    if (!this.shown?.length) return;
    this.finding = Math.max(0, Math.min(this.shown.length - 1, this.finding + by));
    this.mark();
  }

  mark() {
    [...at('machinefindings').querySelectorAll('.noted')].forEach((row, n) => row.setAttribute('aria-current', String(n === this.finding)));
    at('machinefindings').children[this.finding]?.scrollIntoView({block: 'nearest'});
  }

  open() {
    const one = this.shown?.[this.finding];
    if (one) this.derive(one.sheet, {finding: one.row.id});
  }

  async derive(sheet, {figure, finding}) {
    const markup = await ask('figure', '/api/machines/derivation', {...this.asked(), sets: this.sets, sheet, ...(figure ? {figure} : {finding})});
    if (!markup) return;
    if (!this.opened) this.from = document.activeElement;
    this.opened = [sheet, {figure, finding}];
    at('machinesteps').innerHTML = markup;
    this.marked(at('machinesteps'));
    at('machinesteps').prepend(element('button', {type: 'button', on: () => this.back()}, 'Back to the sheets'));
    at('machinebody').hidden = true;
    at('machinesteps').hidden = false;
    at('machinesteps').focus();
  }

  back() {
    if (!this.opened) return;
    this.opened = null;
    at('machinesteps').hidden = true;
    at('machinebody').hidden = false;
    if (this.from?.isConnected) this.from.focus(); else at('machinebody').focus();
  }
}
