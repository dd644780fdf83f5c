// A plant that stands, and what is to become of it: what those who use it today lose, and what gives out first.
import {ask, change} from './server.js';
import {element} from './element.js';
import {findingRow} from './findingrow.js';

const at = id => document.getElementById(id);
const WORDS = {stands: 'stands', new: 'new', gone: 'goes', changed: 'stands, changed'};

export class Extend {
  // plan: {version, units, show(kind, id), designs}
  constructor(plan, say) {
    this.plan = plan;
    this.say = say;
    at('today').addEventListener('change', () => this.show());
    at('standstoday').addEventListener('click', () => this.keep());
  }

  async load() {
    const [revisions, alternatives] = await Promise.all([ask('revisions', '/api/revisions'), ask('alternatives', '/api/alternatives')]);
    if (!revisions || !alternatives) return;
    const designs = [...alternatives.map(one => [`a:${one.name}`, `Alternative ${one.name}`]), ...revisions.map(one => [`r${one.number}`, `Revision ${one.number}${one.note ? ': ' + one.note : ''}`])];
    const was = at('today').value;
    at('today').replaceChildren(...designs.map(([value, words]) => element('option', {value}, words)));
    at('today').value = designs.some(([value]) => value === was) ? was : designs.find(([value]) => value === 'a:as it stands')?.[0] ?? (revisions.length ? `r${revisions[0].number}` : designs[0]?.[0] ?? '');
    at('today').parentElement.hidden = !designs.length;
    await this.show();
  }

  async keep() {
    const result = await change('/api/alternative', {version: this.plan.version(), name: 'as it stands'});
    at('extendhint').textContent = result.ok ? 'Kept as it stands. Draw what is to come in the plan: this page then tells what it does.' : result.content.why;
    if (result.ok) this.load();
  }

  async show() {
    if (!at('today').value) {
      at('extension').replaceChildren(element('p', {}, 'Nothing says yet what stands today. Load the plant as it was built, keep it as what stands, then draw the new inlets.'));
      return;
    }
    at('extendhint').textContent = 'solving both';
    at('extension').classList.add('stale');
    let told;
    try {
      told = await ask('extension', '/api/extension', {today: at('today').value, then: 'now', units: this.plan.units()});
    } catch (why) { at('extendhint').textContent = why.message; return; }
    if (!told) return;
    at('extendhint').textContent = '';
    at('extension').classList.remove('stale');
    const count = (number, one, many) => `${number} ${number === 1 ? one : many}`;
    const more = told.usersThen - told.usersToday;
    const users = more === 0 ? `${count(told.usersToday, 'user', 'users')} at once as today: more inlets are not more users.` : `${count(told.usersToday, 'user', 'users')} at once today, ${told.usersThen} then.`;
    at('extension').replaceChildren(
      element('p', {class: 'onpaper'}, `Stands today: ${at('today').selectedOptions[0].textContent}.`),
      element('p', {class: 'verdict'}, element('b', {}, told.verdict)),
      element('p', {}, `${count(told.inletsToday, 'inlet', 'inlets')} today, ${told.inletsThen} then. ${users}`),
      ...this.rows('Gives out first', told.limits), ...this.rows('Holds today, does not hold then', told.newlyFails), ...this.rows('Does not hold today already', told.failsToday),
      ...this.rows('Not known then', told.newlyUnknown), ...this.rows('Not known today', told.unknownToday),
      element('h3', {}, 'Least air at each inlet'), element('p', {class: 'cap'}, 'Over every set the plant files name in which it is open, and alone; filter clean and dirty, with dust and without.'), this.inlets(told.inlets));
  }

  rows(head, findings) {
    if (!findings.length) return [];
    return [element('h3', {}, head), ...findings.map(one => findingRow(one, false, () => this.plan.show(one.kind, one.place)))];
  }

  inlets(rows) {
    const table = element('table', {}, element('thead', {}, element('tr', {}, ...['Inlet', 'Is', 'Today', 'Then', 'Change'].map(head => element('th', {scope: 'col'}, head)))),
      element('tbody', {}, ...rows.map(one => element('tr', one.less ? {class: 'turns'} : {}, element('th', {scope: 'row'}, one.id), element('td', {}, WORDS[one.what]), element('td', {}, one.today || 'not there'), element('td', {}, one.then || 'not there'), element('td', {}, one.change, ...(one.less ? [element('small', {}, 'less air')] : []))))));
    return element('div', {class: 'wide'}, table);
  }
}
